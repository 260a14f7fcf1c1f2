package stirtide.bar.panels;

import java.util.List;
import java.util.function.IntFunction;
import stirtide.bar.canvas.Pane;
import stirtide.bar.canvas.Style;
import stirtide.bar.keys.Key;
import stirtide.bar.model.UiEffect;
import stirtide.bar.model.UiState;

/** One choice, then what follows from it. */
public final class ChoicePanel extends FieldsPanel {
    private static final int COLUMNS = 66;
    private static final int FIELD_COLUMN = 12;
    private static final int FIELD_COLUMNS = 34;

    private final String title;
    private final String note;
    private final ChoiceField choice;
    private final IntFunction<UiEffect> then;

    /**
     * A choice.
     *
     * @param title heading
     * @param label label of the choice
     * @param choices what can be chosen
     * @param first place of the choice at the start
     * @param note a line below it
     * @param then what follows from the place of the choice
     */
    public ChoicePanel(
            String title, String label, List<String> choices, int first, String note, IntFunction<UiEffect> then) {
        this(title, new ChoiceField(label, choices, first), note, then);
    }

    private ChoicePanel(String title, ChoiceField choice, String note, IntFunction<UiEffect> then) {
        super(List.of(choice));
        this.title = title;
        this.choice = choice;
        this.note = note;
        this.then = then;
    }

    @Override
    public String title() {
        return title;
    }

    @Override
    public int columns() {
        return COLUMNS;
    }

    @Override
    public int rows() {
        return 5;
    }

    @Override
    public void draw(Pane inside, UiState scene) {
        drawFields(inside, 0, FIELD_COLUMN, FIELD_COLUMNS);
        inside.fit(1, 2, inside.width() - 2, note, Style.DIM);
        drawFoot(inside, 3, "left, right choose   Enter goes on");
    }

    @Override
    UiEffect complete(Key enter, UiState scene) {
        return then.apply(choice.picked());
    }
}
