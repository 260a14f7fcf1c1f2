package stirtide.bar.canvas;

/** A rectangle of a canvas with its own coordinates. Text is cut at its right edge, never wrapped. */
public record Pane(Canvas canvas, int left, int top, int width, int height) {
    /** A whole canvas. */
    public static Pane of(Canvas canvas) {
        return new Pane(canvas, 0, 0, canvas.width(), canvas.height());
    }

    /** A rectangle inside this one, cut to it. */
    public Pane part(int column, int row, int columns, int rows) {
        int inside = Math.max(0, Math.min(columns, width - column));
        return new Pane(canvas, left + column, top + row, inside, Math.max(0, Math.min(rows, height - row)));
    }

    /** Writes text from a column on; what does not fit is lost. */
    public Pane put(int column, int row, String text, Style style) {
        if (row < 0 || row >= height) return this;
        for (int i = 0; i < text.length(); i++) {
            int at = column + i;
            if (at >= 0 && at < width) canvas.set(left + at, top + row, text.charAt(i), style);
        }
        return this;
    }

    /** Writes text in a column of fixed width; a longer text ends with an ellipsis. */
    public Pane fit(int column, int row, int columns, String text, Style style) {
        return put(column, row, cut(text, columns), style);
    }

    /** Writes text so that it ends just before a column. A number too wide for its column becomes {@code ####}. */
    public Pane right(int endColumn, int row, int columns, String text, Style style) {
        String shown = text.length() <= columns ? text : "#".repeat(columns);
        return put(endColumn - shown.length(), row, shown, style);
    }

    /** Marks a row as selected, or not; returns the style of its text, {@code normal} when it is not. */
    public Style select(int row, boolean selected, Style normal) {
        Style style = selected ? Style.PICKED : normal;
        if (selected) put(0, row, " ".repeat(width), style);
        put(0, row, selected ? ">" : " ", style);
        return style;
    }

    /** A horizontal line over the whole width. */
    public Pane rule(int row) {
        return put(0, row, "─".repeat(width), Style.RULE);
    }

    /** Blanks the pane. */
    public Pane clear() {
        for (int row = 0; row < height; row++) put(0, row, " ".repeat(width), Style.TEXT);
        return this;
    }

    /** Shows the cursor at a cell of this pane. */
    public void cursor(int column, int row) {
        if (column < width && row < height) canvas.cursor(left + column, top + row);
    }

    /** The text cut to a number of columns, with an ellipsis where something is lost. */
    public static String cut(String text, int columns) {
        if (text.length() <= columns) return text;
        return columns <= 0 ? "" : text.substring(0, columns - 1) + "…";
    }
}
