package stirtide.planner.check.stagger;

import java.util.Arrays;
import java.util.BitSet;
import stirtide.planner.planning.stagger.StaggerProblem;
import stirtide.planner.planning.stagger.StaggerRun;

/**
 * What is still possible for one run at one step of a proof, and what its cheapest bowls cost. Minutes of the run are counted
 * from its start, starts of mixes from {@link #firstStart}.
 */
final class RunCase {
    static final long NONE = Long.MAX_VALUE / 8;

    private final StaggerRun run;
    private final int lead;
    private final int firstStart;
    private final int[] earliest;
    private final int[] latest;
    private final BitSet[] struck;
    private final int[][] bowls;
    private final RunTimes times;
    /** Whether any case forbids starts. */
    private final boolean split;

    RunCase(StaggerProblem problem, StaggerRun run) {
        this.run = run;
        this.lead = run.mixMinutes() + problem.handOverMinutes();
        this.times = new RunTimes(run);
        this.split = false;
        this.firstStart = run.startMinute() - run.workingLifeMinutes();
        this.earliest = new int[run.minutes()];
        this.latest = new int[run.minutes()];
        Arrays.fill(earliest, Integer.MIN_VALUE);
        Arrays.fill(latest, Integer.MAX_VALUE);
        this.struck = new BitSet[run.minutes()];
        Arrays.setAll(struck, u -> new BitSet());
        this.bowls = new int[run.minutes()][run.minutes() + 1];
        for (int u = 0; u < run.minutes(); u++) {
            for (int v = u + 1; v <= run.minutes(); v++) {
                bowls[u][v] = run.bowls().cost(u, v);
            }
        }
    }

    private RunCase(RunCase other, boolean split) {
        this.run = other.run;
        this.split = split;
        this.lead = other.lead;
        this.firstStart = other.firstStart;
        this.earliest = other.earliest.clone();
        this.latest = other.latest.clone();
        this.struck = new BitSet[other.struck.length];
        Arrays.setAll(struck, u -> (BitSet) other.struck[u].clone());
        this.bowls = other.bowls;
        this.times = other.times;
    }

    RunCase atMost(int minute, int start) {
        RunCase made = new RunCase(this, true);
        int t = RunTimes.placeOf(run, minute);
        made.latest[t] = Math.min(made.latest[t], start);
        return made;
    }

    RunCase later(int minute, int start) {
        RunCase made = new RunCase(this, true);
        int t = RunTimes.placeOf(run, minute);
        made.earliest[t] = Math.max(made.earliest[t], start + 1);
        return made;
    }

    /**
     * Cheapest cost from each minute of the run to its end: a bowl that begins at u with a start s may end at any minute up
     * to the farthest that keeps it fresh and that no case forbids; the farther one allows, the more ends there are.
     */
    long[] ahead(MixPrices prices) {
        int n = run.minutes();
        long[] ahead = new long[n + 1];
        long[] leastUpTo = new long[n + 1];
        for (int u = n - 1; u >= 0; u--) {
            ahead[u] = NONE;
            fillLeast(u, ahead, leastUpTo, prices);
            int last = lastStart(u, prices);
            // No cost is below 0, so nothing is cheaper than a way that costs nothing.
            for (int s = times.end(u + 1) - run.workingLifeMinutes(); s <= last && ahead[u] > 0; s++) {
                ahead[u] = Math.min(ahead[u], through(u, s, leastUpTo, prices));
            }
        }
        return ahead;
    }

    private int lastStart(int u, MixPrices prices) {
        return times.use(u) - lead + prices.longestWait();
    }

    /** No bowl used from u feeds beyond this minute; one that comes late reaches farther than its life from u. */
    private int farthest(int u, MixPrices prices) {
        return times.fedBy(times.use(u) + run.workingLifeMinutes() - lead + Math.max(lead, prices.longestWait()));
    }

    private void fillLeast(int u, long[] ahead, long[] leastUpTo, MixPrices prices) {
        leastUpTo[u] = NONE;
        for (int v = u + 1; v <= farthest(u, prices); v++) {
            long c = bowls[u][v] < 0 ? NONE : ahead[v] + prices.mixWeight() * bowls[u][v];
            leastUpTo[v] = Math.min(leastUpTo[v - 1], c);
        }
    }

    /** Cost of the start s for a bowl that begins at u and of the cheapest rest; {@link #NONE} or more if impossible. */
    private long through(int u, int s, long[] leastUpTo, MixPrices prices) {
        if (struck[u].get(s - firstStart) || !prices.mayStart(run.mixMinutes(), s)) {
            return NONE;
        }
        int end = times.fedBy(s + run.workingLifeMinutes());
        int v = split ? u : Math.max(u, end);
        while (v < end && earliest[v] <= s && s <= latest[v]) {
            v++;
        }
        return leastUpTo[v] >= NONE ? NONE : own(u, s, prices) + leastUpTo[v];
    }

    private long own(int u, int s, MixPrices prices) {
        int spare = times.use(u) - s;
        return prices.of(run.mixMinutes(), s)
                + prices.delayWeight() * Math.max(0, lead - spare)
                + prices.ageWeight() * Math.max(lead, spare);
    }

    /** This case without the starts whose cheapest path costs more than {@code most}. */
    RunCase without(long most, long[] ahead, MixPrices prices) {
        RunCase made = new RunCase(this, split);
        int n = run.minutes();
        long[] reached = new long[n + 1];
        Arrays.fill(reached, NONE);
        reached[0] = 0;
        long[] leastUpTo = new long[n + 1];
        for (int u = 0; u < n; u++) {
            fillLeast(u, ahead, leastUpTo, prices);
            for (int s = times.end(u + 1) - run.workingLifeMinutes(); s <= lastStart(u, prices); s++) {
                long cost = through(u, s, leastUpTo, prices);
                if (reached[u] >= NONE || cost >= NONE || reached[u] + cost > most) {
                    made.struck[u].set(s - firstStart);
                }
                if (reached[u] < NONE && cost < NONE) {
                    reach(u, s, reached, prices);
                }
            }
        }
        return made;
    }

    private void reach(int u, int s, long[] reached, MixPrices prices) {
        long base = reached[u] + own(u, s, prices);
        int end = times.fedBy(s + run.workingLifeMinutes());
        for (int v = u; v < end && earliest[v] <= s && s <= latest[v]; v++) {
            if (bowls[u][v + 1] >= 0) {
                reached[v + 1] = Math.min(reached[v + 1], base + prices.mixWeight() * bowls[u][v + 1]);
            }
        }
    }
}
