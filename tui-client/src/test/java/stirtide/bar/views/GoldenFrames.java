package stirtide.bar.views;

import static org.assertj.core.api.Assertions.assertThat;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.TextCharacter;
import com.googlecode.lanterna.terminal.virtual.DefaultVirtualTerminal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import stirtide.bar.canvas.Canvas;
import stirtide.bar.canvas.Glyphs;
import stirtide.bar.canvas.Style;
import stirtide.bar.model.UiState;
import stirtide.bar.terminal.CanvasPainter;
import stirtide.bar.terminal.ColorDepth;
import stirtide.bar.terminal.Theme;

/** Draws a scene on a terminal of the library and holds it against the file kept for it. */
final class GoldenFrames {
    private static final Path FOLDER = Path.of("src/test/frames");

    private GoldenFrames() {}

    /** With {@code -Dframes.update=true} the file is written instead. */
    static void check(String name, UiState scene, int columns, int rows, Glyphs glyphs) throws IOException {
        Canvas canvas = ScreenView.draw(scene, columns, rows, glyphs);
        List<String> shown = shown(canvas, Theme.DARK, ColorDepth.FULL);
        assertThat(shown).isEqualTo(canvas.rows());
        var lines = new ArrayList<>(shown.stream().map(row -> row + "|").toList());
        lines.add("styles");
        lines.addAll(StyleLetters.rows(canvas));
        Path file = FOLDER.resolve(
                name + "-" + columns + "x" + rows + (glyphs == Glyphs.FULL ? "" : "-" + glyphs) + ".txt");
        if (Boolean.getBoolean("frames.update")) Files.write(file, lines);
        assertThat(lines).as(file.toString()).isEqualTo(Files.readAllLines(file));
    }

    /** The same for what a theme makes of each cell: a letter a look, with the looks named below the picture. */
    static void checkLooks(String name, UiState scene, int columns, int rows, Theme theme) throws IOException {
        Canvas canvas = ScreenView.draw(scene, columns, rows, Glyphs.FULL);
        var letters = new TreeMap<String, Character>();
        for (Style style : Style.values())
            letters.putIfAbsent(look(theme.look(style, ColorDepth.FULL)), StyleLetters.of(style));
        var lines = new ArrayList<String>();
        for (List<TextCharacter> row : cells(canvas, theme, ColorDepth.FULL)) {
            var text = new StringBuilder();
            row.forEach(cell -> text.append(plainBlank(cell, theme) ? '.' : letters.getOrDefault(look(cell), '?')));
            lines.add(text.toString());
        }
        letters.forEach((look, letter) -> lines.add(letter + " " + look));
        Path file = FOLDER.resolve(name + "-" + columns + "x" + rows + "-" + theme + ".txt");
        if (Boolean.getBoolean("frames.update")) Files.write(file, lines);
        assertThat(lines).as(file.toString()).isEqualTo(Files.readAllLines(file));
    }

    /** Of a blank nobody sees the ink, nor whether it is bold. */
    private static boolean plainBlank(TextCharacter cell, Theme theme) {
        return cell.is(' ')
                && !cell.isReversed()
                && !cell.isUnderlined()
                && cell.getBackgroundColor()
                        .equals(theme.look(Style.TEXT, ColorDepth.FULL).ground());
    }

    private static String look(TextCharacter cell) {
        return look(new Theme.Look(cell.getForegroundColor(), cell.getBackgroundColor(), cell.getModifiers()));
    }

    private static String look(Theme.Look look) {
        return look.ink() + " on " + look.ground() + " " + look.marks();
    }

    /** What a terminal shows of a canvas. */
    static List<String> shown(Canvas canvas, Theme theme, ColorDepth depth) throws IOException {
        var rows = new ArrayList<String>();
        for (List<TextCharacter> row : cells(canvas, theme, depth)) {
            var text = new StringBuilder();
            row.forEach(cell -> text.append(cell.getCharacterString()));
            rows.add(text.toString());
        }
        return rows;
    }

    /** The cells of a terminal that shows a canvas. */
    static List<List<TextCharacter>> cells(Canvas canvas, Theme theme, ColorDepth depth) throws IOException {
        var terminal = new DefaultVirtualTerminal(new TerminalSize(canvas.width(), canvas.height()));
        terminal.enterPrivateMode();
        new CanvasPainter(terminal, theme, depth).paint(canvas, false);
        var rows = new ArrayList<List<TextCharacter>>();
        for (int row = 0; row < canvas.height(); row++) {
            var cells = new ArrayList<TextCharacter>();
            for (int column = 0; column < canvas.width(); column++) cells.add(terminal.getCharacter(column, row));
            rows.add(cells);
        }
        return rows;
    }
}
