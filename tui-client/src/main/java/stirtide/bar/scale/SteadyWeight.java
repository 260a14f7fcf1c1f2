package stirtide.bar.scale;

import java.util.OptionalInt;

/**
 * When a weight may be taken: the scale has said twice in a row, within two seconds, that the same weight is at rest. The
 * first word after the scale was opened is passed over, it may be old.
 */
public final class SteadyWeight {
    private static final long TOGETHER_NANOS = 2_000_000_000L;

    private boolean opened;
    private OptionalInt candidate = OptionalInt.empty();
    private OptionalInt steady = OptionalInt.empty();
    private long candidateNanos;
    private int turn;

    /** Takes the next word of the scale. */
    public void take(ScaleReading reading, long nanos) {
        if (!opened) {
            opened = true;
            return;
        }
        if (!(reading instanceof ScaleReading.Weight weight) || !weight.stable()) {
            candidate = OptionalInt.empty();
            steady = OptionalInt.empty();
            return;
        }
        boolean same = candidate.isPresent() && candidate.getAsInt() == weight.milligrams();
        boolean together = nanos - candidateNanos <= TOGETHER_NANOS;
        if (same && together) {
            if (steady.isEmpty()) turn++;
            steady = candidate;
        } else {
            steady = OptionalInt.empty();
        }
        candidate = OptionalInt.of(weight.milligrams());
        candidateNanos = nanos;
    }

    /** The weight that may be taken, in milligrams. */
    public OptionalInt milligrams() {
        return steady;
    }

    /** Counts the weights that came to rest; the same number means that the scale has not moved since. */
    public int turn() {
        return turn;
    }
}
