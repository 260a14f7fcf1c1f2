package stirtide.bar.terminal;

import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TextColor;
import com.googlecode.lanterna.terminal.Terminal;
import java.io.IOException;
import org.jspecify.annotations.Nullable;
import stirtide.bar.canvas.Canvas;
import stirtide.bar.canvas.Style;

/**
 * Puts pictures on a terminal. Of a picture that follows another only the cells that differ are written. The screen of the
 * library is left out: it compares all cells once more, and asks of each whether it is two columns wide, which none is.
 */
public final class CanvasPainter {
    private final Terminal terminal;
    private final Theme.Look[] looks = new Theme.Look[Style.values().length];
    private @Nullable Canvas shown;

    /** Paints on a terminal in private mode. */
    public CanvasPainter(Terminal terminal, Theme theme, ColorDepth depth) {
        this.terminal = terminal;
        for (Style style : Style.values()) looks[style.ordinal()] = theme.look(style, depth);
    }

    /**
     * Shows a picture of the terminal's size.
     *
     * @param whole whether everything is written anew, as after a resize
     * @return number of cells that changed
     */
    public int paint(Canvas canvas, boolean whole) throws IOException {
        Canvas before = shown;
        shown = canvas;
        if (whole || before == null || before.width() != canvas.width() || before.height() != canvas.height())
            return all(canvas);
        return changed(before, canvas);
    }

    private int all(Canvas canvas) throws IOException {
        terminal.resetColorAndSGR();
        terminal.clearScreen();
        var pen = new Pen();
        for (int row = 0; row < canvas.height(); row++)
            for (int column = 0; column < canvas.width(); column++)
                pen.put(column, row, canvas.character(column, row), canvas.style(column, row));
        cursor(canvas, true);
        terminal.flush();
        return pen.written;
    }

    private int changed(Canvas before, Canvas canvas) throws IOException {
        var pen = new Pen();
        for (int row = 0; row < canvas.height(); row++) {
            if (canvas.sameRow(row, before)) continue;
            for (int column = 0; column < canvas.width(); column++) {
                if (same(before, canvas, column, row)) continue;
                pen.put(column, row, canvas.character(column, row), canvas.style(column, row));
            }
        }
        boolean cursorStays =
                before.cursorColumn() == canvas.cursorColumn() && before.cursorRow() == canvas.cursorRow();
        // A frame in which nothing is new is no frame.
        if (pen.written == 0 && cursorStays) return 0;
        cursor(canvas, canvas.cursorColumn() >= 0 != before.cursorColumn() >= 0);
        terminal.flush();
        return pen.written;
    }

    private void cursor(Canvas canvas, boolean turns) throws IOException {
        boolean shows = canvas.cursorColumn() >= 0;
        if (shows) terminal.setCursorPosition(canvas.cursorColumn(), canvas.cursorRow());
        if (turns) terminal.setCursorVisible(shows);
    }

    private static boolean same(Canvas before, Canvas after, int column, int row) {
        return before.character(column, row) == after.character(column, row)
                && before.style(column, row) == after.style(column, row);
    }

    /** Writes cells from left to right, and says where and how only when that is not clear already. */
    private final class Pen {
        private Theme.@Nullable Look look;
        private int nextColumn = -1;
        private int nextRow = -1;
        private int written;

        void put(int column, int row, char character, Style style) throws IOException {
            if (column != nextColumn || row != nextRow) terminal.setCursorPosition(column, row);
            Theme.Look wanted = looks[style.ordinal()];
            if (wanted != look && !(character == ' ' && look != null && look.blankLike(wanted))) take(wanted);
            terminal.putCharacter(character);
            nextColumn = column + 1;
            nextRow = row;
            written++;
        }

        private void take(Theme.Look wanted) throws IOException {
            terminal.resetColorAndSGR();
            for (SGR mark : wanted.marks()) terminal.enableSGR(mark);
            if (wanted.ink() != TextColor.ANSI.DEFAULT) terminal.setForegroundColor(wanted.ink());
            if (wanted.ground() != TextColor.ANSI.DEFAULT) terminal.setBackgroundColor(wanted.ground());
            look = wanted;
        }
    }
}
