package stirtide.bar.canvas;

import java.util.Map;

/** Large figures that can be read from a distance, drawn with half blocks: two pixel rows a text row. */
public final class BlockDigits {
    /** Text rows a tall figure takes. */
    public static final int TALL_ROWS = 5;

    private static final Map<Character, String> TALL = Map.ofEntries(
            Map.entry('0', "01110 10001 10001 10001 10001 10001 01110"),
            Map.entry('1', "00100 01100 00100 00100 00100 00100 01110"),
            Map.entry('2', "01110 10001 00001 00110 01000 10000 11111"),
            Map.entry('3', "11110 00001 00001 01110 00001 00001 11110"),
            Map.entry('4', "00010 00110 01010 10010 11111 00010 00010"),
            Map.entry('5', "11111 10000 11110 00001 00001 10001 01110"),
            Map.entry('6', "00110 01000 10000 11110 10001 10001 01110"),
            Map.entry('7', "11111 00001 00010 00100 01000 01000 01000"),
            Map.entry('8', "01110 10001 10001 01110 10001 10001 01110"),
            Map.entry('9', "01110 10001 10001 01111 00001 00010 01100"),
            Map.entry('+', "000 000 010 111 010 000 000"),
            Map.entry('h', "1000 1000 1110 1001 1001 1001 1001"),
            Map.entry(':', "0 0 1 0 1 0 0"),
            Map.entry(' ', "0 0 0 0 0 0 0"));
    private static final Map<Character, String> SHORT = Map.ofEntries(
            Map.entry('0', "111 101 101 101 111"),
            Map.entry('1', "010 110 010 010 111"),
            Map.entry('2', "111 001 111 100 111"),
            Map.entry('3', "111 001 111 001 111"),
            Map.entry('4', "101 101 111 001 001"),
            Map.entry('5', "111 100 111 001 111"),
            Map.entry('6', "111 100 111 101 111"),
            Map.entry('7', "111 001 010 010 010"),
            Map.entry('8', "111 101 111 101 111"),
            Map.entry('9', "111 101 111 001 111"),
            Map.entry('+', "000 010 111 010 000"),
            Map.entry('h', "100 100 111 101 101"),
            Map.entry(':', "0 1 0 1 0"),
            Map.entry(' ', "0 0 0 0 0"));

    private BlockDigits() {}

    /** Draws digits, {@code :}, {@code +} and {@code h} in five rows at most. */
    public static void tall(Pane pane, int column, int row, String text, Style style) {
        // Seven bits have no half block: the short figures are drawn a whole row a pixel.
        boolean halves = pane.canvas().glyphs() != Glyphs.ASCII;
        draw(pane, column, row, text, style, halves ? TALL : SHORT, halves);
    }

    /** Draws the same characters in three rows. */
    public static void small(Pane pane, int column, int row, String text, Style style) {
        if (pane.canvas().glyphs() == Glyphs.ASCII) pane.put(column, row + 1, text, style);
        else draw(pane, column, row, text, style, SHORT, true);
    }

    /** With half blocks two rows of pixels are a row of text; without them a pixel is a cell. */
    private static void draw(
            Pane pane, int column, int row, String text, Style style, Map<Character, String> font, boolean halves) {
        int at = column;
        int step = halves ? 2 : 1;
        for (char letter : text.toCharArray()) {
            String[] lines = lines(font, letter);
            for (int y = 0; y < lines.length; y += step) {
                for (int x = 0; x < lines[0].length(); x++) {
                    boolean upper = lines[y].charAt(x) == '1';
                    boolean lower = halves && y + 1 < lines.length && lines[y + 1].charAt(x) == '1';
                    String block = !halves ? "#" : upper ? lower ? "█" : "▀" : "▄";
                    if (upper || lower) pane.put(at + x, row + y / step, block, style);
                }
            }
            at += lines[0].length() + 1;
        }
    }

    private static String[] lines(Map<Character, String> font, char letter) {
        String drawn = font.get(letter);
        if (drawn == null) throw new IllegalArgumentException("no block figure for '" + letter + "'");
        return drawn.split(" ");
    }
}
