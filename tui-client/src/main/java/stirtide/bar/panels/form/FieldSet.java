package stirtide.bar.panels.form;

import java.util.List;
import java.util.Optional;
import stirtide.bar.canvas.Pane;
import stirtide.bar.canvas.Style;
import stirtide.bar.keys.Key;
import stirtide.bar.keys.KeyAction;
import stirtide.bar.keys.KeyContext;
import stirtide.bar.keys.KeyTable;
import stirtide.bar.model.Panel.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.bar.text.LineWrap;
import stirtide.bar.text.WeightText;

/**
 * The fields of a form, one below the other: which one has the focus, what keys do to them, and why an entry was not
 * accepted. Enter goes to the next field; on the last one it submits the form once every field is valid.
 */
public final class FieldSet {
    private final List<FormField> fields;
    private final Form form;
    private boolean usesScale;
    private int focus;
    private String reason = "";
    private int usedScaleTurn;

    /** The form that the fields belong to. */
    public interface Form {
        /** Called when Enter is pressed on the last field and every field is valid. */
        UiEffect submit(Key enter, UiState state);

        /** What follows when the form is left without an entry. */
        default UiEffect cancel() {
            return new UiEffect.Close();
        }

        /** Called when the content of a field changed. */
        default void edited() {}
    }

    /**
     * The columns of a form.
     *
     * @param label most columns of a label
     * @param field column where the fields begin
     * @param width columns inside a field
     */
    public record Columns(int label, int field, int width) {
        /** Labels that end two columns before the fields. */
        public static Columns at(int field, int width) {
            return new Columns(field - 2, field, width);
        }
    }

    /** The fields of a form, at least one, with the focus on the first. */
    public FieldSet(Form form, List<? extends FormField> fields) {
        this.form = form;
        this.fields = List.copyOf(fields);
    }

    /** Lets Enter on an empty weight take what the scale shows, once for each time it has come to rest. */
    public FieldSet withScale() {
        usesScale = true;
        return this;
    }

    /** The fields, from top to bottom. */
    public List<FormField> all() {
        return fields;
    }

    /** The contents, from top to bottom. */
    public List<String> texts() {
        return fields.stream().map(FormField::text).toList();
    }

    /** Place of the field with the focus, from 0. */
    public int focus() {
        return focus;
    }

    /** Whether Enter submits the form. */
    public boolean onLast() {
        return focus == fields.size() - 1;
    }

    /** Why the last entry was not accepted, empty text when it was. */
    public String reason() {
        return reason;
    }

    /** Keeps the form open with a reason. */
    public UiEffect stay(String why) {
        reason = why;
        return new UiEffect.Stay();
    }

    /** Handles a key; {@code machine} says whether it is part of a burst faster than fingers. */
    public UiEffect press(Key key, boolean machine, UiState state) {
        if (key.is(Key.Kind.ENTER) && offersWeight(state)) {
            if (state.scale().turn() == usedScaleTurn) return stay("the scale has not moved since: zero it, then pour");
            takeWeight(key, state);
        }
        return switch (KeyTable.action(KeyContext.FIELDS, key, true, false).orElse(KeyAction.ERASE)) {
            case BACK -> form.cancel();
            case KEEP -> keep(key, state);
            case NEXT_FIELD -> focusOn(Math.floorMod(focus + 1, fields.size()));
            case FIELD_BEFORE -> focusOn(Math.floorMod(focus - 1, fields.size()));
            default -> edit(key, machine);
        };
    }

    private UiEffect edit(Key key, boolean machine) {
        FormField field = fields.get(focus);
        String before = field.text();
        Optional<String> refused = field.press(key, machine);
        if (!field.text().equals(before)) form.edited();
        return stay(refused.map(why -> field.label() + " " + why).orElse(""));
    }

    // An empty scale at rest shows 0, and that is no weight.
    private boolean offersWeight(UiState state) {
        FormField field = fields.get(focus);
        boolean empty = field instanceof GramsField && field.text().isEmpty();
        return usesScale && empty && state.scale().milligrams().orElse(0) > 0;
    }

    private void takeWeight(Key enter, UiState state) {
        usedScaleTurn = state.scale().turn();
        for (char digit : weight(state).replace(" ", "").toCharArray())
            fields.get(focus).press(Key.of(digit, enter.nanos()), true);
        form.edited();
    }

    private static String weight(UiState state) {
        return WeightText.grams(state.scale().milligrams().getAsInt());
    }

    private UiEffect keep(Key enter, UiState state) {
        Optional<UiEffect> invalid = invalid(focus);
        if (invalid.isPresent()) return invalid.get();
        if (!onLast()) return focusOn(focus + 1);
        for (int i = 0; i < fields.size(); i++) {
            invalid = invalid(i);
            if (invalid.isPresent()) return invalid.get();
        }
        return form.submit(enter, state);
    }

    private Optional<UiEffect> invalid(int place) {
        FormField field = fields.get(place);
        Optional<String> problem = field.problem();
        if (problem.isPresent()) focus = place;
        return problem.map(why -> stay(field.label() + " " + why));
    }

    private UiEffect focusOn(int next) {
        focus = next;
        return stay("");
    }

    /** What Enter does now, in words: an empty weight takes what lies on the scale, the last field does {@code onLast}. */
    public String enterWords(String onLast, UiState state) {
        if (offersWeight(state) && state.scale().turn() != usedScaleTurn)
            return "Enter takes " + weight(state) + " g" + (onLast() ? onLast.replace("Enter ", ", ") : "");
        return onLast() ? onLast : "Enter next";
    }

    /** Draws all fields from a row on. */
    public void draw(Pane inside, int row, Columns columns) {
        draw(inside, row, columns, 0, fields.size());
    }

    /** Draws some of the fields, beginning with the field at place {@code first}. */
    public void draw(Pane inside, int row, Columns columns, int first, int count) {
        for (int i = 0; i < count; i++) {
            FormField field = fields.get(first + i);
            boolean focused = first + i == focus;
            inside.fit(1, row + i, columns.label(), field.label(), focused ? Style.STRONG : Style.TEXT);
            field.draw(inside, columns.field(), row + i, columns.width(), focused);
        }
    }

    /** Rows beyond the first that the reason takes in so many columns. */
    public int moreReasonRows(int columns) {
        return reason.isEmpty() ? 0 : LineWrap.wrap("! " + reason, columns - 2).size() - 1;
    }

    private void drawReason(Pane inside, int firstRow, String text) {
        if (reason.isEmpty()) return;
        int row = firstRow;
        for (String line : LineWrap.wrap(text, inside.width() - 2)) inside.put(1, row++, line, Style.STRONG);
    }

    /** Draws why an entry was not accepted, and in the last row of the pane which keys work. */
    public void drawFoot(Pane inside, int reasonRow, String keys) {
        drawReason(inside, reasonRow, "! " + reason);
        inside.put(1, inside.height() - 1, keys + "   Esc leaves", Style.DIM);
    }
}
