package stirtide.planner.planning.stagger;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * The bound that prices on minutes of mixing give (Lagrangian relaxation of "no more mixes than mixers", Held and Karp
 * 1971): the cheapest paths of all runs, less the price of all mixers. Only runs whose prices or limits changed are searched
 * again.
 */
final class PriceBound {
    /** Price units of one unit of the objective. */
    static final long SCALE = 4096;

    final MinuteGrid grid;
    final CostModel costs;
    final int[] price;
    final int[] use;
    final RunPath[] paths;
    final long[] cost;
    final @Nullable StartLimits[] limits;
    long waitMinutes;
    long mixCost;
    /** The bound, {@link CostModel#NEVER} if some run has no path left. */
    long value;

    private final RunPathSearch search;
    private final boolean[] stale;
    private final long[] minutePrice;
    private final int[] changedBefore;
    private boolean changed = true;

    PriceBound(MinuteGrid grid) {
        this.grid = grid;
        this.costs = new CostModel(grid, new LevelWeights(CostModel.NEVER, 0, 0, 0), 0);
        this.price = new int[grid.horizon];
        this.use = new int[grid.horizon];
        this.paths = new RunPath[grid.runs.length];
        this.cost = new long[grid.runs.length];
        this.limits = new StartLimits[grid.runs.length];
        this.search = new RunPathSearch(grid);
        this.stale = new boolean[grid.runs.length];
        this.minutePrice = new long[grid.horizon];
        this.changedBefore = new int[grid.horizon + 1];
        Arrays.fill(stale, true);
    }

    long steps() {
        return search.steps;
    }

    /** Sets weights and the longest wait of one bowl. */
    void terms(LevelWeights weights, int maxWait) {
        if (!weights.equals(costs.weights) || maxWait != costs.maxWait) {
            costs.weights = weights;
            costs.maxWait = maxWait;
            Arrays.fill(stale, true);
        }
    }

    void prices(int[] prices) {
        System.arraycopy(prices, 0, price, 0, price.length);
        changed = true;
    }

    void price(int minute, long to) {
        price[minute] = (int) Math.min(to, Integer.MAX_VALUE / 4);
        changed = true;
    }

    void limit(int run, @Nullable StartLimits to) {
        if (limits[run] != to) {
            limits[run] = to;
            stale[run] = true;
        }
    }

    long evaluate() {
        if (changed) {
            spread();
        }
        value = 0;
        waitMinutes = 0;
        mixCost = 0;
        for (RunGrid run : grid.runs) {
            int r = run.index;
            if (stale[r] && !search(run)) {
                value = CostModel.NEVER;
                return value;
            }
            value += cost[r];
            waitMinutes += paths[r].score.waitMinutes();
            mixCost += paths[r].score.mixCost();
        }
        for (int t = 0; t < grid.horizon; t++) {
            value -= (long) price[t] * grid.capacity[t];
        }
        return value;
    }

    /** Cost of a run's cheapest path at the present prices under other limits. */
    long costWith(RunGrid run, StartLimits other) {
        return search.cost(run, costs, other);
    }

    private boolean search(RunGrid run) {
        int r = run.index;
        long found = search.cost(run, costs, limits[r]);
        if (found >= CostModel.NEVER) {
            return false;
        }
        if (paths[r] != null) {
            count(run, paths[r], -1);
        }
        paths[r] = search.path(run);
        cost[r] = found;
        stale[r] = false;
        count(run, paths[r], 1);
        return true;
    }

    private void count(RunGrid run, RunPath path, int by) {
        for (int s : path.start) {
            for (int t = s; t < s + run.mix; t++) {
                use[t] += by;
            }
        }
    }

    /** Brings the start prices up to date and marks the runs that a changed minute concerns. */
    private void spread() {
        for (int t = 0; t < grid.horizon; t++) {
            changedBefore[t + 1] = changedBefore[t] + (minutePrice[t] != price[t] ? 1 : 0);
            minutePrice[t] = price[t];
        }
        if (changedBefore[grid.horizon] > 0 || !costs.loaded) {
            costs.load(minutePrice);
        }
        for (RunGrid run : grid.runs) {
            int from = Math.max(0, run.start - run.life);
            int to = Math.min(grid.horizon, run.finish + costs.maxWait + run.mix);
            if (changedBefore[to] > changedBefore[from]) {
                stale[run.index] = true;
            }
        }
        changed = false;
    }

    /** Whether the present paths keep within the mixers of every minute. */
    boolean fits() {
        for (int t = 0; t < grid.horizon; t++) {
            if (use[t] > grid.capacity[t]) {
                return false;
            }
        }
        return true;
    }
}
