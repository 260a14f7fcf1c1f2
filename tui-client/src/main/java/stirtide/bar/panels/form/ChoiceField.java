package stirtide.bar.panels.form;

import java.util.List;
import java.util.Optional;
import stirtide.bar.canvas.Pane;
import stirtide.bar.canvas.Style;
import stirtide.bar.keys.Key;

/** One of several, stepped through with the arrows left and right. */
public final class ChoiceField implements FormField {
    private final String label;
    private final List<String> choices;
    private int picked;

    public ChoiceField(String label, List<String> choices, int first) {
        this.label = label;
        this.choices = List.copyOf(choices);
        picked = first;
    }

    /** Begins with the first choice when {@code first} is none of them. */
    public ChoiceField(String label, List<String> choices, String first) {
        this(label, choices, Math.max(0, choices.indexOf(first)));
    }

    @Override
    public String label() {
        return label;
    }

    @Override
    public String text() {
        return choices.isEmpty() ? "" : choices.get(picked);
    }

    /** Picks a choice by its place; one that is not there changes nothing. */
    public void pick(int place) {
        if (place >= 0 && place < choices.size()) picked = place;
    }

    public int picked() {
        return picked;
    }

    @Override
    public Optional<String> press(Key key, boolean machine) {
        if (choices.isEmpty()) return Optional.empty();
        if (key.is(Key.Kind.LEFT)) picked = Math.floorMod(picked - 1, choices.size());
        if (key.is(Key.Kind.RIGHT)) picked = Math.floorMod(picked + 1, choices.size());
        if (!key.isText() || toLetter(key.character())) return Optional.empty();
        return Optional.of("is a choice: arrows left and right, or its first letter");
    }

    // The next choice that begins with the letter, so that a long list needs one key.
    private boolean toLetter(char letter) {
        for (int step = 1; step <= choices.size(); step++) {
            int place = (picked + step) % choices.size();
            boolean begins = !choices.get(place).isEmpty()
                    && Character.toLowerCase(choices.get(place).charAt(0)) == Character.toLowerCase(letter);
            if (begins) {
                picked = place;
                return true;
            }
        }
        return false;
    }

    @Override
    public Optional<String> problem() {
        return choices.isEmpty() ? Optional.of("has nothing to choose from") : Optional.empty();
    }

    @Override
    public void draw(Pane pane, int column, int row, int columns, boolean focused) {
        pane.put(column, row, "<", focused ? Style.STRONG : Style.DIM);
        pane.fit(column + 2, row, columns - 2, text(), focused ? Style.STRONG : Style.TEXT);
        pane.put(column + 2 + Math.min(text().length(), columns - 2) + 1, row, ">", focused ? Style.STRONG : Style.DIM);
        if (focused) pane.cursor(column + 2, row);
    }
}
