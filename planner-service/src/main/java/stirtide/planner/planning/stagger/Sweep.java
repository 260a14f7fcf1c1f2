package stirtide.planner.planning.stagger;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** A {@link JointSearch} over all runs of a day that looks for plans within a claim, or shows that there are none. */
final class Sweep {
    private final MinuteGrid grid;
    private final Claim claim;
    private final int[] price;
    private final LevelWeights weights;
    private final long[] minutePrice;
    private final CoverTable[] tables;
    private final MixerAvailability mixers;
    private long steps;
    private boolean closed;

    /**
     * @param price price of a minute of mixing, on the scale of the weights
     * @param named whether people are distinguished
     */
    Sweep(MinuteGrid grid, Claim claim, int[] price, LevelWeights weights, boolean named) {
        this.grid = grid;
        this.claim = claim;
        this.price = price;
        this.weights = weights;
        int maxWait = (int) Math.min(grid.problem.maxWaitMinutes(), claim.waitMinutes());
        this.minutePrice = Arrays.stream(price).asLongStream().toArray();
        this.mixers = named ? MixerAvailability.named(grid) : MixerAvailability.unnamed(grid);
        boolean oneMixer = Arrays.stream(grid.capacity).allMatch(mixers -> mixers <= 1);
        CostModel costs = new CostModel(grid, weights, maxWait);
        costs.load(minutePrice);
        this.tables = new CoverTable[grid.runs.length];
        for (RunGrid run : grid.runs) {
            tables[run.index] = new CoverTable(run, weights, maxWait, costs.start[run.mix], oneMixer ? run.mix : 1);
        }
    }

    boolean named() {
        return mixers.areNamed();
    }

    /** The same sweep that distinguishes people. */
    Sweep withNames() {
        return new Sweep(grid, claim, price, weights, true);
    }

    static boolean suits(MinuteGrid grid) {
        return Arrays.stream(grid.runs).allMatch(CoverTable::suits);
    }

    long steps() {
        return steps;
    }

    boolean closed() {
        return closed;
    }

    /** The certificate of a sweep that closed. */
    Certificate certificate() {
        MinutePrices prices = MinutePrices.of(grid.origin, price);
        return new Certificate(
                claim, new Certificate.Swept(weights.delay(), weights.mix(), weights.age(), prices, mixers.areNamed()));
    }

    /**
     * Paths that cost no more than the claim allows, or null if none were found.
     *
     * @param width most states of one minute
     * @param patience 0 to follow the best of more states, else it gives up there and after so many steps
     */
    RunPath @Nullable [] run(int width, long patience) {
        long limit = claim.value(weights) + 1;
        JointSearch search = new JointSearch(tables, weights, mixers, minutePrice, limit, width, patience);
        RunPath[] found = search.solve();
        steps += search.steps();
        closed = found == null && !search.cut();
        return found;
    }

    /** By how much the prices alone exceed what the claim allows; the nearer to 0 from below, the fewer states live. */
    long margin() {
        long sum = -claim.value(weights);
        for (int t = 0; t < grid.horizon; t++) {
            sum -= minutePrice[t] * grid.capacity[t];
        }
        for (CoverTable table : tables) {
            sum += table.rest(0, 0);
        }
        return sum;
    }
}
