package stirtide.bar.panels;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import stirtide.bar.canvas.Pane;
import stirtide.bar.canvas.Style;
import stirtide.bar.keys.Key;
import stirtide.bar.keys.KeyAction;
import stirtide.bar.keys.KeyContext;
import stirtide.bar.keys.KeyTable;
import stirtide.bar.model.Panel;
import stirtide.bar.model.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.bar.text.LineWrap;

/** Sentences to read, with a scroll when there are more than fit. */
public abstract class TextPanel implements Panel {
    private static final int COLUMNS = 72;
    private static final int MOST_ROWS = 17;

    private int top;
    private int jumpedTo;
    private List<Integer> headings = List.of();

    /**
     * The sentences; an empty one is a blank line, one that ends with a colon is a heading, one that begins with two blanks
     * is a row of a table and is cut instead of wrapped.
     */
    protected abstract List<String> sentences(UiState scene);

    @Override
    public KeyContext place() {
        return KeyContext.READING;
    }

    @Override
    public int columns() {
        return COLUMNS;
    }

    @Override
    public int rows() {
        return MOST_ROWS;
    }

    @Override
    public void draw(Pane inside, UiState scene) {
        List<Line> lines = lines(scene, inside.width() - 2);
        int shown = inside.height() - 1;
        headings = IntStream.range(0, lines.size())
                .filter(row -> lines.get(row).isHeading())
                .boxed()
                .toList();
        // A heading that was asked for comes to the top, even with less below it than there is room for.
        top = Math.max(0, Math.min(top, Math.max(lines.size() - shown, jumpedTo)));
        for (int row = 0; row < shown && top + row < lines.size(); row++) {
            Line line = lines.get(top + row);
            inside.put(1, row, line.text(), line.isHeading() ? Style.STRONG : Style.TEXT);
        }
        int more = lines.size() - top - shown;
        boolean fits = lines.size() <= shown;
        String arrows = fits ? "" : "arrows up, down: " + Math.max(0, more) + " more lines   ";
        String parts = fits || headings.size() < 2 || !hasParts() ? "" : "Tab next part   ";
        inside.put(1, inside.height() - 1, arrows + parts + "Esc back", Style.DIM);
    }

    private List<Line> lines(UiState scene, int columns) {
        var lines = new ArrayList<Line>();
        for (String sentence : sentences(scene)) {
            boolean heading = sentence.endsWith(":");
            if (sentence.isEmpty()) lines.add(new Line("", false));
            if (sentence.startsWith("  ")) {
                lines.add(new Line(Pane.cut(sentence, columns), false));
                continue;
            }
            for (String line : LineWrap.wrap(sentence, heading ? columns : columns - 2))
                lines.add(new Line(heading ? line : "  " + line, heading));
        }
        return lines;
    }

    @Override
    public UiEffect press(Key key, boolean machine, UiState scene) {
        KeyAction action = KeyTable.action(place(), key, true, false).orElse(KeyAction.ERASE);
        if (action == KeyAction.BACK) return new UiEffect.Close();
        if (action == KeyAction.UP) scroll(-1);
        if (action == KeyAction.DOWN) scroll(1);
        if (action == KeyAction.NEXT_PART) toNextHeading();
        return new UiEffect.Stay();
    }

    private boolean hasParts() {
        return KeyTable.of(place(), true, false).stream().anyMatch(key -> key.action() == KeyAction.NEXT_PART);
    }

    private void scroll(int lines) {
        top += lines;
        jumpedTo = 0;
    }

    /** The next heading comes to the top; after the last one the first line does. */
    private void toNextHeading() {
        top = headings.stream().filter(row -> row > top).findFirst().orElse(0);
        jumpedTo = top;
    }

    private record Line(String text, boolean isHeading) {}
}
