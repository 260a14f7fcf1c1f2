package stirtide.bar.keys;

/**
 * Watches how fast keys arrive. A line end sent as two characters is one Enter; keys faster than fingers come from a
 * scale that types, or from a paste the terminal did not mark.
 */
public final class KeyBurstFilter {
    /** A second Enter within this many nanoseconds is dropped. */
    public static final long ENTER_GUARD_NANOS = 150_000_000L;

    /** Keys closer than this, three of them, are a machine. */
    public static final long MACHINE_GAP_NANOS = 25_000_000L;

    private static final int MACHINE_KEYS = 3;
    private static final long LONG_AGO = Long.MIN_VALUE / 2;

    private long lastKeyNanos = LONG_AGO;
    private long lastEnterNanos = LONG_AGO;
    private int closeKeys;
    private boolean pasting;

    /** What to do with a key. */
    public enum Verdict {
        /** A finger's key. */
        TAKE,
        /** One key of a burst: good for a field of grams, nowhere else. */
        MACHINE,
        /** Part of a paste. */
        PASTE,
        /** Second half of a line end, or a report. */
        DROP
    }

    /** Judges the next key; keys must come in the order of their arrival. */
    public Verdict judge(Key key) {
        if (key.is(Key.Kind.PASTE_BEGINS)) pasting = true;
        if (key.is(Key.Kind.PASTE_ENDS)) {
            pasting = false;
            return Verdict.PASTE;
        }
        if (pasting) return key.is(Key.Kind.GONE) ? Verdict.TAKE : Verdict.PASTE;
        if (key.is(Key.Kind.REPORT)) return Verdict.DROP;
        boolean close = key.nanos() - lastKeyNanos < MACHINE_GAP_NANOS;
        closeKeys = close ? closeKeys + 1 : 1;
        lastKeyNanos = key.nanos();
        if (key.is(Key.Kind.ENTER)) {
            boolean second = key.nanos() - lastEnterNanos < ENTER_GUARD_NANOS;
            lastEnterNanos = key.nanos();
            if (second) return Verdict.DROP;
        }
        // A held arrow key repeats at thirty a second at most, so it never counts as a burst.
        boolean typed = key.is(Key.Kind.CHARACTER) || key.is(Key.Kind.ENTER);
        return typed && closeKeys >= MACHINE_KEYS ? Verdict.MACHINE : Verdict.TAKE;
    }
}
