package stirtide.planner.planning.stagger;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** A plan in the making: the paths of the runs, how many mixes each minute holds, and where the next run fits best. */
final class Occupancy {
    private static final int SPLITS = 6;
    private static final int FIRST_WAIT = 8;
    static final int NOISE = 1024;

    final MinuteGrid grid;
    final @Nullable RunPath[] paths;
    final int[] use;

    private final CostModel costs;
    private final RunPathSearch search;
    private final long[] prefix;
    private final int[] noise = new int[NOISE];
    private int noiseAt;
    private int noiseTimes = 1;
    private long crowding;
    private long @Nullable [] crowds;
    private int splitsLeft;
    private @Nullable RunPath best;
    private long bestCost;

    Occupancy(MinuteGrid grid, LevelWeights weights) {
        this.grid = grid;
        this.paths = new RunPath[grid.runs.length];
        this.use = new int[grid.horizon];
        this.costs = new CostModel(grid, weights, 0);
        this.search = new RunPathSearch(grid);
        this.prefix = new long[grid.horizon + 1];
    }

    long steps() {
        return search.steps;
    }

    void weights(LevelWeights weights) {
        costs.weights = weights;
    }

    /** Small amounts that break ties between starts, and where in them to begin. */
    void noise(int[] amounts) {
        System.arraycopy(amounts, 0, noise, 0, NOISE);
    }

    /** Where in the amounts to begin, and how many times they count. */
    void shiftNoise(int to, int times) {
        noiseAt = to;
        noiseTimes = times;
    }

    /** Prices per minute that lead insertion away from dear minutes, in parts of their value; null for none. */
    void guide(int @Nullable [] minutePrice, long numerator, long denominator) {
        for (int t = 0; t < grid.horizon; t++) {
            prefix[t + 1] = prefix[t] + (minutePrice == null ? 0 : minutePrice[t] * numerator / denominator);
        }
    }

    void put(int r, RunPath path) {
        paths[r] = path;
        count(grid.runs[r], path, 1);
    }

    RunPath remove(int r) {
        RunPath path = java.util.Objects.requireNonNull(paths[r]);
        paths[r] = null;
        count(grid.runs[r], path, -1);
        return path;
    }

    void clear() {
        for (int r = 0; r < paths.length; r++) {
            if (paths[r] != null) {
                remove(r);
            }
        }
    }

    /** The paths in the plan; all runs must be on it. */
    RunPath[] copyOfPaths() {
        return Arrays.copyOf(paths, paths.length);
    }

    void load(RunPath[] from) {
        clear();
        for (int r = 0; r < from.length; r++) {
            put(r, from[r]);
        }
    }

    private void count(RunGrid run, RunPath path, int by) {
        for (int s : path.start) {
            if (s != RunPath.STYLIST) {
                for (int t = s; t < s + run.mix; t++) {
                    use[t] += by;
                }
            }
        }
    }

    /**
     * Puts a run where the others leave it cheapest.
     *
     * @param crowdingPrice what a full minute costs, 0 if it is closed
     * @return false if the run has no path at all
     */
    boolean insert(int r, long crowdingPrice) {
        crowding = crowdingPrice;
        return place(grid.runs[r], grid.problem.maxWaitMinutes());
    }

    /** Puts a run in the plan with all its bowls mixed by the stylist; false if no bowl can feed some minute. */
    boolean insertLastResort(int r) {
        RunGrid run = grid.runs[r];
        Arrays.fill(costs.start[run.mix], CostModel.NEVER);
        RunPath path = cheapest(run, 0, costs.weights.lastResort());
        if (path != null) {
            put(r, path);
        }
        return path != null;
    }

    /** As {@link #insert}, with a price for each full minute and a longest wait. */
    boolean push(int r, long[] crowdingPrices, int longestWait) {
        crowding = 1;
        crowds = crowdingPrices;
        RunGrid run = grid.runs[r];
        price(run);
        RunPath path = cheapest(run, longestWait, CostModel.NEVER);
        crowds = null;
        if (path != null) {
            put(r, path);
        }
        return path != null;
    }

    /** Tries short waits first: a path whose waits together are within the limit of each is the best of all. */
    private boolean place(RunGrid run, int longestWait) {
        price(run);
        RunPath path = cheapest(run, 0, CostModel.NEVER);
        int most = Math.min(FIRST_WAIT, longestWait);
        if (path == null && most > 0) {
            path = cheapest(run, most, CostModel.NEVER);
        }
        if (path == null || path.score.waitMinutes() > most) {
            if (most < longestWait || path == null) {
                int enough = path == null ? longestWait : (int) Math.min(longestWait, path.score.waitMinutes());
                path = cheapest(run, enough, costs.weights.lastResort());
            }
        }
        if (path == null && costs.weights.lastResort() < CostModel.NEVER) {
            return insertLastResort(run.index);
        }
        if (path != null) {
            put(run.index, path);
        }
        return path != null;
    }

    private @Nullable RunPath cheapest(RunGrid run, int maxWait, long lastResort) {
        LevelWeights weights = costs.weights;
        costs.maxWait = maxWait;
        costs.weights = new LevelWeights(lastResort, weights.delay(), weights.mix(), weights.age());
        splitsLeft = SPLITS;
        best = null;
        bestCost = CostModel.NEVER;
        settle(run, null);
        costs.weights = weights;
        return best;
    }

    /**
     * The shortest path may mix two bowls of the run at once where one pair of mixers is free. Then either the minute at which
     * the second begins is fed by a bowl mixed after the first, or the first is mixed earlier, or one bowl feeds both minutes:
     * the last is tried where the others fail.
     */
    private void settle(RunGrid run, @Nullable StartLimits limits) {
        long cost = search.cost(run, costs, limits);
        if (cost >= bestCost) {
            return;
        }
        RunPath path = search.path(run);
        int clash = MixClash.first(run, path, use, grid.capacity, crowding != 0);
        if (clash < 0) {
            best = path;
            bestCost = cost;
        } else if (--splitsLeft >= 0) {
            int k = clash / path.start.length;
            int j = clash % path.start.length;
            int first = path.from[k];
            int next = path.from[j];
            StartLimits later = limits == null ? new StartLimits(run) : limits.copy();
            StartLimits earlier = later.copy();
            StartLimits same = later.copy();
            later.low[next] = Math.max(later.low[next], path.start[k] + run.mix);
            earlier.high[first] = Math.min(earlier.high[first], path.start[j] - run.mix);
            same.unbroken(first, next, 2 * run.life + run.finish - run.start + grid.problem.maxWaitMinutes());
            settle(run, later);
            settle(run, earlier);
            if (best == null) {
                settle(run, same);
            }
        }
    }

    private void price(RunGrid run) {
        long[] price = costs.start[run.mix];
        boolean[] may = grid.mayStart[run.mix];
        int from = Math.max(0, run.start - run.life);
        int to = Math.min(grid.horizon - run.mix, run.finish + grid.problem.maxWaitMinutes());
        int full = 0;
        long crowd = 0;
        for (int t = from; t < from + run.mix - 1; t++) {
            full += isFull(t) ? 1 : 0;
            crowd += isFull(t) ? crowd(t) : 0;
        }
        for (int s = from; s <= to; s++) {
            int t = s + run.mix - 1;
            full += isFull(t) ? 1 : 0;
            crowd += isFull(t) ? crowd(t) : 0;
            boolean closed = !may[s] || full > 0 && crowding == 0;
            price[s] = closed
                    ? CostModel.NEVER
                    : prefix[t + 1] - prefix[s] + crowd + noise[s + noiseAt & NOISE - 1] * noiseTimes;
            full -= isFull(s) ? 1 : 0;
            crowd -= isFull(s) ? crowd(s) : 0;
        }
    }

    private boolean isFull(int t) {
        return use[t] >= grid.capacity[t];
    }

    private long crowd(int t) {
        return crowds == null ? crowding : crowds[t];
    }
}
