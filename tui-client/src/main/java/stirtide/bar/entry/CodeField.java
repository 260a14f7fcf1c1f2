package stirtide.bar.entry;

import java.util.Optional;
import stirtide.bar.frame.Pane;
import stirtide.bar.frame.Style;

/** A short secret code: digits that are never shown. */
final class CodeField extends TypedField {
    static final int DIGITS = 6;

    CodeField() {
        super("code", DIGITS, "");
    }

    @Override
    Optional<String> refusal(char letter, boolean machine) {
        if (machine) return Optional.of("takes fingers only: keys came faster than a person types");
        return letter >= '0' && letter <= '9' ? Optional.empty() : Optional.of("takes six digits");
    }

    @Override
    public Optional<String> problem() {
        return text().length() == DIGITS ? Optional.empty() : Optional.of("takes six digits");
    }

    @Override
    public void draw(Pane pane, int column, int row, int columns, boolean focused) {
        pane.put(column, row, "[" + " ".repeat(columns) + "]", focused ? Style.STRONG : Style.DIM);
        pane.put(column + 1, row, "*".repeat(text().length()), focused ? Style.STRONG : Style.TEXT);
        if (focused) pane.cursor(column + 1 + Math.min(text().length(), columns - 1), row);
    }
}
