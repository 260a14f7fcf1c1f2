package stirtide.planner.planning.floor;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.LongPredicate;
import java.util.random.RandomGenerator;

/**
 * Plans a salon day: a first plan by inserting services in the order of booking and a short search, then cycles of ruin and recreate that cool down, at other temperatures in
 * turn, each from the best plan so far. Between cycles a proof tries to show that nothing is less late. For the same day, random numbers and steps the answer is the same.
 */
public final class FloorEngine {
    /** Steps spent on the first plan, and the most for days on which a complete one is hard to find. */
    private static final int FIRST_STEPS = 500;

    private static final int MOST_FIRST_STEPS = 5000;

    /** Temperature at which the search for the first plan begins, in parts of {@link FitWeights#TRADED}. */
    private static final double FIRST_HOT = 25_000;

    /** Temperatures at which cycles begin, in parts of {@link FitWeights#TRADED}, and at which all end. */
    private static final double[] HOT = {60_000, 20_000, 100_000};

    private static final double COLD = 3;
    private static final int STEPS_PER_SERVICE = 1500;

    /** Steps between two questions whether to go on. */
    private static final int PART = 50;

    private final FloorSearch search;
    private final LatenessBound lateness;
    private final int handling;
    private final long firstCycle;
    private long steps;

    /**
     * Draws the first plan.
     *
     * @param day the day, of at least one service and one assistant
     * @param random source of chance
     * @throws IllegalArgumentException if the day cannot be asked about
     */
    public FloorEngine(FloorDay day, RandomGenerator random) {
        FloorGrid grid = new FloorGrid(day);
        this.search = new FloorSearch(grid, random);
        this.lateness = new LatenessBound(grid);
        this.handling = Arrays.stream(grid.services)
                .mapToInt(service -> service.leastHandling[0])
                .sum();
        this.firstCycle = (long) STEPS_PER_SERVICE * day.services().size();
        search.build();
        for (int i = 0; i < FIRST_STEPS || !search.complete() && i < MOST_FIRST_STEPS; i++) {
            search.step(FIRST_HOT * Math.max(0, 1 - (double) i / FIRST_STEPS));
        }
    }

    /** The best plan so far; empty if no complete one was found. */
    public Optional<FloorPlan> plan() {
        return search.complete() ? Optional.of(PlanPaths.plan(search.bestPaths())) : Optional.empty();
    }

    /** What no plan can beat, each figure for itself. */
    public FloorScore bounds() {
        return new FloorScore(lateness.lateness(), handling, 0);
    }

    /** On how many levels, from the first, the best plan is as good as the bounds; 0 to 3. */
    public int provenLevels() {
        FloorScore best = search.best();
        FloorScore bounds = bounds();
        if (!search.complete() || best.lateness() != bounds.lateness()) {
            return 0;
        }
        if (best.handling() != bounds.handling()) {
            return 1;
        }
        return best.standing() == bounds.standing() ? 3 : 2;
    }

    /** Steps of search and states of proofs since the first plan. */
    public long steps() {
        return steps;
    }

    /**
     * Improves the plan until nothing better is possible or no more steps are granted.
     *
     * @param more whether to go on after so many steps
     */
    public void improve(LongPredicate more) {
        long length = firstCycle;
        for (int cycle = 0; provenLevels() < 3 && more.test(steps); cycle++) {
            search.loadBest();
            cool(HOT[cycle % HOT.length], length, more);
            if (search.complete()) {
                long before = steps;
                steps += lateness.raise(search.best().lateness(), taken -> more.test(before + taken));
            }
            length = length * 5 / 4;
        }
    }

    private void cool(double hot, long length, LongPredicate more) {
        for (long done = 0; done < length && provenLevels() < 3 && more.test(steps); done += PART) {
            double temperature = hot * Math.pow(COLD / hot, (double) done / length);
            for (int i = 0; i < PART; i++) {
                search.step(temperature);
            }
            steps += PART;
        }
    }
}
