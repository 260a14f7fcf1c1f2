package stirtide.bar.panels.form;

import java.util.Optional;
import stirtide.bar.canvas.Pane;
import stirtide.bar.canvas.Style;

/**
 * A short secret code: digits that are never shown. Digits that come all at once were held up by a slow line, so they are
 * taken; a burst that is no code leaves nothing of itself.
 */
public final class CodeField extends TypedField {
    static final int DIGITS = 6;

    private static final String ACCEPTED = "takes six digits";

    private boolean isNoCode;

    public CodeField() {
        super("code", DIGITS, "");
    }

    @Override
    Optional<String> refusal(char letter, boolean machine) {
        boolean digit = letter >= '0' && letter <= '9';
        boolean tooMuch = machine && (!digit || text().length() >= DIGITS);
        isNoCode = machine && (isNoCode || tooMuch);
        if (isNoCode) clear();
        return digit && !isNoCode ? Optional.empty() : Optional.of(ACCEPTED);
    }

    @Override
    public Optional<String> problem() {
        return text().length() == DIGITS ? Optional.empty() : Optional.of(ACCEPTED);
    }

    @Override
    public void draw(Pane pane, int column, int row, int columns, boolean focused) {
        pane.put(column, row, "[" + " ".repeat(columns) + "]", focused ? Style.STRONG : Style.DIM);
        pane.put(column + 1, row, "*".repeat(text().length()), focused ? Style.STRONG : Style.TEXT);
        if (focused) pane.cursor(column + 1 + Math.min(text().length(), columns - 1), row);
    }
}
