package stirtide.bar.entry;

import java.util.List;
import java.util.Optional;
import stirtide.bar.frame.Pane;
import stirtide.bar.frame.Style;
import stirtide.bar.keys.Action;
import stirtide.bar.keys.Key;
import stirtide.bar.keys.KeyTable;
import stirtide.bar.keys.Place;
import stirtide.bar.scene.Panel;
import stirtide.bar.scene.PanelAnswer;
import stirtide.bar.scene.Scene;
import stirtide.bar.words.WeightText;

/** A panel with fields one below the other. Enter goes on; on the last field it is up to the panel. */
abstract class FieldsPanel implements Panel {
    private final List<? extends Field> fields;
    private int focus;
    private String reason = "";
    private int takenTurn;

    FieldsPanel(List<? extends Field> fields) {
        this.fields = List.copyOf(fields);
    }

    /** Called when Enter is pressed on the last field and every field can be kept. */
    abstract PanelAnswer complete(Key enter, Scene scene);

    /** What follows when the panel is left without an entry. */
    PanelAnswer left() {
        return new PanelAnswer.Close();
    }

    /** Called when a field changed. */
    void edited() {}

    @Override
    public Place place() {
        return Place.FIELDS;
    }

    final boolean isFocused(Field field) {
        return fields.get(focus) == field;
    }

    final String reason() {
        return reason;
    }

    /** Stays with a reason shown below the fields. */
    final PanelAnswer stay(String why) {
        reason = why;
        return new PanelAnswer.Stay();
    }

    @Override
    public PanelAnswer press(Key key, boolean machine, Scene scene) {
        Action action = KeyTable.action(place(), key, true, false).orElse(Action.ERASE);
        if (action == Action.BACK) return left();
        if (action == Action.KEEP) return keep(key, scene);
        if (action == Action.NEXT_FIELD) return focusOn(Math.floorMod(focus + 1, fields.size()));
        if (action == Action.FIELD_BEFORE) return focusOn(Math.floorMod(focus - 1, fields.size()));
        Field field = fields.get(focus);
        String before = field.text();
        Optional<String> refused = field.press(key, machine);
        if (!field.text().equals(before)) edited();
        return stay(refused.map(why -> field.label() + " " + why).orElse(""));
    }

    /**
     * Enter on an empty weight takes what the scale shows, once for each time it has come to rest; empty when the key means
     * something else. A taken weight is in the field and is kept by the key itself.
     */
    final Optional<PanelAnswer> fromScale(GramsField field, Key key, Scene scene) {
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
    private static boolean hasWeight(Scene scene) {
        return scene.scale().milligrams().orElse(0) > 0;
    }

    /** What Enter does now, in words: an empty weight takes what lies on the scale, else {@code onLast} on the last field. */
    final String enterWords(String onLast, Scene scene) {
        boolean taken = scene.scale().turn() == takenTurn;
        Field field = fields.get(focus);
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

    private PanelAnswer focusOn(int next) {
        focus = next;
        return stay("");
    }

    private PanelAnswer keep(Key enter, Scene scene) {
        Field field = fields.get(focus);
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

    final List<? extends Field> allFields() {
        return fields;
    }

    /** Draws the fields from a row on, label left, content right of it. */
    final void drawFields(Pane inside, int firstRow, int fieldColumn, int columns) {
        drawFields(inside, firstRow, fieldColumn - 2, fieldColumn, columns);
    }

    /** The same with fewer columns for the labels. */
    final void drawFields(Pane inside, int firstRow, int labelColumns, int fieldColumn, int columns) {
        for (int i = 0; i < fields.size(); i++) {
            Field field = fields.get(i);
            inside.fit(1, firstRow + i, labelColumns, field.label(), i == focus ? Style.STRONG : Style.TEXT);
            field.draw(inside, fieldColumn, firstRow + i, columns, i == focus);
        }
    }
}
