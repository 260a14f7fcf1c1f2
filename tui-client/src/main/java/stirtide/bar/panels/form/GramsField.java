package stirtide.bar.panels.form;

import java.util.Optional;
import java.util.OptionalInt;
import stirtide.bar.canvas.Pane;
import stirtide.bar.canvas.Style;
import stirtide.bar.text.WeightText;

/** A weight in grams as typed or as a scale types it: digits and one point or comma. Never filled in beforehand. */
public final class GramsField extends TypedField {
    public static final int LONGEST = 6;

    private static final int MOST_MILLIGRAMS = 500_000;
    private static final String ACCEPTED = "digits with one point or comma, such as 40.2";

    private static final int LEAST_LIMIT = 1000;
    private static final int LIMIT_DIVISOR = 20;
    private static final int LIMIT_STEP = 100;

    private final boolean zeroAllowed;

    public GramsField(String label, boolean zeroAllowed) {
        super(label, LONGEST, "");
        this.zeroAllowed = zeroAllowed;
    }

    /**
     * How far, in milligrams, a weight may be from the planned one before it is asked about: a twentieth of it in whole
     * tenths of a gram, and at least 1 g.
     */
    public static int usualLimit(int plannedMilligrams) {
        return Math.max(LEAST_LIMIT, plannedMilligrams / LIMIT_DIVISOR / LIMIT_STEP * LIMIT_STEP);
    }

    @Override
    Optional<String> refusal(char letter, boolean machine) {
        boolean point = letter == '.' || letter == ',';
        if (!point && (letter < '0' || letter > '9')) {
            // A scale sends its unit and blanks after the digits.
            return machine ? DROPPED : Optional.of("takes " + ACCEPTED);
        }
        boolean second = point && text().matches(".*[.,].*");
        return second ? Optional.of("has a point already: takes " + ACCEPTED) : Optional.empty();
    }

    @Override
    public Optional<String> problem() {
        if (!text().matches("\\d+([.,]\\d*)?|[.,]\\d+")) return Optional.of("is empty: takes " + ACCEPTED);
        int milligrams = value();
        if (milligrams == 0 && !zeroAllowed) return Optional.of("is 0: takes more than 0 g");
        if (milligrams > MOST_MILLIGRAMS) return Optional.of("is over 500 g: takes up to 500 g");
        return Optional.empty();
    }

    /** Milligrams typed, empty while the content cannot be kept. */
    public OptionalInt milligrams() {
        return problem().isPresent() ? OptionalInt.empty() : OptionalInt.of(value());
    }

    private int value() {
        String typed = text();
        return WeightText.milligrams(typed.endsWith(".") || typed.endsWith(",") ? typed + "0" : typed);
    }

    @Override
    public void draw(Pane pane, int column, int row, int columns, boolean focused) {
        super.draw(pane, column, row, columns, focused);
        pane.put(column + columns + 3, row, "g", Style.DIM);
    }
}
