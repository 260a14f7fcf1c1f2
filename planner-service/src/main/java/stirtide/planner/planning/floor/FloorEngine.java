package stirtide.planner.planning.floor;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.LongPredicate;
import java.util.random.RandomGenerator;
import org.jspecify.annotations.Nullable;

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

    /** Temperature at which a search of few steps begins. */
    private static final double RESUMED_HOT = 3_000;

    private static final double COLD = 3;
    private static final int STEPS_PER_SERVICE = 1500;

    /** Steps between two questions whether to go on. */
    private static final int PART = 25;

    private final FloorSearch search;
    private final @Nullable LatenessBound lateness;
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
        this(new FloorGrid(day, FloorConditions.none(day)), List.of(), random, true);
        begin(FIRST_STEPS, MOST_FIRST_STEPS);
    }

    /**
     * Puts the services of a day in progress on the floor: as shown where that is still possible, the others in the order of booking.
     * Nothing is proved of such a day.
     *
     * @param day the day, of at least one service and one assistant
     * @param conditions what is under way and in use
     * @param shown bowls of the plan on show that are still to be mixed
     * @param random source of chance
     */
    public FloorEngine(FloorDay day, FloorConditions conditions, List<PlacedBowl> shown, RandomGenerator random) {
        this(new FloorGrid(day, conditions), shown, random, false);
    }

    private FloorEngine(FloorGrid grid, List<PlacedBowl> shown, RandomGenerator random, boolean proves) {
        this.search = new FloorSearch(grid, new ShownMixes(grid.services.length, shown), random);
        this.lateness = proves ? new LatenessBound(grid) : null;
        this.handling = Arrays.stream(grid.services)
                .mapToInt(service -> service.leastHandling[0])
                .sum();
        this.firstCycle = (long) STEPS_PER_SERVICE * grid.services.length;
        search.build();
    }

    /**
     * A short search.
     *
     * @param least steps of it
     * @param most steps of it while some service has no place
     */
    public void begin(int least, int most) {
        for (int i = 0; provenLevels() < 3 && (i < least || !search.complete() && i < most); i++) {
            search.step(FIRST_HOT * Math.max(0, 1 - (double) i / least));
        }
    }

    /**
     * A search of so many steps from the best plan so far, without proofs.
     *
     * @param length steps
     * @param more asked now and then whether to go on
     */
    public void search(long length, BooleanSupplier more) {
        search.loadBest();
        cool(RESUMED_HOT, length, taken -> more.getAsBoolean());
    }

    /** Every bowl of the best plan so far; services that have no place have none. */
    public List<PlacedBowl> bowls() {
        return PlanPaths.bowls(search.bestPaths());
    }

    /** What the best plan so far costs, services without a place left out. */
    public FloorScore score() {
        return search.best();
    }

    /** The best plan so far; empty if no complete one was found. */
    public Optional<FloorPlan> plan() {
        return search.complete() ? Optional.of(PlanPaths.plan(search.bestPaths())) : Optional.empty();
    }

    /** What no plan can beat, each figure for itself. */
    public FloorScore bounds() {
        return new FloorScore(lateness == null ? 0 : lateness.lateness(), handling, 0);
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
            if (lateness != null && search.complete()) {
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
