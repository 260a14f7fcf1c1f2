package stirtide.bar.terminal;

import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TerminalPosition;
import com.googlecode.lanterna.TextCharacter;
import com.googlecode.lanterna.TextColor;
import com.googlecode.lanterna.screen.Screen;
import com.googlecode.lanterna.screen.TerminalScreen;
import com.googlecode.lanterna.terminal.Terminal;
import java.io.IOException;
import org.jspecify.annotations.Nullable;
import stirtide.bar.frame.Canvas;
import stirtide.bar.frame.Glyphs;
import stirtide.bar.frame.Style;

/**
 * Puts pictures on a screen. A whole picture goes through the screen; of a picture that follows another only the cells
 * that differ are written, straight to the terminal: the screen would compare all cells once more, and asks of each
 * whether it is two columns wide, which none is.
 */
public final class Painter {
    private final TerminalScreen screen;
    private final @Nullable TextCharacter[][] cells = new TextCharacter[Style.values().length][Glyphs.LAST + 1];
    private final Theme theme;
    private final ColorDepth depth;
    private @Nullable Canvas shown;

    /** Paints on a started screen. */
    public Painter(TerminalScreen screen, Theme theme, ColorDepth depth) {
        this.screen = screen;
        this.theme = theme;
        this.depth = depth;
    }

    /**
     * Shows a picture of the screen's size.
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
        for (int row = 0; row < canvas.height(); row++) {
            for (int column = 0; column < canvas.width(); column++)
                screen.setCharacter(column, row, cell(canvas.character(column, row), canvas.style(column, row)));
        }
        boolean hidden = canvas.cursorColumn() < 0;
        screen.setCursorPosition(hidden ? null : new TerminalPosition(canvas.cursorColumn(), canvas.cursorRow()));
        screen.refresh(Screen.RefreshType.COMPLETE);
        return canvas.width() * canvas.height();
    }

    private int changed(Canvas before, Canvas canvas) throws IOException {
        Terminal terminal = screen.getTerminal();
        var pen = new Pen(terminal);
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
        boolean shows = canvas.cursorColumn() >= 0;
        if (shows) terminal.setCursorPosition(canvas.cursorColumn(), canvas.cursorRow());
        if (shows != before.cursorColumn() >= 0) terminal.setCursorVisible(shows);
        terminal.flush();
        return pen.written;
    }

    private static boolean same(Canvas before, Canvas after, int column, int row) {
        return before.character(column, row) == after.character(column, row)
                && before.style(column, row) == after.style(column, row);
    }

    /** Writes cells from left to right, and says where and how only when that is not clear already. */
    private final class Pen {
        private final Terminal terminal;
        private @Nullable Style style;
        private int nextColumn = -1;
        private int nextRow = -1;
        private int written;

        Pen(Terminal terminal) {
            this.terminal = terminal;
        }

        void put(int column, int row, char character, Style wanted) throws IOException {
            if (column != nextColumn || row != nextRow) terminal.setCursorPosition(column, row);
            if (wanted != style) look(wanted);
            terminal.putCharacter(character);
            nextColumn = column + 1;
            nextRow = row;
            written++;
        }

        private void look(Style wanted) throws IOException {
            Theme.Look look = theme.look(wanted, depth);
            terminal.resetColorAndSGR();
            for (var mark : look.marks()) terminal.enableSGR(mark);
            if (look.ink() != TextColor.ANSI.DEFAULT) terminal.setForegroundColor(look.ink());
            if (look.ground() != TextColor.ANSI.DEFAULT) terminal.setBackgroundColor(look.ground());
            style = wanted;
        }
    }

    // Making a TextCharacter is dear (it runs a break iterator), and there are few different ones.
    private TextCharacter cell(char character, Style style) {
        TextCharacter known = cells[style.ordinal()][character];
        if (known != null) return known;
        Theme.Look look = theme.look(style, depth);
        // Marks are given here: withModifiers of Lanterna 3.1.5 compares them with themselves and drops them.
        TextCharacter made = TextCharacter.fromCharacter(
                character, look.ink(), look.ground(), look.marks().toArray(SGR[]::new))[0];
        cells[style.ordinal()][character] = made;
        return made;
    }
}
