package stirtide.planner.check.stagger;

import java.util.Arrays;
import stirtide.planner.planning.stagger.StaggerProblem;
import stirtide.planner.planning.stagger.StaggerRun;

/** One run for a {@link SweepCheck}: how far a bowl reaches, what it costs, and the least that the rest of the run costs. */
final class SweptRun {
    private final StaggerRun run;
    private final MixPrices prices;
    private final int lead;
    private final RunTimes times;
    private final int first;
    private final int last;
    private final int[] holds;
    private final int bowl;
    private final boolean lawful;
    private final long[][] rest;

    SweptRun(StaggerProblem problem, StaggerRun run, MixPrices prices) {
        this.run = run;
        this.prices = prices;
        this.lead = run.mixMinutes() + problem.handOverMinutes();
        this.times = new RunTimes(run);
        this.first = run.startMinute() - run.workingLifeMinutes();
        this.last = run.endMinute() - lead + prices.longestWait();
        this.holds = new int[run.minutes()];
        this.bowl = run.bowls().cost(0, 1);
        boolean even = bowl >= 0;
        int longest = run.workingLifeMinutes() + problem.maxWaitMinutes();
        for (int u = 0; u < run.minutes(); u++) {
            holds[u] = u;
            for (int v = u + 1; v <= times.fedBy(times.use(u) + longest); v++) {
                int cost = run.bowls().cost(u, v);
                even &= cost == bowl || cost < 0;
                holds[u] = cost >= 0 ? v : holds[u];
            }
        }
        this.lawful = even;
        this.rest = new long[last - first + 2][run.minutes() + 1];
        Arrays.fill(rest[last - first + 1], 0, run.minutes(), RunCase.NONE);
        for (int t = last; t >= first; t--) {
            for (int fed = 0; fed < run.minutes(); fed++) {
                rest[t - first][fed] = least(t, fed);
            }
        }
    }

    private long least(int t, int fed) {
        long least = rest[t + 1 - first][fed];
        for (int use = firstUse(t, fed); mayStart(t) && use <= fed; use++) {
            if (reach(t, use) > fed && waits(t, use) <= prices.longestWait()) {
                least = Math.min(least, cost(t, use) + rest[t + 1 - first][reach(t, use)]);
            }
        }
        return Math.min(least, RunCase.NONE);
    }

    /** Whether all bowls of the run cost the same. */
    boolean lawful() {
        return lawful;
    }

    int minutes() {
        return run.minutes();
    }

    int mixMinutes() {
        return run.mixMinutes();
    }

    boolean mayStart(int t) {
        return t >= first && t <= last && prices.mayStart(run.mixMinutes(), t);
    }

    /** A use before the bowl can be there, where a later one is possible, costs more and reaches no farther. */
    int firstUse(int t, int fed) {
        return Math.min(fed, times.fedBy(t + lead));
    }

    int reach(int t, int use) {
        return Math.min(holds[use], times.fedBy(t + run.workingLifeMinutes()));
    }

    int waits(int t, int use) {
        return Math.max(0, t + lead - times.use(use));
    }

    long cost(int t, int use) {
        return prices.of(run.mixMinutes(), t)
                + prices.delayWeight() * waits(t, use)
                + prices.mixWeight() * bowl
                + prices.ageWeight() * Math.max(lead, times.use(use) - t);
    }

    /** Least cost from minute t on of a run that is fed up to the given minute of it. */
    long rest(int t, int fed) {
        return fed == run.minutes() ? 0 : t > last ? RunCase.NONE : rest[Math.max(t, first) - first][fed];
    }
}
