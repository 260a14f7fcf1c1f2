package stirtide.planner.planning.stagger;

import java.util.Comparator;
import java.util.random.RandomGenerator;
import org.jspecify.annotations.Nullable;

/**
 * Insertion, ruin and recreate (Schrimpf and others 2000), and negotiated congestion (McMurchie and Ebeling 1995): takes a
 * few runs that meet in time out of the plan, or pushes one run where it would like to be and takes off the runs that stand
 * there, and puts them back one by one. Costs of age are counted in parts so that tiny random amounts break ties anew each
 * time.
 */
final class RuinAndRecreate {

    /** On larger days the occupancy is held against the best plan after each round only. */
    private static final int OFFERED_AT_ONCE = 200;

    /** One in so many moves may take detours instead of breaking ties only. */
    private static final int DETOURS = 64;

    private final MinuteGrid grid;
    private final RandomGenerator random;
    private final Incumbent incumbent;
    private final Occupancy occupancy;
    private final InitialPlans initial;
    private LevelWeights weights;
    private final Neighbors neighbors;
    private final RunPath[] old;
    private final boolean[] isOut;
    private final int[] out;
    private int count;
    private long before;
    private long heat;
    private long extra;
    private int @Nullable [] guide;

    RuinAndRecreate(MinuteGrid grid, LevelWeights weights, Incumbent incumbent, RandomGenerator random) {
        this.grid = grid;
        this.weights = weights;
        this.incumbent = incumbent;
        this.random = random;
        this.occupancy = new Occupancy(grid, weights);
        this.initial = new InitialPlans(grid, occupancy, incumbent);
        this.neighbors = new Neighbors(grid);
        this.old = new RunPath[grid.runs.length];
        this.isOut = new boolean[grid.runs.length];
        this.out = new int[grid.runs.length];
    }

    long steps() {
        return occupancy.steps();
    }

    void weights(LevelWeights to) {
        weights = to;
        occupancy.weights(to);
    }

    void heat(long to) {
        heat = to;
    }

    /** Minute prices in parts of {@link LevelWeights#AGE} that some insertions follow. */
    void guide(int @Nullable [] prices) {
        guide = prices;
    }

    /** Puts all runs in an empty plan in the given order; false if some run has no path. */
    boolean build(Comparator<RunGrid> order) {
        return initial.inOrder(order);
    }

    /** See {@link InitialPlans#fromStylists}. */
    boolean buildFromStylists() {
        return initial.fromStylists();
    }

    void load(RunPath[] paths) {
        occupancy.load(paths);
    }

    /** The paths in the plan. */
    RunPath[] paths() {
        return occupancy.copyOfPaths();
    }

    /** Tries the given number of moves. */
    void round(int moves) {
        occupancy.noise(noise(random));
        for (int i = 0; i < moves; i++) {
            move();
        }
        incumbent.offer(paths());
    }

    /** Small amounts that break ties between starts. */
    static int[] noise(RandomGenerator random) {
        int[] noise = new int[Occupancy.NOISE];
        for (int i = 0; i < noise.length; i++) {
            noise[i] = random.nextInt((int) LevelWeights.AGE / 4);
        }
        return noise;
    }

    private void move() {
        before = 0;
        count = 0;
        occupancy.shiftNoise(random.nextInt(Occupancy.NOISE), random.nextInt(DETOURS) == 0 ? random.nextInt(2, 64) : 1);
        extra = heat == 0 ? 0 : heat * random.nextInt(256) * random.nextInt(256) / 65536;
        int seed = seed();
        takeOut(seed);
        long after = random.nextInt(3) > 0 ? pushed(seed) : ruined(seed);
        boolean same = count == 1 && after == before;
        if (after > before + extra) {
            undo();
        } else if (!same && after != before && grid.runs.length <= OFFERED_AT_ONCE) {
            incumbent.offer(paths());
        }
        for (int k = 0; k < count; k++) {
            isOut[out[k]] = false;
        }
    }

    private long pushed(int seed) {
        occupancy.guide(null, 0, 1);
        if (!occupancy.insert(seed, crowding())) {
            return CostModel.NEVER;
        }
        evict(seed);
        if (random.nextInt(3) == 0) {
            takeNeighbors(seed, 2);
        }
        return recreate(1, costOf(seed));
    }

    private long ruined(int seed) {
        takeNeighbors(seed, 5);
        return recreate(0, 0);
    }

    private long recreate(int from, long cost) {
        boolean guided = guide != null && random.nextBoolean();
        occupancy.guide(guided ? guide : null, random.nextInt(1, 13), 8);
        for (int i = count - 1; i > from; i--) {
            int j = random.nextInt(from, i + 1);
            int swap = out[i];
            out[i] = out[j];
            out[j] = swap;
        }
        long after = cost;
        for (int k = from; k < count && after <= before + extra; k++) {
            if (!occupancy.insert(out[k], 0)) {
                return CostModel.NEVER;
            }
            after += costOf(out[k]);
        }
        return after;
    }

    private long costOf(int r) {
        return weights.of(java.util.Objects.requireNonNull(occupancy.paths[r]).score);
    }

    private long crowding() {
        int kind = random.nextInt(8);
        long unit = kind == 0 ? weights.delay() : kind < 3 ? weights.mix() : weights.age();
        return 1 + unit * random.nextInt(1, 12) / 3;
    }

    private int seed() {
        int r = random.nextInt(grid.runs.length);
        for (int tries = 0; tries < 12 && costOf(r) <= neighbors.aloneCost(r, weights); tries++) {
            r = random.nextInt(grid.runs.length);
        }
        return r;
    }

    private void takeOut(int r) {
        out[count++] = r;
        isOut[r] = true;
        old[r] = occupancy.remove(r);
        before += weights.of(old[r].score);
    }

    private void takeNeighbors(int seed, int most) {
        int[] row = neighbors.of(seed);
        int want = Math.min(row.length, count + random.nextInt(most + 1));
        for (int tries = 0; count < want && tries < 4 * most; tries++) {
            int r = row[random.nextInt(row.length)];
            if (!isOut[r]) {
                takeOut(r);
            }
        }
    }

    /** Takes out of the plan the runs that share an overfilled minute with the run. */
    private void evict(int seed) {
        RunGrid run = grid.runs[seed];
        RunPath path = java.util.Objects.requireNonNull(occupancy.paths[seed]);
        int[] row = neighbors.wide(seed);
        for (int s : path.start) {
            for (int t = s; s != RunPath.STYLIST && t < s + run.mix; t++) {
                int shift = row.length == 0 ? 0 : random.nextInt(row.length);
                for (int i = 0; i < row.length && occupancy.use[t] > grid.capacity[t]; i++) {
                    int r = row[(i + shift) % row.length];
                    if (!isOut[r] && holds(r, t)) {
                        takeOut(r);
                    }
                }
            }
        }
    }

    private boolean holds(int r, int t) {
        for (int s : java.util.Objects.requireNonNull(occupancy.paths[r]).start) {
            if (s <= t && t < s + grid.runs[r].mix) {
                return true;
            }
        }
        return false;
    }

    private void undo() {
        for (int k = 0; k < count; k++) {
            if (occupancy.paths[out[k]] != null) {
                occupancy.remove(out[k]);
            }
        }
        for (int k = 0; k < count; k++) {
            occupancy.put(out[k], old[out[k]]);
        }
    }
}
