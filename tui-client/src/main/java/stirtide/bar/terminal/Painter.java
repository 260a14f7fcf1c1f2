package stirtide.bar.terminal;

import com.googlecode.lanterna.TerminalPosition;
import com.googlecode.lanterna.TextCharacter;
import com.googlecode.lanterna.screen.Screen;
import java.io.IOException;
import org.jspecify.annotations.Nullable;
import stirtide.bar.frame.Canvas;
import stirtide.bar.frame.Glyphs;
import stirtide.bar.frame.Style;

/** Puts pictures on a screen: only cells that differ from the picture before are touched. */
public final class Painter {
    private final Screen screen;
    private final @Nullable TextCharacter[][] cells = new TextCharacter[Style.values().length][Glyphs.LAST + 1];
    private final Theme theme;
    private final ColorDepth depth;
    private @Nullable Canvas shown;

    /** Paints on a started screen. */
    public Painter(Screen screen, Theme theme, ColorDepth depth) {
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
        boolean all = whole || before == null || before.width() != canvas.width() || before.height() != canvas.height();
        int changed = 0;
        for (int row = 0; row < canvas.height(); row++) {
            for (int column = 0; column < canvas.width(); column++) {
                if (!all && before != null && same(before, canvas, column, row)) continue;
                screen.setCharacter(column, row, cell(canvas.character(column, row), canvas.style(column, row)));
                changed++;
            }
        }
        shown = canvas;
        boolean cursorStays = before != null
                && before.cursorColumn() == canvas.cursorColumn()
                && before.cursorRow() == canvas.cursorRow();
        // A frame in which nothing is new is no frame.
        if (changed == 0 && cursorStays) return 0;
        boolean hidden = canvas.cursorColumn() < 0;
        screen.setCursorPosition(hidden ? null : new TerminalPosition(canvas.cursorColumn(), canvas.cursorRow()));
        screen.refresh(all ? Screen.RefreshType.COMPLETE : Screen.RefreshType.DELTA);
        return changed;
    }

    private static boolean same(Canvas before, Canvas after, int column, int row) {
        return before.character(column, row) == after.character(column, row)
                && before.style(column, row) == after.style(column, row);
    }

    // Making a TextCharacter is dear (it runs a break iterator), and there are few different ones.
    private TextCharacter cell(char character, Style style) {
        TextCharacter known = cells[style.ordinal()][character];
        if (known != null) return known;
        Theme.Look look = theme.look(style, depth);
        TextCharacter made =
                TextCharacter.fromCharacter(character, look.ink(), look.ground())[0].withModifiers(look.marks());
        cells[style.ordinal()][character] = made;
        return made;
    }
}
