package stirtide.bar.panels.form;

/** A warning that a second Enter overrides, unless it comes so fast that it may be the same press of the key. */
public final class RepeatedEnter {
    private static final long SHORTEST_NANOS = 300_000_000L;
    private static final long NEVER = Long.MIN_VALUE;

    private long warnedAtNanos = NEVER;

    /** Warns at an Enter; the answer says whether it was the second one and the warning is overridden. */
    public boolean overrides(long enterNanos) {
        if (isWarning()) return enterNanos - warnedAtNanos >= SHORTEST_NANOS;
        warnedAtNanos = enterNanos;
        return false;
    }

    /** Whether the next Enter overrides the warning. */
    public boolean isWarning() {
        return warnedAtNanos != NEVER;
    }

    /** Forgets the warning, because what it warned of has changed. */
    public void reset() {
        warnedAtNanos = NEVER;
    }
}
