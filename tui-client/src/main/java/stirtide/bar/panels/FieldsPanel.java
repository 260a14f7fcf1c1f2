package stirtide.bar.panels;

import java.util.List;
import java.util.Optional;
import stirtide.bar.canvas.Pane;
import stirtide.bar.canvas.Style;
import stirtide.bar.keys.Key;
import stirtide.bar.keys.KeyAction;
import stirtide.bar.keys.KeyContext;
import stirtide.bar.keys.KeyTable;
import stirtide.bar.model.Panel;
import stirtide.bar.model.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.bar.text.WeightText;

/** A panel with fields one below the other. Enter goes on; on the last field it is up to the panel. */
abstract class FieldsPanel implements Panel {
    private final List<? extends FormField> fields;
    private int focus;
    private String reason = "";
    private int takenTurn;

    FieldsPanel(List<? extends FormField> fields) {
        this.fields = List.copyOf(fields);
    }

    /** Called when Enter is pressed on the last field and every field can be kept. */
    abstract UiEffect complete(Key enter, UiState scene);

    /** What follows when the panel is left without an entry. */
    UiEffect left() {
        return new UiEffect.Close();
    }

    /** Called when a field changed. */
    void edited() {}

    @Override
    public KeyContext place() {
        return KeyContext.FIELDS;
    }

    final boolean isFocused(FormField field) {
        return fields.get(focus) == field;
    }

    final String reason() {
        return reason;
    }

    /** Stays with a reason shown below the fields. */
    final UiEffect stay(String why) {
        reason = why;
        return new UiEffect.Stay();
    }

    @Override
    public UiEffect press(Key key, boolean machine, UiState scene) {
        KeyAction action = KeyTable.action(place(), key, true, false).orElse(KeyAction.ERASE);
        if (action == KeyAction.BACK) return left();
        if (action == KeyAction.KEEP) return keep(key, scene);
        if (action == KeyAction.NEXT_FIELD) return focusOn(Math.floorMod(focus + 1, fields.size()));
        if (action == KeyAction.FIELD_BEFORE) return focusOn(Math.floorMod(focus - 1, fields.size()));
        FormField field = fields.get(focus);
        String before = field.text();
        Optional<String> refused = field.press(key, machine);
        if (!field.text().equals(before)) edited();
        return stay(refused.map(why -> field.label() + " " + why).orElse(""));
    }

    /**
     * Enter on an empty weight takes what the scale shows, once for each time it has come to rest; empty when the key means
     * something else. A taken weight is in the field and is kept by the key itself.
     */
    final Optional<UiEffect> fromScale(GramsField field, Key key, UiState scene) {
        boolean wanted = key.is(Key.Kind.ENTER) && field.text().isEmpty();
        if (!wanted || !hasWeight(scene)) return Optional.empty();
        if (scene.scale().turn() == takenTurn)
            return Optional.of(stay("the scale has not moved since: zero it, then pour"));
        takenTurn = scene.scale().turn();
        String grams = WeightText.grams(scene.scale().milligrams().getAsInt()).replace(" ", "");
        for (char digit : grams.toCharArray()) field.press(Key.of(digit, key.nanos()), true);
        edited();
        return Optional.empty();
    }

    // An empty scale at rest shows 0, and that is no weight.
    private static boolean hasWeight(UiState scene) {
        return scene.scale().milligrams().orElse(0) > 0;
    }

    /** What Enter does now, in words: an empty weight takes what lies on the scale, else {@code onLast} on the last field. */
    final String enterWords(String onLast, UiState scene) {
        boolean taken = scene.scale().turn() == takenTurn;
        FormField field = fields.get(focus);
        if (field instanceof GramsField && field.text().isEmpty() && !taken && hasWeight(scene))
            return "Enter takes " + WeightText.grams(scene.scale().milligrams().getAsInt()) + " g"
                    + (onLastField() ? onLast.replace("Enter ", ", ") : "");
        return onLastField() ? onLast : "Enter next";
    }

    /** Draws why a field was not taken, and in the last row which keys work. */
    final void drawFoot(Pane inside, int reasonRow, String keys) {
        if (!reason.isEmpty()) inside.put(1, reasonRow, "! " + reason, Style.STRONG);
        inside.put(1, rows() - 1, keys + "   Esc leaves", Style.DIM);
    }

    private UiEffect focusOn(int next) {
        focus = next;
        return stay("");
    }

    private UiEffect keep(Key enter, UiState scene) {
        FormField field = fields.get(focus);
        Optional<String> problem = field.problem();
        if (problem.isPresent()) return stay(field.label() + " " + problem.get());
        if (focus < fields.size() - 1) return focusOn(focus + 1);
        for (int i = 0; i < fields.size(); i++) {
            Optional<String> earlier = fields.get(i).problem();
            if (earlier.isPresent()) {
                focus = i;
                return stay(fields.get(i).label() + " " + earlier.get());
            }
        }
        return complete(enter, scene);
    }

    /** Whether Enter would complete the panel now. */
    final boolean onLastField() {
        return focus == fields.size() - 1;
    }

    final int focus() {
        return focus;
    }

    final List<? extends FormField> allFields() {
        return fields;
    }

    /** Draws the fields from a row on, label left, content right of it. */
    final void drawFields(Pane inside, int firstRow, int fieldColumn, int columns) {
        drawFields(inside, firstRow, fieldColumn - 2, fieldColumn, columns);
    }

    /** The same with fewer columns for the labels. */
    final void drawFields(Pane inside, int firstRow, int labelColumns, int fieldColumn, int columns) {
        for (int i = 0; i < fields.size(); i++) {
            FormField field = fields.get(i);
            inside.fit(1, firstRow + i, labelColumns, field.label(), i == focus ? Style.STRONG : Style.TEXT);
            field.draw(inside, fieldColumn, firstRow + i, columns, i == focus);
        }
    }
}
