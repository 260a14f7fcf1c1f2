package stirtide.planner.planning.bounds;

import stirtide.planner.planning.stagger.Assistant;
import stirtide.planner.planning.stagger.DutyWindow;
import stirtide.planner.planning.stagger.StaggerProblem;

/** Minutes of mixing that people on duty and scales can give. */
final class MixingCapacity {
    private final int from;
    private final int[] before;

    /** Sums up the minutes of a stretch of the day. */
    MixingCapacity(StaggerProblem problem, int from, int to) {
        this.from = from;
        this.before = new int[to - from + 1];
        for (int minute = from; minute < to; minute++) {
            int people = 0;
            for (Assistant person : problem.assistants()) people += onDuty(person, minute) ? 1 : 0;
            before[minute - from + 1] = before[minute - from] + Math.min(people, problem.mixesAtOnce());
        }
    }

    private static boolean onDuty(Assistant person, int minute) {
        for (DutyWindow duty : person.onDuty()) if (duty.covers(minute, minute + 1)) return true;
        return false;
    }

    /** Minutes that can be given between two minutes of the stretch. */
    int between(int first, int last) {
        return before[last - from] - before[first - from];
    }
}
