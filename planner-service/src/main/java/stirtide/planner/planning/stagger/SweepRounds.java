package stirtide.planner.planning.stagger;

import java.util.Arrays;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Sweeps for one claim after the other: each wider than the one before while that pays, and with the people distinguished as soon
 * as one finds a plan for which mixers are enough but nobody can be found.
 */
final class SweepRounds {
    private static final int FIRST_WIDTH = 256;
    private static final int LARGEST_WIDTH = 16_384;
    /** Widths times runs stay below this, so that a sweep needs at most about 100 MB. */
    private static final int LARGEST_AREA = 700_000;

    private static final int WIDER = 4;
    private static final int STEPS_OF_A_CELL = 8;
    /** Weight of the second level where clients wait, beside 1 for age and the price scale for waits. */
    private static final long LATE_MIX = 64;

    /** Days with more runs are left to the search where it found no plan without the stylist. */
    private static final int MOST_RUNS_TO_COMPLETE = 40;

    private final MinuteGrid grid;
    private final Incumbent incumbent;
    private final boolean suits;
    private @Nullable Sweep sweep;
    private @Nullable Certificate closed;
    private int width = FIRST_WIDTH;
    private long steps;
    private long allSteps;
    private long earlySteps;
    private final long preparation;

    SweepRounds(MinuteGrid grid, Incumbent incumbent) {
        this.grid = grid;
        this.incumbent = incumbent;
        this.suits = Sweep.suits(grid);
        this.preparation = Arrays.stream(grid.runs)
                .mapToLong(run -> (long) STEPS_OF_A_CELL * run.minutes * (run.minutes + run.life))
                .sum();
    }

    /** Leaves the claim for a new plan; widths that did not pay are not begun with. */
    void leave() {
        sweep = null;
        closed = null;
        width = Math.max(FIRST_WIDTH, width / WIDER);
    }

    /** Begins with a claim that prices alone do not refute; {@code waitPrices} are those that bound the waits. */
    void begin(PriceAscent root, int @Nullable [] waitPrices) {
        closed = null;
        steps = 0;
        sweep = suits ? sweep(root, waitPrices) : null;
    }

    /** Begins to look for any plan in which no stylist mixes. */
    void beginComplete() {
        if (suits && grid.runs.length <= MOST_RUNS_TO_COMPLETE) {
            long minutes =
                    Arrays.stream(grid.runs).mapToLong(run -> run.minutes).sum();
            Claim any = new Claim(minutes * grid.problem.maxWaitMinutes(), Claim.ANY, Claim.ANY);
            LevelWeights waits = new LevelWeights(CostModel.NEVER, PriceBound.SCALE, 0, 0);
            sweep = new Sweep(grid, any, new int[grid.horizon], waits, true);
        }
    }

    boolean running() {
        return sweep != null;
    }

    /** The proof, once a sweep left no plan within the claim. */
    @Nullable
    Certificate closed() {
        return closed;
    }

    /** Steps of work on this claim. */
    long steps() {
        return steps;
    }

    /** Steps of work on all claims. */
    long allSteps() {
        return allSteps;
    }

    /** Goes on with people distinguished: mixers alone cannot decide the claim. */
    void tellPeopleApart() {
        if (sweep != null && !sweep.named()) {
            sweep = sweep.withNames();
        }
    }

    void round() {
        Sweep running = Objects.requireNonNull(sweep);
        long before = running.steps();
        RunPath[] found = running.run(width, 0);
        steps += running.steps() - before;
        allSteps += running.steps() - before;
        if (found != null) {
            if (!incumbent.offer(found)) {
                sweep = running.named() ? null : running.withNames();
            }
        } else if (running.closed()) {
            closed = running.certificate();
            sweep = null;
        } else if (width < mostWidth()) {
            width = Math.min(width * WIDER, mostWidth());
        } else {
            sweep = null;
        }
    }

    /** Steps that making the tables of a sweep is worth. */
    long preparation() {
        return preparation;
    }

    /** Steps of all early tries. */
    long earlySteps() {
        return earlySteps;
    }

    /**
     * Tries a claim before its prices have come to rest: often few states are left to follow then. Gives up rather than cut.
     *
     * @param most steps it may take
     * @return the proof, or null; a plan that it finds instead is offered
     */
    @Nullable
    Certificate tryEarly(PriceAscent climbing, int @Nullable [] waitPrices, long most) {
        if (!suits) {
            return null;
        }
        Sweep early = sweep(climbing, waitPrices);
        RunPath[] found = early.run(mostWidth() / WIDER, most);
        earlySteps += preparation + early.steps();
        allSteps += preparation + early.steps();
        if (found != null) {
            incumbent.offer(found);
        }
        return early.closed() ? early.certificate() : null;
    }

    private int mostWidth() {
        return Math.min(LARGEST_WIDTH, LARGEST_AREA / grid.runs.length);
    }

    /** The sweep with those weights that leave least to it. */
    private Sweep sweep(PriceAscent root, int @Nullable [] waitPrices) {
        Claim claim = root.claim;
        LevelWeights own = root.bestWeights;
        Sweep plain = new Sweep(grid, claim, root.bestPrice, own, false);
        boolean waitsOnly = claim.mixCost() == Claim.ANY;
        boolean bowlsOnly = !waitsOnly && claim.ageMinutes() == Claim.ANY;
        if (waitsOnly || bowlsOnly && claim.waitMinutes() == 0) {
            return plain;
        }
        if (claim.waitMinutes() > 0 && waitPrices != null) {
            LevelWeights apart = new LevelWeights(own.lastResort(), PriceBound.SCALE, LATE_MIX, bowlsOnly ? 0 : 1);
            return new Sweep(grid, claim, waitPrices, apart, false);
        }
        LevelWeights apart = new LevelWeights(own.lastResort(), own.delay(), 8 * own.mix(), own.age());
        Sweep other = new Sweep(grid, claim, root.bestPrice, apart, false);
        return other.margin() >= plain.margin() ? other : plain;
    }
}
