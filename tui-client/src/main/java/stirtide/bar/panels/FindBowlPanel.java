package stirtide.bar.panels;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import stirtide.bar.canvas.Pane;
import stirtide.bar.canvas.Style;
import stirtide.bar.keys.Key;
import stirtide.bar.keys.KeyContext;
import stirtide.bar.model.Panel;
import stirtide.bar.model.Panel.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.bar.panels.form.TextField;
import stirtide.bar.panels.list.ListCursor;
import stirtide.bar.text.BowlText;
import stirtide.bar.text.CodeText;
import stirtide.bar.text.CountText;

/** Finds a bowl by any word of its row; Enter picks the selected one. */
public final class FindBowlPanel implements Panel {
    private static final int COLUMNS = 58;
    private static final int MATCH_ROWS = 6;

    private final TextField words = new TextField("find", 20, letter -> letter >= ' ', ".*", "any text", "");
    private final ListCursor<Row> cursor = new ListCursor<>(Row::bowl);

    private record Row(String bowl, String text) {
        Row(String bowl, int chair, String client, List<String> zones, String stage) {
            this(
                    bowl,
                    "bowl " + bowl + "  chair " + chair + "  " + client + "  " + String.join(", ", zones) + "  "
                            + stage);
        }
    }

    @Override
    public Frame frame() {
        return new Frame(KeyContext.FIELDS, "FIND A BOWL", COLUMNS, MATCH_ROWS + 3);
    }

    @Override
    public void draw(Pane inside, UiState state) {
        inside.put(1, 0, "find", Style.STRONG);
        words.draw(inside, 7, 0, 22, true);
        inside.put(33, 0, CountText.of(matches(state).size(), "bowl"), Style.DIM);
        cursor.draw(shown(state), MATCH_ROWS, 0, (place, row, selected) -> {
            Style style = selected ? Style.PICKED : Style.TEXT;
            inside.fit(1, 1 + place, COLUMNS - 2, (selected ? "> " : "  ") + row.text(), style);
        });
        inside.put(1, inside.height() - 1, "Enter picks   arrows up, down   Esc back", Style.DIM);
    }

    private List<Row> shown(UiState state) {
        return matches(state).stream().limit(MATCH_ROWS).toList();
    }

    private List<Row> matches(UiState state) {
        String wanted = words.text().toLowerCase(Locale.ROOT);
        return rows(state).stream()
                .filter(row -> row.text().toLowerCase(Locale.ROOT).contains(wanted))
                .toList();
    }

    private static List<Row> rows(UiState state) {
        var rows = new ArrayList<Row>();
        state.view().ifPresent(view -> {
            view.live()
                    .forEach(live -> rows.add(new Row(
                            live.bowl(),
                            live.chair(),
                            live.clientRef(),
                            BowlText.zones(live, view),
                            CodeText.words(live.stage()))));
            view.queue()
                    .forEach(queued -> rows.add(new Row(
                            queued.bowl().bowl(),
                            queued.bowl().chair(),
                            queued.clientRef(),
                            queued.bowl().zones(),
                            "to mix")));
        });
        return rows;
    }

    @Override
    public UiEffect press(Key key, boolean machine, UiState state) {
        List<Row> rows = shown(state);
        if (key.is(Key.Kind.ESCAPE)) return new UiEffect.Close();
        if (key.is(Key.Kind.ENTER))
            return cursor.in(rows)
                    .<UiEffect>map(row -> new UiEffect.SelectBowl(row.bowl()))
                    .orElse(new UiEffect.Stay());
        if (key.is(Key.Kind.DOWN)) cursor.move(1, rows);
        if (key.is(Key.Kind.UP)) cursor.move(-1, rows);
        words.press(key, machine);
        return new UiEffect.Stay();
    }
}
