package stirtide.bar.panels.form;

import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.function.IntFunction;
import stirtide.bar.canvas.Pane;
import stirtide.bar.canvas.Style;
import stirtide.bar.keys.Key;
import stirtide.bar.keys.KeyContext;
import stirtide.bar.model.Panel;
import stirtide.bar.model.Panel.UiEffect;
import stirtide.bar.model.UiState;

/** A form of a few fields that are read once Enter is pressed on the last one. */
public final class FormPanel implements Panel, FieldSet.Form {
    private static final Layout CHOICE = new Layout(66, 5, 0, 3, 12, 34);

    private final String title;
    private final Layout layout;
    private final FieldSet fields;
    private final Function<UiState, UiEffect> submit;
    private String note = "";
    private String enterNext = "Enter next";
    private String enterLast = "Enter next";
    private BiConsumer<Pane, UiState> header = (inside, state) -> {};

    /**
     * Where the parts of a form stand. The note stands in the row above the reason.
     *
     * @param columns columns inside the frame
     * @param rows rows inside the frame
     * @param fieldRow row of the first field
     * @param reasonRow row that says why an entry was not accepted
     * @param fieldColumn column where the fields begin
     * @param fieldColumns columns inside a field
     */
    public record Layout(int columns, int rows, int fieldRow, int reasonRow, int fieldColumn, int fieldColumns) {}

    /**
     * A form.
     *
     * @param title heading
     * @param layout where its parts stand
     * @param fields its fields, at least one
     * @param submit what follows once every field is valid; {@link UiEffect.Stay} with a reason keeps the form open
     */
    public FormPanel(
            String title, Layout layout, List<? extends FormField> fields, Function<UiState, UiEffect> submit) {
        this.title = title;
        this.layout = layout;
        this.fields = new FieldSet(this, fields);
        this.submit = submit;
    }

    /**
     * A form of one choice.
     *
     * @param title heading
     * @param label label of the choice
     * @param choices what can be chosen
     * @param first place of the choice at the start
     * @param note a line below it
     * @param then what follows from the place of the choice
     */
    public static Panel choice(
            String title, String label, List<String> choices, int first, String note, IntFunction<UiEffect> then) {
        var choice = new ChoiceField(label, choices, first);
        return new FormPanel(title, CHOICE, List.of(choice), state -> then.apply(choice.picked()))
                .note(note)
                .keys("", "left, right choose   Enter goes on");
    }

    /** Shows a line of help above the reason. */
    public FormPanel note(String text) {
        note = text;
        return this;
    }

    /** Says which keys work on the last field and on those before. */
    public FormPanel keys(String next, String last) {
        enterNext = next;
        enterLast = last;
        return this;
    }

    /** Draws more than the fields. */
    public FormPanel header(BiConsumer<Pane, UiState> painter) {
        header = painter;
        return this;
    }

    @Override
    public Frame frame() {
        return new Frame(
                KeyContext.FIELDS, title, layout.columns(), layout.rows() + fields.moreReasonRows(layout.columns()));
    }

    @Override
    public void draw(Pane inside, UiState state) {
        header.accept(inside, state);
        fields.draw(inside, layout.fieldRow(), FieldSet.Columns.at(layout.fieldColumn(), layout.fieldColumns()));
        inside.fit(1, layout.reasonRow() - 1, inside.width() - 2, note, Style.DIM);
        fields.drawFoot(inside, layout.reasonRow(), fields.onLast() ? enterLast : enterNext);
    }

    @Override
    public UiEffect press(Key key, boolean machine, UiState state) {
        return fields.press(key, machine, state);
    }

    @Override
    public UiEffect submit(Key enter, UiState state) {
        UiEffect effect = submit.apply(state);
        return effect instanceof UiEffect.Stay stay ? fields.stay(stay.reason()) : effect;
    }
}
