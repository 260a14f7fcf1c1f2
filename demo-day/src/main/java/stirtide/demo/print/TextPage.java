package stirtide.demo.print;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;

/** Plain text of at most {@value #COLUMNS} columns. Long text is broken at blanks and indented. */
public final class TextPage implements SheetWriter {
    /** Widest line. */
    public static final int COLUMNS = 80;

    private static final Pattern BLANKS = Pattern.compile(" +");

    private final List<String> lines = new ArrayList<>();

    /** Adds a line that fits, without trailing blanks. */
    @Override
    public TextPage line(String text) {
        String cut = text.stripTrailing();
        if (width(cut) > COLUMNS) throw new IllegalArgumentException("wider than the page: " + cut);
        lines.add(cut);
        return this;
    }

    /** Adds an empty line. */
    @Override
    public TextPage gap() {
        return line("");
    }

    /** Adds a heading with a rule under it, after an empty line. */
    @Override
    public TextPage heading(String text) {
        return gap().line(text).line("-".repeat(COLUMNS));
    }

    /** Adds text after {@code lead}; further lines are indented to the text. */
    @Override
    public TextPage text(String lead, String text) {
        String indent = " ".repeat(width(lead));
        StringBuilder line = new StringBuilder(lead);
        int empty = line.length();
        for (String word : BLANKS.split(text.strip())) {
            boolean first = line.length() == empty;
            if (!first && width(line) + 1 + width(word) > COLUMNS) {
                line(line.toString());
                line = new StringBuilder(indent);
                empty = line.length();
                first = true;
            }
            line.append(first ? "" : " ").append(cut(word, COLUMNS - indent.length()));
        }
        return line(line.toString());
    }

    /** Adds a row of cells, each cut or filled to its width; a negative width aligns right. */
    @Override
    public TextPage row(int[] widths, String... cells) {
        if (widths.length != cells.length)
            throw new IllegalArgumentException(
                    "cells and widths differ: " + Arrays.toString(cells) + " " + Arrays.toString(widths));
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < cells.length; i++) line.append(cell(cells[i], widths[i]));
        return line(line.toString());
    }

    /** One cell of exactly {@code |width|} columns. */
    static String cell(String text, int width) {
        int columns = Math.abs(width);
        String fitting = cut(text, columns);
        String fill = " ".repeat(columns - width(fitting));
        return width < 0 ? fill + fitting : fitting + fill;
    }

    private static String cut(String text, int columns) {
        if (width(text) <= columns) return text;
        return text.substring(0, text.offsetByCodePoints(0, Math.max(0, columns - 1))) + "~";
    }

    private static int width(CharSequence text) {
        return (int) text.codePoints().count();
    }

    @Override
    public String toString() {
        return String.join("\n", lines) + "\n";
    }
}
