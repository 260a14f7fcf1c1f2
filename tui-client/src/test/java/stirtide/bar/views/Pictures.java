package stirtide.bar.views;

import com.googlecode.lanterna.TextColor;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import stirtide.bar.canvas.Style;
import stirtide.bar.terminal.ColorDepth;
import stirtide.bar.terminal.Theme;

/** Makes the pictures of the handbook from golden frames: an SVG for each, and one as text. */
final class Pictures {
    /** Pictures by file name, with the frame each is made from and what it shows. */
    static final Map<String, String> FRAMES = Map.of(
            "bar",
            "busy-120x36",
            "weigh-in",
            "weigh-thin-80x24",
            "floor",
            "floor-lifted-120x36",
            "day",
            "day-120x36",
            "setup",
            "setup-120x36");

    private static final Path FOLDER = Path.of("src/test/frames");
    private static final int CELL_WIDTH = 9;
    private static final int CELL_HEIGHT = 18;
    private static final int BASELINE = 14;
    private static final String STYLES = "styles";
    private static final String FONT = "DejaVu Sans Mono,Menlo,Consolas,monospace";

    private Pictures() {}

    /** The rows of a frame as text, trailing blanks gone. */
    static String text(String frame) throws IOException {
        var text = new StringBuilder();
        for (String row : rows(frame)) text.append(row.stripTrailing()).append('\n');
        return text.toString();
    }

    /** A frame as a picture in the dark theme. */
    static String svg(String name, String frame) throws IOException {
        List<String> rows = rows(frame);
        List<String> all = Files.readAllLines(FOLDER.resolve(frame + ".txt"));
        List<String> styles = all.subList(rows.size() + 1, all.size());
        int width = rows.get(0).length() * CELL_WIDTH;
        int height = rows.size() * CELL_HEIGHT;
        var svg = new StringBuilder("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 " + width + " " + height
                + "\" font-family=\"" + FONT + "\" font-size=\"15\" role=\"img\">\n<title>The terminal: " + name
                + "</title>\n<rect width=\"" + width + "\" height=\"" + height + "\" fill=\"#" + ground(Style.TEXT)
                + "\"/>\n");
        for (int row = 0; row < rows.size(); row++) line(svg, rows.get(row), styles.get(row), row);
        return svg.append("</svg>\n").toString();
    }

    private static List<String> rows(String frame) throws IOException {
        List<String> all = Files.readAllLines(FOLDER.resolve(frame + ".txt"));
        return all.subList(0, all.indexOf(STYLES)).stream()
                .map(row -> row.substring(0, row.length() - 1))
                .toList();
    }

    private static void line(StringBuilder svg, String text, String styles, int row) {
        int from = 0;
        for (int column = 1; column <= text.length(); column++) {
            if (column < text.length() && styles.charAt(column) == styles.charAt(from)) continue;
            run(svg, text.substring(from, column), style(styles.charAt(from)), from, row);
            from = column;
        }
    }

    private static void run(StringBuilder svg, String text, Style style, int column, int row) {
        boolean reverse = style == Style.PICKED;
        String ink = reverse ? ground(style) : ink(style);
        int x = column * CELL_WIDTH;
        int width = text.length() * CELL_WIDTH;
        if (reverse || style == Style.HIGH) {
            svg.append("<rect x=\"" + x + "\" y=\"" + row * CELL_HEIGHT + "\" width=\"" + width + "\" height=\""
                    + CELL_HEIGHT + "\" fill=\"#" + (reverse ? ink(style) : ground(style)) + "\"/>\n");
        }
        if (text.isBlank()) return;
        String bold = style == Style.STRONG || style == Style.HIGH ? " font-weight=\"bold\"" : "";
        // The length is given, so that every font keeps the columns.
        svg.append("<text xml:space=\"preserve\" x=\"" + x + "\" y=\"" + (row * CELL_HEIGHT + BASELINE)
                + "\" textLength=\"" + width + "\" lengthAdjust=\"spacingAndGlyphs\" fill=\"#" + ink + "\"" + bold + ">"
                + text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;") + "</text>\n");
    }

    private static Style style(char letter) {
        for (Style style : Style.values()) if (StyleLetters.of(style) == letter) return style;
        throw new IllegalArgumentException("no style is written " + letter);
    }

    private static String ink(Style style) {
        return hex(Theme.DARK.look(style, ColorDepth.FULL).ink());
    }

    private static String ground(Style style) {
        return hex(Theme.DARK.look(style, ColorDepth.FULL).ground());
    }

    private static String hex(TextColor color) {
        return String.format(Locale.ROOT, "%02x%02x%02x", color.getRed(), color.getGreen(), color.getBlue());
    }
}
