package stirtide.planner.planning.stagger;

import java.util.Arrays;
import java.util.Objects;
import java.util.random.RandomGenerator;
import org.jspecify.annotations.Nullable;

/**
 * Negotiated congestion (McMurchie and Ebeling 1995): all runs are on the board, a minute may hold too many mixes at a price,
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
            long age = RuinAndRecreate.AGE;
            return new Terms(
                    new LevelWeights(RunPathSearch.NEVER, delay * age, mix * age, age),
                    longestWait,
                    base * age,
                    rise * age,
                    guideEighths);
        }
    }

    private final MinuteGrid grid;
    private final Terms terms;
    private final RandomGenerator random;
    private final Occupancy board;
    private final long[] price;
    private final int longestWait;
    private final int[] overfull;
    private int overfullCount;

    Negotiation(MinuteGrid grid, Terms terms, int @Nullable [] guide, RandomGenerator random) {
        this.grid = grid;
        this.terms = terms;
        this.random = random;
        this.longestWait = Math.min(terms.longestWait, grid.problem.maxWaitMinutes());
        this.board = new Occupancy(grid, terms.weights);
        this.price = new long[grid.horizon];
        this.overfull = new int[grid.horizon];
        Arrays.fill(price, terms.base);
        board.guide(guide, terms.guideEighths, 8);
        board.noise(RuinAndRecreate.noise(random));
    }

    /** Puts all runs on the board; false if some run has no path on these terms. */
    boolean begin() {
        for (RunGrid run : grid.runs) {
            if (!board.push(run.index, price, longestWait)) {
                return false;
            }
        }
        return true;
    }

    long steps() {
        return board.steps();
    }

    RunPath[] paths() {
        return Arrays.copyOf(board.paths, board.paths.length);
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
            if (board.use[t] > grid.capacity[t]) {
                overfull[overfullCount++] = t;
            }
        }
    }

    private void move() {
        int r = holder(overfull[random.nextInt(overfullCount)]);
        RunPath old = board.remove(r);
        board.shiftNoise(random.nextInt(Occupancy.NOISE), 1);
        if (!board.push(r, price, longestWait)) {
            board.put(r, old);
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
            for (int s : Objects.requireNonNull(board.paths[run.index]).start) {
                if (s <= t && t < s + run.mix && random.nextInt(++seen) == 0) {
                    chosen = run.index;
                }
            }
        }
        return chosen;
    }
}
