package stirtide.bar.canvas;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** A picture of fixed size: one printable character and one style a cell. Writing outside it does nothing. */
public final class Canvas {
    private static final Style[] STYLES = Style.values();

    private final int width;
    private final int height;
    private final Glyphs glyphs;
    private final char[] characters;
    // Numbers of the styles: two rows of numbers are compared many cells at a time.
    private final byte[] styles;
    private int cursorColumn = -1;
    private int cursorRow = -1;

    /** An empty picture; width and height in cells, 0 or more. */
    public Canvas(int width, int height, Glyphs glyphs) {
        this.width = width;
        this.height = height;
        this.glyphs = glyphs;
        characters = new char[width * height];
        styles = new byte[width * height];
        Arrays.fill(characters, ' ');
        Arrays.fill(styles, (byte) Style.TEXT.ordinal());
    }

    /** Columns. */
    public int width() {
        return width;
    }

    /** Rows. */
    public int height() {
        return height;
    }

    /** What may be drawn. */
    public Glyphs glyphs() {
        return glyphs;
    }

    void set(int column, int row, char character, Style style) {
        if (column < 0 || row < 0 || column >= width || row >= height) return;
        characters[row * width + column] = glyphs.map(character);
        styles[row * width + column] = (byte) style.ordinal();
    }

    /** Puts the hardware cursor at a cell; the last call wins. */
    void cursor(int column, int row) {
        cursorColumn = column;
        cursorRow = row;
    }

    /** Column of the cursor, -1 when it is hidden. */
    public int cursorColumn() {
        return cursorColumn;
    }

    /** Row of the cursor, -1 when it is hidden. */
    public int cursorRow() {
        return cursorRow;
    }

    /** Character of a cell inside the picture. */
    public char character(int column, int row) {
        return characters[row * width + column];
    }

    /** Style of a cell inside the picture. */
    public Style style(int column, int row) {
        return STYLES[styles[row * width + column]];
    }

    /** Whether a row looks as it does in another picture of the same size. */
    public boolean sameRow(int row, Canvas other) {
        int from = row * width;
        int to = from + width;
        return Arrays.equals(characters, from, to, other.characters, from, to)
                && Arrays.equals(styles, from, to, other.styles, from, to);
    }

    /** The rows as text, trailing blanks kept. */
    public List<String> rows() {
        return IntStream.range(0, height)
                .mapToObj(row -> new String(characters, row * width, width))
                .toList();
    }
}
