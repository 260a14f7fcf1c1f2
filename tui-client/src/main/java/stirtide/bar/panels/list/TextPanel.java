package stirtide.bar.panels.list;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import stirtide.bar.canvas.Pane;
import stirtide.bar.canvas.Style;
import stirtide.bar.keys.Key;
import stirtide.bar.keys.KeyAction;
import stirtide.bar.keys.KeyContext;
import stirtide.bar.keys.KeyTable;
import stirtide.bar.model.Panel;
import stirtide.bar.model.Panel.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.bar.text.LineWrap;

/**
 * Lines of text to read, scrolled when there are more than fit. An empty line is a blank row, one that ends with a colon is
 * a heading, one that begins with two blanks is a row of a table and is cut instead of wrapped.
 */
public final class TextPanel implements Panel {
    private static final int COLUMNS = 72;
    private static final int ROWS = 17;

    private final KeyContext context;
    private final Supplier<String> title;
    private final Function<UiState, List<String>> lines;
    private final OwnKeys ownKeys;
    private int top;
    private int jumpedTo;
    private List<Integer> headings = List.of();

    /** Keys that mean more than scrolling. */
    public interface OwnKeys {
        /** Answers a key, empty when it is none of its own. */
        Optional<UiEffect> press(Key key, boolean machine, UiState state);
    }

    private record Row(String text, boolean isHeading) {}

    /** Text with a heading. */
    public TextPanel(String title, Function<UiState, List<String>> lines) {
        this(KeyContext.READING, () -> title, lines, (key, machine, state) -> Optional.empty());
    }

    /** Text with keys of its own; {@code context} lists them. */
    public TextPanel(
            KeyContext context, Supplier<String> title, Function<UiState, List<String>> lines, OwnKeys ownKeys) {
        this.context = context;
        this.title = title;
        this.lines = lines;
        this.ownKeys = ownKeys;
    }

    /** Adds a heading, a line for each row or {@code none} when there are none, and a blank line. */
    public static <T> void addPart(
            List<String> lines, String heading, List<T> rows, Function<T, String> words, String none) {
        lines.add(heading);
        if (rows.isEmpty()) lines.add(none);
        rows.forEach(row -> lines.add(words.apply(row)));
        lines.add("");
    }

    @Override
    public Frame frame() {
        return new Frame(context, title.get(), COLUMNS, ROWS);
    }

    @Override
    public void draw(Pane inside, UiState state) {
        List<Row> rows = rows(lines.apply(state), inside.width() - 2);
        int shown = inside.height() - 1;
        headings = IntStream.range(0, rows.size())
                .filter(row -> rows.get(row).isHeading())
                .boxed()
                .toList();
        // A heading that was asked for comes to the top, even with less below it than there is room for.
        top = Math.max(0, Math.min(top, Math.max(rows.size() - shown, jumpedTo)));
        for (int row = 0; row < shown && top + row < rows.size(); row++) {
            Row line = rows.get(top + row);
            inside.put(1, row, line.text(), line.isHeading() ? Style.STRONG : Style.TEXT);
        }
        boolean fits = rows.size() <= shown;
        String arrows = fits ? "" : "arrows up, down: " + Math.max(0, rows.size() - top - shown) + " more lines   ";
        String parts = fits || headings.size() < 2 || !hasParts() ? "" : "Tab next part   ";
        inside.put(1, inside.height() - 1, arrows + parts + "Esc back", Style.DIM);
    }

    private static List<Row> rows(List<String> lines, int columns) {
        var rows = new ArrayList<Row>();
        for (String line : lines) {
            boolean heading = line.endsWith(":");
            if (line.isEmpty()) rows.add(new Row("", false));
            else if (line.startsWith("  ")) rows.add(new Row(Pane.cut(line, columns), false));
            else
                for (String part : LineWrap.wrap(line, heading ? columns : columns - 2))
                    rows.add(new Row(heading ? part : "  " + part, heading));
        }
        return rows;
    }

    private boolean hasParts() {
        return KeyTable.of(context, true, false).stream().anyMatch(key -> key.action() == KeyAction.NEXT_PART);
    }

    @Override
    public UiEffect press(Key key, boolean machine, UiState state) {
        Optional<UiEffect> own = ownKeys.press(key, machine, state);
        if (own.isPresent()) return own.get();
        switch (KeyTable.action(context, key, true, false).orElse(KeyAction.ERASE)) {
            case BACK -> {
                return new UiEffect.Close();
            }
            case UP -> scroll(-1);
            case DOWN -> scroll(1);
            case NEXT_PART -> toNextHeading();
            default -> {}
        }
        return new UiEffect.Stay();
    }

    private void scroll(int rows) {
        top += rows;
        jumpedTo = 0;
    }

    /** The next heading comes to the top; after the last one the first line does. */
    private void toNextHeading() {
        top = headings.stream().filter(row -> row > top).findFirst().orElse(0);
        jumpedTo = top;
    }
}
