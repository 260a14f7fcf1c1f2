package stirtide.planner.planning.floor;

import java.util.Arrays;
import java.util.random.RandomGenerator;
import org.jspecify.annotations.Nullable;

/**
 * Ruin and recreate (Schrimpf and others 2000; Christiaens and Vanden Berghe 2020): takes a few services that meet off the floor and puts them back one by one at their
 * cheapest fit. What is worse is kept with a probability that falls with the temperature.
 */
final class RuinAndRecreate {
    /** Stands for a service that is not placed. */
    private static final long MISSING = 1L << 40;

    private final FloorGrid grid;
    private final FloorState state;
    private final EarliestFit fit;
    private final BowlShift shift;
    private final RandomGenerator random;
    private final Ruin ruin;
    private final @Nullable ServicePath[] old;
    private final ServicePath[] bestPaths;
    private FloorScore best = new FloorScore(Integer.MAX_VALUE, 0, 0);
    private FitWeights prices = new FitWeights(4000, 10, 1);
    private long now;
    private int missing;

    RuinAndRecreate(FloorGrid grid, RandomGenerator random) {
        this.grid = grid;
        this.state = new FloorState(grid);
        this.fit = new EarliestFit(state);
        this.random = random;
        this.shift = new BowlShift(state);
        this.ruin = new Ruin(grid, random);
        this.old = new ServicePath[grid.services.length];
        this.bestPaths = new ServicePath[grid.services.length];
        this.missing = grid.services.length;
        this.now = missing * MISSING;
    }

    FloorScore best() {
        return best;
    }

    boolean complete() {
        return best.lateness() < Integer.MAX_VALUE;
    }

    ServicePath[] bestPaths() {
        return bestPaths;
    }

    void prices(FitWeights to) {
        prices = to;
        now = energy();
    }

    /** Puts all services on the floor in the order of booking. */
    void build() {
        Integer[] order = new Integer[grid.services.length];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, java.util.Comparator.comparingInt(i -> grid.services[i].service.bookedMinute()));
        fit.weights(new FitWeights(1 << 20, 16, 1));
        for (int i : order) {
            insert(i, 0);
        }
        now = energy();
        offer();
    }

    void loadBest() {
        for (int i = 0; i < old.length; i++) {
            if (state.paths[i] != null) {
                state.takeOff(i);
            }
        }
        for (ServicePath path : bestPaths) {
            state.putBack(path);
        }
        now = energy();
    }

    /** One step at a temperature in parts of the prices. */
    void step(double temperature) {
        boolean wide = random.nextInt(100) < PUSH;
        int count = ruin.choose(state, missing > 0, wide);
        int[] out = ruin.chosen;
        for (int i = 0; i < count; i++) {
            old[out[i]] = state.paths[out[i]] == null ? null : state.takeOff(out[i]);
        }
        fit.weights(weights());
        shift.nothing();
        if (random.nextInt(100) < SHIFT) {
            ServiceGrid one = grid.services[out[random.nextInt(count)]];
            shift.open(one.startBase[random.nextInt(one.last)] + random.nextInt(40) - 20);
        }
        if (wide) {
            push(out, count);
        } else {
            for (int i = 0; i < count; i++) {
                blink(out[i]);
            }
        }
        if (shift.touchedCount > 0) {
            shift.close();
        }
        long then = energy();
        if (then <= now + threshold(temperature)) {
            now = then;
            offer();
            return;
        }
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
    }

    private void blink(int index) {
        int chance = random.nextInt(BL);
        if (chance == 0) {
            insert(index, 1 + random.nextInt(random.nextBoolean() ? 5 : 40));
        } else if (chance <= BM) {
            int around = grid.services[index].service.bookedMinute() + random.nextInt(grid.services[index].endBase[grid.services[index].last] - grid.services[index].service.bookedMinute() + 40) - 30;
            around = Math.max(0, around);
            fit.mask(around, Math.min(grid.words * 64 - 1, around + 1 + random.nextInt(8)));
            insert(index, 0);
            fit.mask(0, 0);
        } else {
            insert(index, 0);
        }
    }
    private void push(int[] out, int count) {
        blink(out[0]);
        for (int i = 1; i < count; i++) {
            ServicePath path = old[out[i]];
            if (path != null && state.fits(path)) {
                state.place(path.copy());
            }
        }
        for (int i = 1; i < count; i++) {
            if (state.paths[out[i]] == null) {
                insert(out[i], 0);
            }
        }
    }

    static final int SHIFT = Integer.getInteger("shift", 50);
    static final int PUSH = Integer.getInteger("push", 50);
    static final int BL = Integer.getInteger("bl", 40);
    static final int BM = Integer.getInteger("bm", 4);

    private FitWeights weights() {
        return random.nextInt(4) == 0 ? prices : new FitWeights(1 << 20, 16, 1);
    }

    private long threshold(double temperature) {
        return (long) (-temperature * Math.log(1 - random.nextDouble()));
    }

    private boolean insert(int index, int later) {
        ServicePath path = fit.find(index, later);
        return path != null && state.place(path);
    }

    private long energy() {
        long sum = 0;
        missing = 0;
        for (ServicePath path : state.paths) {
            if (path == null) {
                sum += MISSING;
                missing++;
            } else {
                sum += prices.of(path.lateness, path.handling, path.standing);
            }
        }
        return sum;
    }

    private void offer() {
        if (missing > 0) {
            return;
        }
        FloorScore score = FloorPlan.score(state.paths);
        if (score.compareTo(best) < 0) {
            best = score;
            System.arraycopy(state.paths, 0, bestPaths, 0, bestPaths.length);
        }
    }
}
