package stirtide.planner.planning.stagger;

import java.util.Arrays;

/**
 * Strikes out every start whose cheapest path would lift the bound above the claim (variable fixing by reduced costs). The
 * costs through a start come from one search forward and one backward.
 */
final class ReducedCostFilter {
    private final PriceBound bound;
    private final RunPathSearch search;
    private final long[] ahead;
    private final long[] cheapestAhead;
    private final int[] floor;
    private final int[] ceiling;

    ReducedCostFilter(PriceBound bound) {
        this.bound = bound;
        this.search = new RunPathSearch(bound.grid);
        int longest = Arrays.stream(bound.grid.runs)
                .mapToInt(run -> run.minutes)
                .max()
                .orElse(0);
        this.ahead = new long[longest + 1];
        this.cheapestAhead = new long[longest + 1];
        this.floor = new int[longest + 1];
        this.ceiling = new int[longest + 1];
    }

    /** Strikes in all runs; the bound must be evaluated and not above the claim. Returns how many starts went. */
    int strike(Claim claim) {
        long slack = claim.value(bound.costs.weights) - bound.value;
        int struck = 0;
        for (RunGrid run : bound.grid.runs) {
            struck += strike(run, bound.cost[run.index] + slack);
        }
        return struck;
    }

    private int strike(RunGrid run, long most) {
        StartLimits before = bound.limits[run.index];
        StartLimits limits = before == null ? new StartLimits(run) : before;
        search.cost(run, bound.costs, limits);
        Arrays.fill(ahead, 0, run.minutes + 1, CostModel.NEVER);
        ahead[run.minutes] = 0;
        StartLimits made = null;
        int struck = 0;
        for (int u = run.minutes - 1; u >= 0; u--) {
            int top = span(run, limits, u);
            long reached = search.reached(u);
            for (int s = Math.max(0, run.end[u + 1] - run.life); s <= latest(run, u); s++) {
                long startCost =
                        limits.isStruck(u, s) ? CostModel.NEVER : RunPathSearch.startCost(run, bound.costs, u, s);
                if (startCost >= CostModel.NEVER) {
                    continue;
                }
                long rest = rest(run, u, s, top);
                if (reached + startCost + rest > most) {
                    made = made == null ? limits.copy() : made;
                    made.strike(u, s, 2 * run.life + run.finish - run.start + bound.grid.problem.maxWaitMinutes());
                    struck++;
                }
                ahead[u] = Math.min(ahead[u], startCost + rest);
            }
        }
        if (made != null) {
            bound.limit(run.index, made);
        }
        return struck;
    }

    private int latest(RunGrid run, int u) {
        return Math.min(run.at[u] - run.lead + bound.costs.maxWait, bound.grid.horizon - 1);
    }

    /** Prepares, for bowls that begin at u, which starts may serve an end v and the cheapest rest up to it. */
    private int span(RunGrid run, StartLimits limits, int u) {
        int low = StartLimits.ANY_LOW;
        int high = latest(run, u);
        long least = CostModel.NEVER;
        for (int v = u + 1; v <= run.reach[u]; v++) {
            low = Math.max(low, limits.low[v - 1]);
            high = Math.min(high, limits.high[v - 1]);
            floor[v] = Math.max(low, run.end[v] - run.life);
            ceiling[v] = high;
            int bowl = run.bowlCost[u][v - u - 1];
            if (bowl >= 0 && ahead[v] < CostModel.NEVER) {
                least = Math.min(least, ahead[v] + bound.costs.weights.mix() * bowl);
            }
            cheapestAhead[v] = least;
        }
        return run.reach[u];
    }

    private long rest(RunGrid run, int u, int s, int top) {
        int v = Math.min(top, run.fedBy(s + run.life));
        while (v > u && (floor[v] > s || ceiling[v] < s)) {
            v--;
        }
        return v > u ? cheapestAhead[v] : CostModel.NEVER;
    }
}
