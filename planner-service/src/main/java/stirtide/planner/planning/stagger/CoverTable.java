package stirtide.planner.planning.stagger;

import java.util.Arrays;

/**
 * For one run: the least it costs to feed the rest, if it is fed up to some minute and the next mix starts at some time or
 * later. Only for runs whose bowls all cost the same, where it matters how far the bowls reach, but not how they got there.
 */
final class CoverTable {
    final RunGrid run;
    /** First minute at which a mix could be of use. */
    final int first;
    /** Last minute at which a mix may start. */
    final int last;

    private final int maxWait;
    private final LevelWeights weights;
    private final long[] price;
    private final long[] rest;

    /**
     * @param price what a start costs, by minute from the origin; {@link CostModel#NEVER} where none may be
     * @param spacing minutes from one start of this run to the next, at least 1
     */
    CoverTable(RunGrid run, LevelWeights weights, int maxWait, long[] price, int spacing) {
        this.run = run;
        this.weights = weights;
        this.maxWait = maxWait;
        this.price = price;
        this.first = Math.max(0, run.start - run.life + 1);
        this.last = Math.min(price.length - run.mix, run.at[run.minutes - 1] - run.lead + maxWait);
        this.rest = new long[(Math.max(0, last - first + 1)) * (run.minutes + 1)];
        for (int t = last; t >= first; t--) {
            fill(t, spacing);
        }
    }

    private void fill(int t, int spacing) {
        int row = (t - first) * (run.minutes + 1);
        for (int covered = 0; covered < run.minutes; covered++) {
            long best = rest(t + 1, covered);
            if (price[t] < CostModel.NEVER) {
                for (int u = firstUse(t, covered); u >= 0; u = nextUse(t, covered, u)) {
                    long then = rest(t + spacing, reach(t, u));
                    best = Math.min(best, then >= CostModel.NEVER ? then : then + cost(t, u));
                }
            }
            rest[row + covered] = best;
        }
    }

    /** Least cost from minute t on, {@link CostModel#NEVER} if the rest cannot be fed any more. */
    long rest(int t, int covered) {
        if (covered == run.minutes) {
            return 0;
        }
        return t > last ? CostModel.NEVER : rest[(Math.max(t, first) - first) * (run.minutes + 1) + covered];
    }

    /** Price of a start. */
    long price(int t) {
        return t < first || t > last ? CostModel.NEVER : price[t];
    }

    /**
     * The minute of the run from which a bowl started at t is best used if all before {@code covered} is fed: not sooner than
     * it can be there. Later uses are worth a look only where the bowl then reaches farther, see {@link #nextUse}.
     *
     * @return -1 if the bowl would be of no use
     */
    int firstUse(int t, int covered) {
        if (run.at[covered] < t + run.lead - maxWait) {
            return -1;
        }
        int u = Math.min(covered, run.fedBy(t + run.lead));
        return reach(t, u) > covered ? u : nextUse(t, covered, u);
    }

    /** The next later minute of use from which the bowl reaches farther than from u and than what is fed, or -1. */
    int nextUse(int t, int covered, int u) {
        int before = Math.max(covered, reach(t, u));
        if (before >= run.fedBy(t + run.life)) {
            return -1;
        }
        for (int later = u + 1; later <= covered; later++) {
            if (reach(t, later) > before) {
                return later;
            }
        }
        return -1;
    }

    /** Farthest minute of the run that a bowl started at t and used from u feeds. */
    int reach(int t, int u) {
        return Math.min(run.reach[u], run.fedBy(t + run.life));
    }

    /** What a bowl costs that is started at t and used from u. */
    long cost(int t, int u) {
        int early = run.at[u] - t;
        return price[t]
                + weights.mix() * run.bowlCost[u][0]
                + weights.delay() * Math.max(0, run.lead - early)
                + weights.age() * Math.max(run.lead, early);
    }

    /** Whether the table may be used: all bowls of the run cost the same, however far they reach. */
    static boolean suits(RunGrid run) {
        int cost = run.bowlCost[0].length == 0 ? BowlRule.NO_BOWL : run.bowlCost[0][0];
        return cost >= 0
                && Arrays.stream(run.bowlCost).flatMapToInt(Arrays::stream).allMatch(one -> one == cost);
    }
}
