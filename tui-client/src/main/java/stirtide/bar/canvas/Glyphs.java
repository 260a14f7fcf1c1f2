package stirtide.bar.canvas;

import java.text.Normalizer;
import java.util.Locale;

/** Which characters the terminal can draw. All are one cell wide everywhere we know of. */
public enum Glyphs {
    /** Box lines, blocks and Latin letters. */
    FULL,
    /** What a PC text console has. */
    CP437,
    /** Seven bits. */
    ASCII;

    /** No character that is drawn lies beyond this one. */
    public static final char LAST = '\u25ff';

    private static final String FANCY = "─│┌┐└┘█▀▄▓░■▲←→↑↓·…×±°½µ";
    private static final String PLAIN = "-|++++#\"_#.!^<>^v.~x+o?u";
    private static final String CP437_LACKS = "…×";
    private static final char LAST_LATIN = '\u017f';
    private static final char FIRST_BEYOND_ASCII = '\u007f';

    /** Reads the name used on the command line, in lower case. */
    public static Glyphs named(String name) {
        return valueOf(name.toUpperCase(Locale.ROOT));
    }

    /** The character to draw instead of {@code wanted}: always printable and one cell wide. */
    public char map(char wanted) {
        if (wanted >= ' ' && wanted < FIRST_BEYOND_ASCII) return wanted;
        int place = FANCY.indexOf(wanted);
        if (place >= 0) {
            boolean drawable = this == FULL || (this == CP437 && CP437_LACKS.indexOf(wanted) < 0);
            return drawable ? wanted : PLAIN.charAt(place);
        }
        if (wanted > '\u00a0' && wanted != '\u00ad' && wanted <= LAST_LATIN) {
            return this == FULL ? wanted : withoutAccent(wanted);
        }
        return '?';
    }

    private static char withoutAccent(char letter) {
        char base = Normalizer.normalize(String.valueOf(letter), Normalizer.Form.NFD)
                .charAt(0);
        return base < FIRST_BEYOND_ASCII ? base : '?';
    }
}
