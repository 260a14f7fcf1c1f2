package stirtide.planner.planning.stagger;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * What a search may still use of one run: the bowl that feeds minute t is mixed from a start in [low[t], high[t]], and
 * single starts of bowls that begin at minute u may be struck out.
 */
final class StartLimits {
    static final int ANY_LOW = -1;
    static final int ANY_HIGH = Integer.MAX_VALUE / 2;

    final int[] low;
    final int[] high;
    /** Struck-out starts: bit s - base of struck[u], or null when nothing is struck out. */
    long @Nullable [][] struck;

    final int base;

    StartLimits(RunGrid run) {
        this.low = new int[run.minutes];
        this.high = new int[run.minutes];
        Arrays.fill(low, ANY_LOW);
        Arrays.fill(high, ANY_HIGH);
        this.base = run.start - run.life;
    }

    private StartLimits(StartLimits other) {
        this.low = other.low.clone();
        this.high = other.high.clone();
        this.base = other.base;
        if (other.struck != null) {
            this.struck = new long[other.struck.length][];
            for (int u = 0; u < struck.length; u++) {
                struck[u] = other.struck[u].clone();
            }
        }
    }

    StartLimits copy() {
        return new StartLimits(this);
    }

    boolean isStruck(int u, int s) {
        int bit = s - base;
        return struck != null && (struck[u][bit >> 6] >>> bit & 1) != 0;
    }

    void strike(int u, int s, int horizonBits) {
        if (struck == null) {
            struck = new long[low.length][(horizonBits >> 6) + 1];
        }
        int bit = s - base;
        struck[u][bit >> 6] |= 1L << bit;
    }

    /** Forbids bowls to begin at minutes of the run after {@code from} up to {@code to}: one bowl feeds across them. */
    void unbroken(int from, int to, int horizonBits) {
        for (int u = from + 1; u <= to; u++) {
            strike(u, base, horizonBits);
            Arrays.fill(java.util.Objects.requireNonNull(struck)[u], -1L);
        }
    }
}
