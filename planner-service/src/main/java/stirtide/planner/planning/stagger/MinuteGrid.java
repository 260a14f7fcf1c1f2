package stirtide.planner.planning.stagger;

import java.util.ArrayList;
import java.util.List;

/** A problem made ready for the engine: minutes from an origin, how many may mix in each, where a mix may start. */
final class MinuteGrid {
    final StaggerProblem problem;
    final int origin;
    final int horizon;
    final RunGrid[] runs;
    /** Most mixes at one time in each minute. */
    final int[] capacity;

    final int longestMix;
    final int longestLife;
    /** Whether some assistant's window holds a mix of m minutes from s: [m][s]. */
    final boolean[][] mayStart;

    MinuteGrid(StaggerProblem problem) {
        this.problem = problem;
        int first = Integer.MAX_VALUE;
        int last = 0;
        int longest = 1;
        for (StaggerRun run : problem.runs()) {
            first = Math.min(first, run.startMinute() - run.workingLifeMinutes());
            last = Math.max(last, run.endMinute() + problem.maxWaitMinutes() + run.mixMinutes());
            longest = Math.max(longest, run.mixMinutes());
        }
        this.origin = problem.runs().isEmpty() ? 0 : first;
        this.horizon = Math.max(1, last - origin + 1);
        this.longestMix = longest;
        this.longestLife = problem.runs().stream()
                .mapToInt(StaggerRun::workingLifeMinutes)
                .max()
                .orElse(1);
        List<RunGrid> made = new ArrayList<>();
        for (int i = 0; i < problem.runs().size(); i++) {
            made.add(new RunGrid(i, problem.runs().get(i), problem, origin));
        }
        this.runs = made.toArray(RunGrid[]::new);
        this.capacity = new int[horizon];
        this.mayStart = new boolean[longest + 1][];
        for (RunGrid run : runs) {
            if (mayStart[run.mix] == null) {
                mayStart[run.mix] = new boolean[horizon];
            }
        }
        fillWindows();
    }

    private void fillWindows() {
        for (Assistant assistant : problem.assistants()) {
            for (DutyWindow window : assistant.onDuty()) {
                int from = Math.max(0, window.fromMinute() - origin);
                int to = Math.min(horizon, window.toMinute() - origin);
                for (int t = from; t < to; t++) {
                    capacity[t] = Math.min(problem.mixesAtOnce(), capacity[t] + 1);
                }
                for (int m = 1; m <= longestMix; m++) {
                    for (int s = from; mayStart[m] != null && s + m <= to; s++) {
                        mayStart[m][s] = true;
                    }
                }
            }
        }
    }
}
