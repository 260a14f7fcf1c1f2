package stirtide.planner.planning.stagger;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Cheapest bowls of one run as a shortest path over its minutes. An arc from u to v is one bowl; its start is the
 * cheapest one that keeps it fresh up to v. For one u the allowed starts only widen as v comes nearer, so the best start
 * is a running minimum and a run costs about (minutes x working life) steps.
 */
final class RunPathSearch {
    private final long[] best;
    private final int[] cameFrom;
    private final int[] cameStart;
    private final int[] floor;
    private final int[] ceiling;
    private final int[] stackFrom;
    /** Steps of work done so far, to share work out without a clock. */
    long steps;

    private long running;
    private int runningStart;

    RunPathSearch(MinuteGrid grid) {
        int longest = 1;
        for (RunGrid run : grid.runs) {
            longest = Math.max(longest, run.minutes);
        }
        best = new long[longest + 1];
        cameFrom = new int[longest + 1];
        cameStart = new int[longest + 1];
        floor = new int[longest + 1];
        ceiling = new int[longest + 1];
        stackFrom = new int[longest + 1];
    }

    /** Cost of the cheapest path from the start of the run, {@link CostModel#NEVER} if there is none. */
    long cost(RunGrid run, CostModel costs, @Nullable StartLimits limits) {
        Arrays.fill(best, 0, run.minutes + 1, CostModel.NEVER);
        best[0] = 0;
        for (int u = 0; u < run.minutes; u++) {
            if (best[u] < CostModel.NEVER) {
                if (limits == null) {
                    relax(run, costs, u);
                } else {
                    relaxLimited(run, costs, limits, u);
                }
                if (costs.weights.lastResort() < CostModel.NEVER) {
                    relaxLastResort(run, costs.weights, u);
                }
            }
        }
        return best[run.minutes];
    }

    private void relax(RunGrid run, CostModel costs, int u) {
        long[] price = costs.start[run.mix];
        long waitWeight = costs.weights.delay();
        long ageWeight = costs.weights.age();
        int onTime = run.at[u] - run.lead;
        int s = Math.min(onTime + costs.maxWait, price.length - 1);
        int first = s;
        int v = Math.min(run.reach[u], run.fedBy(s + run.life));
        long least = CostModel.NEVER;
        int leastStart = 0;
        for (; v > u; v--) {
            for (int low = run.end[v] - run.life; s >= low; s--) {
                long c = price[s];
                if (c < CostModel.NEVER) {
                    c += ageWeight * run.lead + (s > onTime ? waitWeight * (s - onTime) : ageWeight * (onTime - s));
                    if (c < least) {
                        least = c;
                        leastStart = s;
                    }
                }
            }
            reach(run, costs.weights, u, v, least, leastStart);
        }
        steps += first - s + 8;
    }

    private void reach(RunGrid run, LevelWeights weights, int u, int v, long startCost, int start) {
        int bowl = run.bowlCost[u][v - u - 1];
        if (startCost >= CostModel.NEVER || bowl < 0) {
            return;
        }
        long c = best[u] + startCost + weights.mix() * bowl;
        if (c < best[v]) {
            best[v] = c;
            cameFrom[v] = u;
            cameStart[v] = start;
        }
    }

    private void relaxLimited(RunGrid run, CostModel costs, StartLimits limits, int u) {
        int onTime = run.at[u] - run.lead;
        int latest = Math.min(onTime + costs.maxWait, costs.grid.horizon - 1);
        int top = Math.min(run.reach[u], run.fedBy(latest + run.life));
        int low = StartLimits.ANY_LOW;
        int high = latest;
        for (int v = u + 1; v <= top; v++) {
            low = Math.max(low, limits.low[v - 1]);
            high = Math.min(high, limits.high[v - 1]);
            floor[v] = Math.max(low, run.end[v] - run.life);
            ceiling[v] = high;
        }
        running = CostModel.NEVER;
        int seenLow = 0;
        int seenHigh = -1;
        for (int v = top; v > u; v--) {
            if (floor[v] > ceiling[v]) {
                continue;
            }
            if (seenHigh < seenLow) {
                scan(run, costs, limits, u, floor[v], ceiling[v]);
            } else {
                scan(run, costs, limits, u, floor[v], seenLow - 1);
                scan(run, costs, limits, u, seenHigh + 1, ceiling[v]);
            }
            seenLow = floor[v];
            seenHigh = ceiling[v];
            reach(run, costs.weights, u, v, running, runningStart);
        }
    }

    private void scan(RunGrid run, CostModel costs, StartLimits limits, int u, int from, int to) {
        steps += 2 * (to - from) + 4;
        for (int s = to; s >= from; s--) {
            long c = startCost(run, costs, u, s);
            if (c < running && !limits.isStruck(u, s)) {
                running = c;
                runningStart = s;
            }
        }
    }

    /** Cost of starting at s a bowl that begins at u, without its second-level cost. */
    static long startCost(RunGrid run, CostModel costs, int u, int s) {
        long c = costs.start[run.mix][s];
        if (c >= CostModel.NEVER) {
            return CostModel.NEVER;
        }
        int onTime = run.at[u] - run.lead;
        LevelWeights weights = costs.weights;
        return c
                + weights.age() * run.lead
                + (s > onTime ? weights.delay() * (s - onTime) : weights.age() * (onTime - s));
    }

    private void relaxLastResort(RunGrid run, LevelWeights weights, int u) {
        int top = Math.min(run.reach[u], run.fedBy(run.at[u] + run.life - run.mix));
        for (int v = top; v > u; v--) {
            reach(run, weights, u, v, weights.lastResort() + weights.age() * run.mix, RunPath.STYLIST);
        }
    }

    /** Cost of the cheapest way to minute u in the last search. */
    long reached(int u) {
        return best[u];
    }

    /** The path that the last call of {@link #cost} found. */
    RunPath path(RunGrid run) {
        int bowls = 0;
        for (int v = run.minutes; v > 0; v = cameFrom[v]) {
            stackFrom[bowls++] = v;
        }
        int[] from = new int[bowls];
        int[] to = new int[bowls];
        int[] start = new int[bowls];
        for (int k = 0; k < bowls; k++) {
            int v = stackFrom[bowls - 1 - k];
            from[k] = cameFrom[v];
            to[k] = v;
            start[k] = cameStart[v];
        }
        return new RunPath(run, from, to, start);
    }
}
