package stirtide.bar.views;

import java.util.List;
import stirtide.bar.canvas.Canvas;
import stirtide.bar.canvas.Glyphs;
import stirtide.bar.canvas.Pane;
import stirtide.bar.canvas.Style;
import stirtide.bar.keys.KeyContext;
import stirtide.bar.model.Overlay;
import stirtide.bar.model.UiState;

/** Draws the bar: the same scene and size give the same picture. */
public final class ScreenView {
    /** Fewest columns that are drawn. */
    public static final int LEAST_COLUMNS = 80;

    /** Fewest rows that are drawn. */
    public static final int LEAST_ROWS = 24;

    private static final int WIDE_COLUMNS = 120;
    private static final int WIDE_ROWS = 36;
    private static final int NEXT_ROWS = 8;
    private static final int WIDE_NEXT_ROWS = 15;
    private static final int FOOT_ROWS = 3;

    /** Rows that the queue and the live bowls keep beside a long message. */
    private static final int LEAST_LISTS = 7;

    private ScreenView() {}

    /** The picture of a scene. */
    public static Canvas draw(UiState scene, int columns, int rows, Glyphs glyphs) {
        var canvas = new Canvas(columns, rows, glyphs);
        Pane whole = Pane.of(canvas);
        if (isTooSmall(columns, rows)) {
            TooSmallView.draw(whole, scene, LEAST_COLUMNS + "x" + LEAST_ROWS);
            return canvas;
        }
        boolean wide = columns >= WIDE_COLUMNS && rows >= WIDE_ROWS;
        if (scene.pages().page() != KeyContext.BAR) page(whole, scene, wide ? 2 : 1);
        else if (wide) wide(whole, scene);
        else compact(whole, scene);
        FooterView.drawLong(whole, scene);
        scene.panel().ifPresent(panel -> over(whole, panel));
        return canvas;
    }

    /** Whether a terminal of this size shows only the size it needs and the next bowl. */
    public static boolean isTooSmall(int columns, int rows) {
        return columns < LEAST_COLUMNS || rows < LEAST_ROWS;
    }

    private static void compact(Pane whole, UiState scene) {
        int columns = whole.width();
        HeaderView.draw(whole.part(0, 0, columns, 1), scene);
        AlarmView.draw(whole.part(0, 1, columns, 1), scene);
        whole.rule(2);
        NextMixView.draw(whole.part(0, 3, columns, NEXT_ROWS), scene);
        int top = 3 + NEXT_ROWS;
        int room = whole.height() - top - FOOT_ROWS - 1;
        int lists = Math.max(Math.min(room, LEAST_LISTS), room - FooterView.rowsAbove(scene, columns));
        // The queue gets two fifths, the live bowls the rest: those have lives to watch.
        int queueRows = Math.max(4, lists * 2 / 5);
        whole.rule(top);
        QueueView.draw(whole.part(0, top, columns, queueRows), scene, true);
        whole.rule(top + queueRows);
        LiveBowlsView.rows(whole.part(0, top + queueRows, columns, lists + 1 - queueRows), scene);
        FooterView.draw(whole.part(0, whole.height() - FOOT_ROWS, columns, FOOT_ROWS), scene);
    }

    private static void wide(Pane whole, UiState scene) {
        int columns = whole.width();
        int left = Math.max(58, columns * 12 / 25);
        HeaderView.draw(whole.part(0, 0, columns, 1), scene);
        AlarmView.draw(whole.part(0, 1, columns, 2), scene);
        whole.rule(3);
        int body = whole.height() - 4 - FOOT_ROWS - 1;
        NextMixView.draw(whole.part(0, 4, left - 1, WIDE_NEXT_ROWS), scene);
        whole.part(0, 0, left, whole.height()).rule(4 + WIDE_NEXT_ROWS);
        QueueView.draw(whole.part(0, 4 + WIDE_NEXT_ROWS, left - 1, body - WIDE_NEXT_ROWS), scene, false);
        for (int row = 0; row < body; row++) whole.put(left, 4 + row, "│", Style.RULE);
        LiveBowlsView.cards(whole.part(left + 2, 4, columns - left - 2, body), scene);
        whole.rule(4 + body);
        FooterView.draw(whole.part(0, whole.height() - FOOT_ROWS, columns, FOOT_ROWS), scene);
    }

    private static void page(Pane whole, UiState scene, int alarmRows) {
        int columns = whole.width();
        HeaderView.draw(whole.part(0, 0, columns, 1), scene);
        AlarmView.draw(whole.part(0, 1, columns, alarmRows), scene);
        whole.rule(1 + alarmRows);
        int top = 2 + alarmRows;
        Pane body = whole.part(0, top, columns, whole.height() - top - FOOT_ROWS - (alarmRows - 1));
        if (scene.pages().page() == KeyContext.FLOOR) FloorView.draw(body, scene);
        else if (scene.pages().page() == KeyContext.SETUP) SetupPageView.draw(body, scene);
        else DayGramsView.draw(body, scene);
        if (alarmRows > 1) whole.rule(whole.height() - FOOT_ROWS - 1);
        FooterView.draw(whole.part(0, whole.height() - FOOT_ROWS, columns, FOOT_ROWS), scene);
    }

    private static void over(Pane whole, Overlay panel) {
        int columns = Math.min(panel.columns() + 4, whole.width());
        int rows = Math.min(panel.rows() + 2, whole.height() - 4);
        // Below the alarm line, above the footer: neither is ever covered.
        int row = Math.max(2, (whole.height() - FOOT_ROWS - rows + 2) / 2);
        Pane frame =
                whole.part((whole.width() - columns) / 2, row, columns, rows).clear();
        String line = "─".repeat(columns - 2);
        frame.put(0, 0, "┌" + line + "┐", Style.RULE);
        for (int y = 1; y < rows - 1; y++) frame.put(0, y, "│", Style.RULE).put(columns - 1, y, "│", Style.RULE);
        frame.put(0, rows - 1, "└" + line + "┘", Style.RULE);
        frame.put(2, 0, " " + Pane.cut(panel.title(), columns - 6) + " ", Style.STRONG);
        panel.painter().accept(frame.part(2, 1, columns - 4, rows - 2));
    }

    /** The picture as text for a printer or a pipe: no trailing blanks, no control characters but line ends. */
    public static String text(Canvas canvas) {
        List<String> rows = canvas.rows().stream().map(String::stripTrailing).toList();
        return String.join("\n", rows).stripTrailing() + "\n";
    }
}
