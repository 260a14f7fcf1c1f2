package stirtide.planner.salonfiles.json;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Values as they are written in a file, for people to read in a problem. */
public final class FieldText {
    private FieldText() {}

    /** A text in quotation marks, as JSON writes it. */
    public static String quoted(String text) {
        return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }

    /** Milligrams as grams without a unit, or thousandths as a factor: {@code "32.5"}. */
    public static String thousandths(int value) {
        return decimal(value, 3);
    }

    /** Hundredths of a per cent as per cent without a sign: {@code "4.5"}. */
    public static String hundredths(int value) {
        return decimal(value, 2);
    }

    /** Volumes for people, to one decimal: {@code "20"}. One volume is taken as 0.3 per cent by weight. */
    public static String volumes(int hundredths) {
        return BigDecimal.valueOf(hundredths)
                .divide(BigDecimal.valueOf(30), 1, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }

    private static String decimal(int value, int decimals) {
        return BigDecimal.valueOf(value, decimals).stripTrailingZeros().toPlainString();
    }
}
