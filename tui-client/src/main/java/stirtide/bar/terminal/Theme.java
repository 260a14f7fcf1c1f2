package stirtide.bar.terminal;

import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TextColor;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Map;
import stirtide.bar.canvas.Style;

/** What a style looks like. */
public enum Theme {
    /** Light letters on near black. */
    DARK,
    /** Dark letters on light gray. */
    LIGHT,
    /** No color at all. */
    MONO,
    /** The terminal's own background and sixteen colors. */
    TERM;

    private static final Map<Style, Paint> DARK_PAINT = Map.of(
            Style.TEXT, new Paint(0xD8D8D8, 188),
            Style.STRONG, new Paint(0xD8D8D8, 188),
            Style.PICKED, new Paint(0xD8D8D8, 188),
            Style.DIM, new Paint(0x9A9A9A, 247),
            Style.RULE, new Paint(0x6A6A6A, 242),
            Style.HIGH, new Paint(0x000000, 16),
            Style.MEDIUM, new Paint(0xF0E442, 221),
            Style.LOW, new Paint(0x56B4E9, 74));
    private static final Map<Style, Paint> LIGHT_PAINT = Map.of(
            Style.TEXT, new Paint(0x1A1A1A, 234),
            Style.STRONG, new Paint(0x1A1A1A, 234),
            Style.PICKED, new Paint(0x1A1A1A, 234),
            Style.DIM, new Paint(0x5A5A5A, 240),
            Style.RULE, new Paint(0x808080, 244),
            Style.HIGH, new Paint(0xFFFFFF, 231),
            Style.MEDIUM, new Paint(0x7A4B00, 94),
            Style.LOW, new Paint(0x00508A, 24));
    private static final Paint DARK_GROUND = new Paint(0x121212, 233);
    private static final Paint LIGHT_GROUND = new Paint(0xE8E8E8, 254);
    private static final Paint DARK_HIGH = new Paint(0xFF7F2A, 208);
    private static final Paint LIGHT_HIGH = new Paint(0x9C2A00, 88);

    /** Reads the name used on the command line, in lower case. */
    public static Theme named(String name) {
        return valueOf(name.toUpperCase(Locale.ROOT));
    }

    /** How a style is drawn at a color depth. */
    public Look look(Style style, ColorDepth depth) {
        if (this == MONO || depth == ColorDepth.NONE) return mono(style);
        if (this == TERM || depth == ColorDepth.SIXTEEN) return sixteen(style);
        boolean dark = this == DARK;
        Paint ink = (dark ? DARK_PAINT : LIGHT_PAINT).getOrDefault(style, new Paint(0, 0));
        Paint high = dark ? DARK_HIGH : LIGHT_HIGH;
        Paint ground = style == Style.HIGH ? high : dark ? DARK_GROUND : LIGHT_GROUND;
        return new Look(ink.at(depth), ground.at(depth), marks(style));
    }

    private static Look mono(Style style) {
        EnumSet<SGR> marks = switch (style) {
            case HIGH -> EnumSet.of(SGR.REVERSE, SGR.BOLD);
            case MEDIUM -> EnumSet.of(SGR.BOLD, SGR.UNDERLINE);
            case LOW -> EnumSet.of(SGR.UNDERLINE);
            default -> marks(style);
        };
        return new Look(TextColor.ANSI.DEFAULT, TextColor.ANSI.DEFAULT, marks);
    }

    private static Look sixteen(Style style) {
        return switch (style) {
            case HIGH -> new Look(TextColor.ANSI.WHITE_BRIGHT, TextColor.ANSI.RED, marks(style));
            case MEDIUM -> new Look(TextColor.ANSI.YELLOW_BRIGHT, TextColor.ANSI.DEFAULT, marks(style));
            case LOW -> new Look(TextColor.ANSI.CYAN_BRIGHT, TextColor.ANSI.DEFAULT, marks(style));
            default -> new Look(TextColor.ANSI.DEFAULT, TextColor.ANSI.DEFAULT, marks(style));
        };
    }

    private static EnumSet<SGR> marks(Style style) {
        return switch (style) {
            case STRONG, HIGH -> EnumSet.of(SGR.BOLD);
            case PICKED -> EnumSet.of(SGR.REVERSE);
            default -> EnumSet.noneOf(SGR.class);
        };
    }

    /** Foreground, background and marks of a cell. */
    public record Look(TextColor ink, TextColor ground, EnumSet<SGR> marks) {
        /** Whether a blank looks the same in both. */
        boolean blankLike(Look other) {
            return ground.equals(other.ground) && bare() && other.bare();
        }

        private boolean bare() {
            return !marks.contains(SGR.REVERSE) && !marks.contains(SGR.UNDERLINE);
        }
    }

    /** One color as red, green and blue and as its place in the table of 256. */
    record Paint(int rgb, int table) {
        TextColor at(ColorDepth depth) {
            return depth == ColorDepth.FULL
                    ? new TextColor.RGB(rgb >> 16 & 0xff, rgb >> 8 & 0xff, rgb & 0xff)
                    : new TextColor.Indexed(table);
        }
    }
}
