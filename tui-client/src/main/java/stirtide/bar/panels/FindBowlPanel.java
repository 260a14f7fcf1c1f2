package stirtide.bar.panels;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import stirtide.bar.canvas.Pane;
import stirtide.bar.canvas.Style;
import stirtide.bar.keys.Key;
import stirtide.bar.keys.KeyContext;
import stirtide.bar.model.Panel;
import stirtide.bar.model.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.bar.text.BowlStageText;
import stirtide.bar.text.BowlText;

/** Finds a bowl by any word of its row; Enter picks the marked one. */
public final class FindBowlPanel implements Panel {
    private static final int COLUMNS = 58;
    private static final int MATCH_ROWS = 6;

    private final TextField words = new TextField("find", 20, letter -> letter >= ' ', ".*", "any text", "");
    private int marked;

    @Override
    public KeyContext place() {
        return KeyContext.FIELDS;
    }

    @Override
    public String title() {
        return "FIND A BOWL";
    }

    @Override
    public int columns() {
        return COLUMNS;
    }

    @Override
    public int rows() {
        return MATCH_ROWS + 3;
    }

    @Override
    public void draw(Pane inside, UiState scene) {
        inside.put(1, 0, "find", Style.STRONG);
        words.draw(inside, 7, 0, 22, true);
        List<Row> matches = matches(scene);
        inside.put(33, 0, BowlText.count(matches.size()), Style.DIM);
        int at = mark(matches);
        for (int i = 0; i < Math.min(MATCH_ROWS, matches.size()); i++) {
            boolean isMarked = i == at;
            Style style = isMarked ? Style.PICKED : Style.TEXT;
            inside.fit(
                    1,
                    1 + i,
                    COLUMNS - 2,
                    (isMarked ? "> " : "  ") + matches.get(i).text(),
                    style);
        }
        inside.put(1, rows() - 1, "Enter picks   arrows up, down   Esc back", Style.DIM);
    }

    private int mark(List<Row> matches) {
        return Math.max(0, Math.min(marked, Math.min(MATCH_ROWS, matches.size()) - 1));
    }

    private List<Row> matches(UiState scene) {
        String wanted = words.text().toLowerCase(Locale.ROOT);
        return rows(scene).stream()
                .filter(row -> row.text().toLowerCase(Locale.ROOT).contains(wanted))
                .toList();
    }

    private static List<Row> rows(UiState scene) {
        var rows = new ArrayList<Row>();
        scene.view().ifPresent(view -> {
            view.live()
                    .forEach(bowl -> rows.add(new Row(
                            bowl.bowl(),
                            text(
                                    bowl.bowl(),
                                    bowl.chair(),
                                    bowl.clientRef(),
                                    BowlText.zones(bowl, view),
                                    BowlStageText.stage(bowl.stage())))));
            view.queue()
                    .forEach(bowl -> rows.add(new Row(
                            bowl.bowl().bowl(),
                            text(
                                    bowl.bowl().bowl(),
                                    bowl.bowl().chair(),
                                    bowl.clientRef(),
                                    bowl.bowl().zones(),
                                    "to mix"))));
        });
        return rows;
    }

    private static String text(String bowl, int chair, String client, List<String> zones, String stage) {
        return "bowl " + bowl + "  chair " + chair + "  " + client + "  " + String.join(", ", zones) + "  " + stage;
    }

    @Override
    public UiEffect press(Key key, boolean machine, UiState scene) {
        if (key.is(Key.Kind.ESCAPE)) return new UiEffect.Close();
        if (key.is(Key.Kind.ENTER)) {
            List<Row> matches = matches(scene);
            return matches.isEmpty()
                    ? new UiEffect.Stay()
                    : new UiEffect.Pick(matches.get(mark(matches)).bowl());
        }
        int last = Math.min(MATCH_ROWS, matches(scene).size()) - 1;
        if (key.is(Key.Kind.DOWN)) marked = Math.min(last, marked + 1);
        if (key.is(Key.Kind.UP)) marked = Math.max(0, marked - 1);
        words.press(key, machine);
        return new UiEffect.Stay();
    }

    private record Row(String bowl, String text) {}
}
