package stirtide.planner.planning.stagger;

import java.util.Arrays;
import java.util.Objects;
import java.util.random.RandomGenerator;
import org.jspecify.annotations.Nullable;

/**
 * Negotiated congestion (McMurchie and Ebeling 1995): all runs are in the plan, a minute may hold too many mixes at a price,
 * and minutes that stay overfull grow dearer until those runs have given way that lose least by it.
 */
final class Negotiation {
    /** One in so many moves raises the prices of overfull minutes. */
    private static final int MOVES_PER_RISE = 8;

    /**
     * How runs weigh what they lose, in parts of a minute of age.
     *
     * @param weights costs of the levels
     * @param longestWait longest wait of one bowl
     * @param base price of a full minute to begin with
     * @param rise what an overfull minute grows dearer by
     * @param guideEighths how much of the guide prices counts
     */
    record Terms(LevelWeights weights, int longestWait, long base, long rise, int guideEighths) {
        static Terms of(int delay, int mix, int longestWait, int base, int rise, int guideEighths) {
            long age = LevelWeights.AGE;
            return new Terms(
                    new LevelWeights(CostModel.NEVER, delay * age, mix * age, age),
                    longestWait,
                    base * age,
                    rise * age,
                    guideEighths);
        }
    }

    private final MinuteGrid grid;
    private final Terms terms;
    private final RandomGenerator random;
    private final Occupancy occupancy;
    private final long[] price;
    private final int longestWait;
    private final int[] overfull;
    private int overfullCount;

    Negotiation(MinuteGrid grid, Terms terms, int @Nullable [] guide, RandomGenerator random) {
        this.grid = grid;
        this.terms = terms;
        this.random = random;
        this.longestWait = Math.min(terms.longestWait, grid.problem.maxWaitMinutes());
        this.occupancy = new Occupancy(grid, terms.weights);
        this.price = new long[grid.horizon];
        this.overfull = new int[grid.horizon];
        Arrays.fill(price, terms.base);
        occupancy.guide(guide, terms.guideEighths, 8);
        occupancy.noise(RuinAndRecreate.noise(random));
    }

    /** Puts all runs in the plan; false if some run has no path on these terms. */
    boolean begin() {
        for (RunGrid run : grid.runs) {
            if (!occupancy.push(run.index, price, longestWait)) {
                return false;
            }
        }
        return true;
    }

    long steps() {
        return occupancy.steps();
    }

    RunPath[] paths() {
        return Arrays.copyOf(occupancy.paths, occupancy.paths.length);
    }

    /** Moves until no minute is overfull or the moves are used up; true when none is. */
    boolean round(int moves) {
        for (int i = 0; i < moves; i++) {
            scan();
            if (overfullCount == 0) {
                return true;
            }
            move();
        }
        return false;
    }

    private void scan() {
        overfullCount = 0;
        for (int t = 0; t < grid.horizon; t++) {
            if (occupancy.use[t] > grid.capacity[t]) {
                overfull[overfullCount++] = t;
            }
        }
    }

    private void move() {
        int r = holder(overfull[random.nextInt(overfullCount)]);
        RunPath old = occupancy.remove(r);
        occupancy.shiftNoise(random.nextInt(Occupancy.NOISE), 1);
        if (!occupancy.push(r, price, longestWait)) {
            occupancy.put(r, old);
        }
        if (random.nextInt(MOVES_PER_RISE) == 0) {
            for (int i = 0; i < overfullCount; i++) {
                price[overfull[i]] += terms.rise;
            }
        }
    }

    /** One of the runs that mix in the minute, each as likely. */
    private int holder(int t) {
        int chosen = 0;
        int seen = 0;
        for (RunGrid run : grid.runs) {
            for (int s : Objects.requireNonNull(occupancy.paths[run.index]).start) {
                if (s <= t && t < s + run.mix && random.nextInt(++seen) == 0) {
                    chosen = run.index;
                }
            }
        }
        return chosen;
    }
}
