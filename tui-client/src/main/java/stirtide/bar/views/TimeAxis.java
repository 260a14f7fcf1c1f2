package stirtide.bar.views;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import stirtide.bar.canvas.Pane;
import stirtide.bar.canvas.Style;
import stirtide.bar.model.UiState;
import stirtide.bar.text.TimeText;

/**
 * A stretch of the day laid over columns.
 *
 * @param from time of the left edge of the first cell
 * @param cellMinutes minutes a cell stands for, more than 0
 * @param left column of the first cell
 * @param cells number of cells
 */
record TimeAxis(Instant from, int cellMinutes, int left, int cells) {
    private static final int WIDE = 100;
    private static final int NARROW_CELL = 5;
    private static final int WIDE_CELL = 4;
    private static final int SHARE_BEFORE_NOW = 6;
    private static final int LABEL_COLUMNS = 6;

    /** The stretch around now that the scene's floor asks for; begins at a whole cell. */
    static TimeAxis of(UiState scene, int left, int width) {
        int wanted = scene.pages().floor().cellMinutes();
        int cell = wanted > 0 ? wanted : width >= WIDE ? WIDE_CELL : NARROW_CELL;
        int cells = Math.max(1, width - left);
        long scroll = scene.pages().floor().scrollMinutes() - (long) cells / SHARE_BEFORE_NOW * cell;
        long minutes = Math.floorDiv(scene.now().getEpochSecond(), 60L) + scroll;
        long start = Math.floorDiv(minutes, (long) cell) * cell;
        return new TimeAxis(Instant.ofEpochSecond(start * 60), cell, left, cells);
    }

    /** Cell that holds an instant; may lie outside the axis. */
    int cell(Instant instant) {
        return (int) Math.floorDiv(Duration.between(from, instant).toMinutes(), (long) cellMinutes);
    }

    /** Start of a cell. */
    Instant at(int cell) {
        return from.plus(Duration.ofMinutes((long) cell * cellMinutes));
    }

    /** Puts a character into the cells of a stretch; at least one cell when the stretch is not empty. */
    void fill(Pane pane, int row, Instant start, Instant end, String character, Style style) {
        if (!start.isBefore(end)) return;
        int first = Math.max(0, cell(start));
        int last = Math.min(cells - 1, Math.max(cell(start), cell(end.minusSeconds(1))));
        for (int at = first; at <= last; at++) pane.put(left + at, row, character, style);
    }

    /** Puts a character into the cell of an instant. */
    void mark(Pane pane, int row, Instant instant, String character, Style style) {
        int at = cell(instant);
        if (at >= 0 && at < cells) pane.put(left + at, row, character, style);
    }

    /** Writes the hours and half hours, and where now is. */
    void draw(Pane pane, int row, ZoneId zone, Instant now) {
        int step = Math.max(1, LABEL_COLUMNS * cellMinutes > 30 ? 60 : 30);
        long first = Math.floorDiv(from.getEpochSecond() + step * 60L - 1, step * 60L) * step * 60L;
        int here = cell(now);
        for (Instant tick = Instant.ofEpochSecond(first); cell(tick) < cells - 4; tick = tick.plusSeconds(step * 60L)) {
            boolean free = Math.abs(cell(tick) + 1 - here) > LABEL_COLUMNS - 1 || here >= cells;
            if (free) pane.put(left + cell(tick), row, TimeText.minute(tick, zone), Style.DIM);
        }
        if (here < 0 || here >= cells) return;
        int column = Math.max(left, Math.min(left + here - 1, left + cells - 5));
        pane.put(column, row, "now", Style.STRONG);
    }
}
