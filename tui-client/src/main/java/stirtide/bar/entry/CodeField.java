package stirtide.bar.entry;

import java.util.Optional;
import stirtide.bar.frame.Pane;
import stirtide.bar.frame.Style;
import stirtide.bar.keys.Key;

/** A short secret code: digits that are never shown. */
final class CodeField implements Field {
    static final int DIGITS = 6;

    private String typed = "";

    @Override
    public String label() {
        return "code";
    }

    @Override
    public String text() {
        return typed;
    }

    void clear() {
        typed = "";
    }

    @Override
    public Optional<String> press(Key key, boolean machine) {
        if (key.is(Key.Kind.ERASE)) {
            typed = typed.isEmpty() ? typed : typed.substring(0, typed.length() - 1);
            return Optional.empty();
        }
        if (!key.isText()) return Optional.empty();
        if (machine) return Optional.of("takes fingers only: keys came faster than a person types");
        if (key.character() < '0' || key.character() > '9') return Optional.of("takes six digits");
        if (typed.length() >= DIGITS) return Optional.of("is full: takes six digits");
        typed += key.character();
        return Optional.empty();
    }

    @Override
    public Optional<String> problem() {
        return typed.length() == DIGITS ? Optional.empty() : Optional.of("takes six digits");
    }

    @Override
    public void draw(Pane pane, int column, int row, int columns, boolean focused) {
        pane.put(column, row, "[" + " ".repeat(columns) + "]", focused ? Style.STRONG : Style.DIM);
        pane.put(column + 1, row, "*".repeat(typed.length()), focused ? Style.STRONG : Style.TEXT);
        if (focused) pane.cursor(column + 1 + Math.min(typed.length(), columns - 1), row);
    }
}
