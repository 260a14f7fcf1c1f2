package stirtide.planner.planning.floor;

import java.util.random.RandomGenerator;
import org.jspecify.annotations.Nullable;

/**
 * Puts services that were taken off back on the floor one by one, within a budget of cost. Now and then an insertion blinks: it overlooks its earliest starts or some minutes
 * of the assistants, so that another one may have them (Christiaens and Vanden Berghe 2020).
 */
final class Recreation {
    private static final int BLINKS_IN = 50;
    private static final int MASKED_IN = 20;

    /** Of so many insertions that many spare the assistants' minutes, one goes by the prices of the search, the rest by strict levels. */
    private static final int KINDS = 8;

    private static final int SPARING = 5;

    /** Least price of an assistant's minute, and how often it may be doubled. */
    private static final long LEAST_SPARED = 100;

    private static final int SPARED_DOUBLINGS = 6;

    private final FloorState state;
    private final EarliestFit fit;
    private final RandomGenerator random;
    private final FitWeights prices;
    private long budget;
    private boolean allNeeded;

    Recreation(FloorState state, RandomGenerator random, FitWeights prices) {
        this.state = state;
        this.fit = new EarliestFit(state);
        this.random = random;
        this.prices = prices;
    }

    /**
     * Begins anew.
     *
     * @param cost what the services may cost together beyond their cheapest handling
     * @param all whether to give up at the first that finds no place
     */
    void begin(long cost, boolean all) {
        budget = cost;
        allNeeded = all;
        fit.weights(weights());
    }

    private FitWeights weights() {
        int kind = random.nextInt(KINDS);
        if (kind < SPARING) {
            return prices.sparing(LEAST_SPARED << random.nextInt(SPARED_DOUBLINGS));
        }
        return kind == SPARING ? prices : FitWeights.STRICT;
    }

    /** What a path costs beyond the cheapest handling of its service. */
    long excess(ServicePath path) {
        return prices.of(path) - prices.handling() * path.grid.leastHandling[0];
    }

    /** Inserts one after the other; false if given up. */
    boolean inOrder(int[] out, int count) {
        for (int i = 0; i < count; i++) {
            if (!blinking(out[i]) && allNeeded) {
                return false;
            }
        }
        return true;
    }

    /** Inserts the first where it likes to be, puts the others back as they were where they still fit, and inserts the rest; false if given up. */
    boolean pushing(int[] out, int count, @Nullable ServicePath[] old) {
        if (!blinking(out[0]) && allNeeded) {
            return false;
        }
        for (int i = 1; i < count; i++) {
            ServicePath path = old[out[i]];
            if (path != null && state.fits(path)) {
                ServicePath copy = path.copy();
                budget -= state.place(copy) ? excess(copy) : 0;
            }
        }
        for (int i = 1; i < count; i++) {
            if (state.paths[out[i]] == null && !insert(out[i], 0) && allNeeded) {
                return false;
            }
        }
        return true;
    }

    private boolean blinking(int index) {
        int chance = random.nextInt(BLINKS_IN);
        if (chance == 0) {
            return insert(index, 1 + random.nextInt(random.nextBoolean() ? 5 : 40));
        }
        if (chance > MASKED_IN) {
            return insert(index, 0);
        }
        ServiceGrid service = state.grid.services[index];
        int length = service.endBase[service.last] - service.startBase[0];
        int from = service.startBase[0] + random.nextInt(length + 40) - 30;
        fit.mask().hide(from, from + 1 + random.nextInt(8));
        boolean done = insert(index, 0);
        fit.mask().hideNothing();
        return done;
    }

    boolean insert(int index, int later) {
        int most = (int) Math.min(FloorDay.MOST_WAIT_MINUTES, budget / prices.lateness());
        ServicePath path = budget < 0 ? null : fit.find(index, later, most);
        if (path == null || !state.place(path)) {
            return false;
        }
        budget -= excess(path);
        return true;
    }
}
