package stirtide.bar.views;

import static org.assertj.core.api.Assertions.assertThat;

import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.TextColor;
import com.googlecode.lanterna.terminal.virtual.DefaultVirtualTerminal;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import stirtide.bar.canvas.Canvas;
import stirtide.bar.canvas.Glyphs;
import stirtide.bar.terminal.CanvasPainter;
import stirtide.bar.terminal.ColorDepth;
import stirtide.bar.terminal.Theme;

/** What is written cell by cell over another picture is what a whole picture would be. */
class PainterTest {
    private static final int COLUMNS = 120;
    private static final int ROWS = 36;

    @ParameterizedTest
    @EnumSource(Theme.class)
    void every_state_over_every_other_looks_as_if_drawn_alone(Theme theme) throws IOException {
        ColorDepth depth = theme == Theme.MONO ? ColorDepth.NONE : ColorDepth.TABLE;
        var paper = new Paper();
        CanvasPainter painter = painter(paper, theme, depth);
        var states = new ArrayList<>(BarFramesTest.states().values());
        Collections.shuffle(states, new Random(5));
        for (var state : states) {
            Canvas canvas = ScreenView.draw(state.get(), COLUMNS, ROWS, Glyphs.FULL);
            painter.paint(canvas, false);
            var alone = new Paper();
            painter(alone, theme, depth).paint(canvas, true);
            for (int row = 0; row < ROWS; row++)
                assertThat(paper.row(row)).as("row " + row).isEqualTo(alone.row(row));
            assertThat(painter.paint(canvas, false)).as("nothing new").isZero();
        }
    }

    private static CanvasPainter painter(Paper paper, Theme theme, ColorDepth depth) {
        paper.enterPrivateMode();
        return new CanvasPainter(paper, theme, depth);
    }

    /** Remembers each cell with its colors and marks; the virtual terminal itself lets all cells share one set of marks. */
    private static final class Paper extends DefaultVirtualTerminal {
        private final String[][] cells = new String[ROWS][COLUMNS];
        private final EnumSet<SGR> marks = EnumSet.noneOf(SGR.class);
        private String ink = "";
        private String ground = "";

        Paper() {
            super(new TerminalSize(COLUMNS, ROWS));
            forget();
            for (String[] row : cells) Arrays.fill(row, cell(' '));
        }

        private void forget() {
            ink = TextColor.ANSI.DEFAULT.toString();
            ground = ink;
            marks.clear();
        }

        /** Of a blank nobody sees the ink, nor whether it is bold. */
        private String cell(char character) {
            boolean bare = character == ' ' && !marks.contains(SGR.REVERSE) && !marks.contains(SGR.UNDERLINE);
            return bare ? "blank on " + ground : character + " " + ink + " on " + ground + " " + marks;
        }

        List<String> row(int row) {
            return List.of(cells[row]);
        }

        @Override
        public void putCharacter(char character) {
            var at = getCursorPosition();
            cells[at.getRow()][at.getColumn()] = cell(character);
            super.putCharacter(character);
        }

        @Override
        public void putString(String text) {
            for (char character : text.toCharArray()) putCharacter(character);
        }

        @Override
        public void enableSGR(SGR mark) {
            marks.add(mark);
            super.enableSGR(mark);
        }

        @Override
        public void disableSGR(SGR mark) {
            marks.remove(mark);
            super.disableSGR(mark);
        }

        @Override
        public void resetColorAndSGR() {
            forget();
            super.resetColorAndSGR();
        }

        @Override
        public void setForegroundColor(TextColor color) {
            ink = color.toString();
            super.setForegroundColor(color);
        }

        @Override
        public void setBackgroundColor(TextColor color) {
            ground = color.toString();
            super.setBackgroundColor(color);
        }
    }
}
