package stirtide.planner.check.stagger;

import java.util.HashMap;
import java.util.Map;
import stirtide.planner.planning.stagger.Assistant;
import stirtide.planner.planning.stagger.Certificate;
import stirtide.planner.planning.stagger.Claim;
import stirtide.planner.planning.stagger.StaggerProblem;
import stirtide.planner.planning.stagger.StaggerRun;

/** The prices of one step of a proof, summed for mixes. */
final class MixPrices {
    private final Certificate.Priced step;
    private final int longestWait;
    private final int from;
    private final long[] before;
    private final Map<Integer, boolean[]> allowed;

    MixPrices(
            StaggerProblem problem,
            Claim claim,
            Certificate.Priced step,
            Map<Integer, boolean[]> allowed,
            int from,
            int to) {
        this.step = step;
        this.longestWait = (int) Math.min(problem.maxWaitMinutes(), claim.waitMinutes());
        this.from = from;
        this.allowed = allowed;
        this.before = new long[to - from + 1];
        for (int t = from; t < to; t++) {
            before[t - from + 1] = before[t - from] + step.prices().at(t);
        }
    }

    private MixPrices(MixPrices other, int longestWait) {
        this.step = other.step;
        this.longestWait = Math.min(other.longestWait, longestWait);
        this.from = other.from;
        this.before = other.before;
        this.allowed = other.allowed;
    }

    /** The same prices where no bowl waits longer than this. */
    MixPrices waitingAtMost(int minutes) {
        return new MixPrices(this, minutes);
    }

    /** For every length of a mix, whether one assistant is on duty throughout it, by start from {@code from}. */
    static Map<Integer, boolean[]> allowedStarts(StaggerProblem problem, int from, int to) {
        Map<Integer, boolean[]> allowed = new HashMap<>();
        for (StaggerRun run : problem.runs()) {
            int m = run.mixMinutes();
            if (allowed.containsKey(m)) {
                continue;
            }
            boolean[] row = new boolean[to - from];
            for (int s = from; s + m <= to; s++) {
                for (Assistant assistant : problem.assistants()) {
                    row[s - from] |= assistant.onDuty(s, s + m);
                }
            }
            allowed.put(m, row);
        }
        return allowed;
    }

    boolean mayStart(int mixMinutes, int start) {
        boolean[] row = allowed.get(mixMinutes);
        return row != null && start >= from && start - from < row.length && row[start - from];
    }

    long of(int mixMinutes, int start) {
        return before[start + mixMinutes - from] - before[start - from];
    }

    int longestWait() {
        return longestWait;
    }

    long delayWeight() {
        return step.delayWeight();
    }

    long mixWeight() {
        return step.mixWeight();
    }

    long ageWeight() {
        return step.ageWeight();
    }
}
