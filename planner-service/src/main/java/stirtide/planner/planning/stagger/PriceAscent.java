package stirtide.planner.planning.stagger;

import java.util.Arrays;

/**
 * Raises a {@link PriceBound} by subgradient steps: minutes that hold more mixes than mixers grow dearer, idle ones cheaper.
 * The direction keeps half of the last one (Camerini, Fratta and Maffioli 1975) and the step is Polyak's, shrunk when the
 * bound stands still. All in integers.
 */
final class PriceAscent {
    private static final int PATIENCE = 12;
    private static final long LARGEST_STEP = 1000;
    private static final long SMALLEST_STEP = 8;

    final PriceBound bound;
    final Claim claim;
    final int maxWait;
    int[] bestPrice;
    LevelWeights bestWeights;
    /** Best bound less what the claim allows; above 0 the claim is refuted. */
    long bestMargin = Long.MIN_VALUE;

    private final long[] direction;
    private long mixDirection;
    private long waitDirection;
    private long step = LARGEST_STEP;
    private int failures;

    PriceAscent(PriceBound bound, Claim claim, int[] price, LevelWeights weights) {
        this.bound = bound;
        this.claim = claim;
        this.maxWait = (int) Math.min(bound.grid.problem.maxWaitMinutes(), claim.waitMinutes());
        this.bestPrice = price.clone();
        this.bestWeights = weights;
        this.direction = new long[bound.grid.horizon];
        bound.prices(price);
        bound.terms(weights, maxWait);
    }

    /** Weights to begin with for a claim. */
    static LevelWeights weights(Claim claim) {
        long scale = PriceBound.SCALE;
        boolean onTime = claim.waitMinutes() == 0;
        if (claim.mixCost() == Claim.ANY) {
            return new LevelWeights(CostModel.NEVER, scale, 0, 0);
        }
        if (claim.ageMinutes() == Claim.ANY) {
            return new LevelWeights(CostModel.NEVER, onTime ? 0 : scale, scale, 0);
        }
        return new LevelWeights(CostModel.NEVER, onTime ? 0 : 30 * scale, 20 * scale, scale);
    }

    boolean closed() {
        return bestMargin > 0;
    }

    boolean stalled() {
        return step <= SMALLEST_STEP;
    }

    /** Evaluates the present prices and, unless they refute the claim, takes a step. */
    void round() {
        long value = bound.evaluate();
        long margin = value >= CostModel.NEVER ? value : value - claim.value(bound.costs.weights);
        if (margin > bestMargin) {
            bestMargin = margin;
            bestPrice = bound.price.clone();
            bestWeights = bound.costs.weights;
            failures = 0;
        } else if (++failures >= PATIENCE) {
            step = Math.max(SMALLEST_STEP, step * 7 / 10);
            failures = 0;
        }
        if (margin <= 0) {
            move(PriceBound.SCALE * 5 / 4 - margin);
        }
    }

    /** Returns to the best prices found. */
    void settle() {
        bound.prices(bestPrice);
        bound.terms(bestWeights, maxWait);
        bound.evaluate();
        Arrays.fill(direction, 0);
        mixDirection = 0;
        waitDirection = 0;
    }

    private void move(long missing) {
        LevelWeights weights = bound.costs.weights;
        boolean movesMix = weights.age() > 0 && weights.mix() > 0;
        boolean movesWait = weights.mix() > 0 && weights.delay() > 0;
        long norm = turn();
        if (movesMix) {
            mixDirection = turned(bound.mixCost - claim.mixCost(), mixDirection);
            norm += square(bound.mixCost - claim.mixCost());
        }
        if (movesWait) {
            waitDirection = turned(bound.waitMinutes - claim.waitMinutes(), waitDirection);
            norm += square(bound.waitMinutes - claim.waitMinutes());
        }
        if (norm == 0) {
            return;
        }
        long length = missing * step / LARGEST_STEP;
        for (int t = 0; t < direction.length; t++) {
            long by = direction[t] * length / norm / 256;
            if (by != 0) {
                bound.price(t, Math.max(0, bound.price[t] + by));
            }
        }
        long mix = movesMix ? Math.max(1, weights.mix() + mixDirection * length / norm / 256) : weights.mix();
        long wait = movesWait ? Math.max(1, weights.delay() + waitDirection * length / norm / 256) : weights.delay();
        bound.terms(new LevelWeights(weights.lastResort(), wait, mix, weights.age()), maxWait);
    }

    private long turn() {
        long norm = 0;
        for (int t = 0; t < direction.length; t++) {
            long over = bound.use[t] - bound.grid.capacity[t];
            if (over < 0 && bound.price[t] == 0) {
                over = 0;
            }
            direction[t] = turned(over, direction[t]);
            norm += over * over;
        }
        return norm;
    }

    private static long turned(long toward, long before) {
        return toward * 256 + before / 2;
    }

    private static long square(long x) {
        return x * x;
    }
}
