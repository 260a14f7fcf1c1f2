package stirtide.bar.keys;

/**
 * One key as it arrived.
 *
 * @param kind what it is
 * @param character the character of {@link Kind#CHARACTER}, else a blank
 * @param control whether Control was held with a character
 * @param nanos monotonic reading at its arrival
 */
public record Key(Kind kind, char character, boolean control, long nanos) {
    /** What a key is. */
    public enum Kind {
        CHARACTER,
        ENTER,
        ESCAPE,
        TAB,
        /** Shift and Tab. */
        BACK_TAB,
        /** Backspace or Delete. */
        ERASE,
        UP,
        DOWN,
        LEFT,
        RIGHT,
        /** The terminal begins to paste. */
        PASTE_BEGINS,
        /** The terminal is done pasting. */
        PASTE_ENDS,
        /** Input has ended: the terminal is gone. */
        GONE,
        /** Mouse, focus and other reports that mean nothing here. */
        REPORT
    }

    /** A printable character without Control. */
    public static Key of(char character, long nanos) {
        return new Key(Kind.CHARACTER, character, false, nanos);
    }

    /** A key that is no character. */
    public static Key of(Kind kind, long nanos) {
        return new Key(kind, ' ', false, nanos);
    }

    /** A character with Control held. */
    public static Key control(char character, long nanos) {
        return new Key(Kind.CHARACTER, character, true, nanos);
    }

    /** Whether this is that character, without Control. */
    public boolean is(char wanted) {
        return kind == Kind.CHARACTER && !control && character == wanted;
    }

    /** Whether this is that kind of key. */
    public boolean is(Kind wanted) {
        return kind == wanted;
    }

    /** Whether this is a printable character without Control. */
    public boolean isText() {
        return kind == Kind.CHARACTER && !control && character >= ' ';
    }
}
