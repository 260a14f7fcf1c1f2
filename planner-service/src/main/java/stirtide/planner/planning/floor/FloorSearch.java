package stirtide.planner.planning.floor;

import java.util.random.RandomGenerator;
import org.jspecify.annotations.Nullable;

/**
 * Ruin and recreate (Schrimpf and others 2000) with the acceptance of simulated annealing: takes a few services that meet off the floor, makes room by mixing some of the
 * bowls that stay at other minutes, and puts the services back one by one at their cheapest fit.
 */
final class FloorSearch {
    /** Stands for a service that is not placed. */
    private static final long MISSING = 1L << 40;

    /** Slack of a budget for what is only estimated. */
    private static final long SLACK = 100;

    private final FloorGrid grid;
    private final FloorState state;
    private final RandomGenerator random;
    private final FitWeights prices = FitWeights.TRADED;
    private final Ruin ruin;
    private final Recreation recreation;
    private final BowlShift shift;
    private final @Nullable ServicePath[] old;
    private final @Nullable ServicePath[] bestPaths;
    private FloorScore best = new FloorScore(Integer.MAX_VALUE, 0, 0);
    private int bestMissing = Integer.MAX_VALUE;
    private long now;
    private int missing;

    FloorSearch(FloorGrid grid, ShownMixes shown, RandomGenerator random) {
        this.grid = grid;
        this.state = new FloorState(grid, shown);
        this.random = random;
        this.ruin = new Ruin(grid, random);
        this.recreation = new Recreation(state, random, prices);
        this.shift = new BowlShift(state);
        this.old = new ServicePath[grid.services.length];
        this.bestPaths = new ServicePath[grid.services.length];
    }

    FloorScore best() {
        return best;
    }

    boolean complete() {
        return bestMissing == 0;
    }

    /** Paths of the best plan, null for services that it does not place. */
    @Nullable
    ServicePath[] bestPaths() {
        return bestPaths;
    }

    /** Puts all services on the floor as shown, or else in the order of booking, as far as they find a place. */
    void build() {
        recreation.begin(MISSING, false);
        for (int i : grid.byTime) {
            ServicePath path = ShownMixes.path(grid, grid.services[i], state.shown.of(i));
            if (path != null && state.fits(path)) {
                state.place(path);
            }
        }
        for (int i : grid.byTime) {
            if (state.paths[i] == null) {
                recreation.insert(i, 0);
            }
        }
        now = energy();
        offer();
    }

    /** Goes back to the best plan. */
    void loadBest() {
        for (int i = 0; i < old.length; i++) {
            if (state.paths[i] != null) {
                state.takeOff(i);
            }
        }
        for (ServicePath path : bestPaths) {
            if (path != null) {
                state.putBack(path);
            }
        }
        now = energy();
    }

    /** One step; what is dearer is kept with a probability that falls with the difference in parts of the temperature. */
    void step(double temperature) {
        boolean wide = random.nextBoolean();
        int count = ruin.choose(state, missing > 0, wide);
        int[] out = ruin.chosen;
        long allowed = (long) (-temperature * Math.log(1 - random.nextDouble()));
        long budget = takeOff(out, count) + allowed + SLACK;
        recreation.begin(missing > 0 ? MISSING : budget, missing == 0);
        shift.nothing();
        if (random.nextBoolean()) {
            ServiceGrid one = grid.services[out[random.nextInt(count)]];
            shift.open(one.startBase[random.nextInt(one.last)] + random.nextInt(40) - 20);
        }
        boolean done = wide ? recreation.pushing(out, count, old) : recreation.inOrder(out, count);
        if (done) {
            shift.close();
            long then = energy();
            if (then <= now + allowed) {
                now = then;
                offer();
                return;
            }
        }
        restore(out, count);
    }

    /** Takes services off and says what they cost beyond their cheapest handling. */
    private long takeOff(int[] out, int count) {
        long excess = 0;
        for (int i = 0; i < count; i++) {
            ServicePath path = state.paths[out[i]] == null ? null : state.takeOff(out[i]);
            old[out[i]] = path;
            excess += path == null ? 0 : recreation.excess(path);
        }
        return excess;
    }

    private void restore(int[] out, int count) {
        for (int i = 0; i < count; i++) {
            if (state.paths[out[i]] != null) {
                state.takeOff(out[i]);
            }
        }
        shift.undo();
        for (int i = 0; i < count; i++) {
            ServicePath path = old[out[i]];
            if (path != null) {
                state.putBack(path);
            }
        }
        energy();
    }

    private long energy() {
        long sum = 0;
        missing = 0;
        for (ServicePath path : state.paths) {
            missing += path == null ? 1 : 0;
            sum += path == null ? MISSING : prices.of(path);
        }
        return sum;
    }

    private void offer() {
        FloorScore score = PlanPaths.score(state.paths);
        if (missing < bestMissing || missing == bestMissing && score.compareTo(best) < 0) {
            best = score;
            bestMissing = missing;
            System.arraycopy(state.paths, 0, bestPaths, 0, bestPaths.length);
        }
    }
}
