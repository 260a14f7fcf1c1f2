package stirtide.planner.day.state;

import java.math.BigDecimal;

/** Weights, ratios and strengths in sentences. */
public final class Grams {
    private static final int THOUSAND = 1000;
    private static final int HUNDRED = 100;
    /** The trade counts 10 volumes for 3 per cent by weight. */
    private static final int HUNDREDTHS_PER_VOLUME = 30;

    private Grams() {}

    /** Milligrams as grams with as many digits as they have: {@code "42.5 g"}. */
    public static String text(long milligrams) {
        return decimal(milligrams, THOUSAND) + " g";
    }

    /** Thousandths as a plain number: 1500 is {@code "1.5"}. */
    public static String ratio(int thousandths) {
        return decimal(thousandths, THOUSAND);
    }

    /** Strength of a developer, with its volumes where they are whole: 600 is {@code "20 vol (6 %)"}. */
    public static String strength(int hundredths) {
        var percent = decimal(hundredths, HUNDRED) + " %";
        return hundredths % HUNDREDTHS_PER_VOLUME == 0
                ? hundredths / HUNDREDTHS_PER_VOLUME + " vol (" + percent + ")"
                : percent;
    }

    private static String decimal(long value, int scale) {
        return BigDecimal.valueOf(value)
                .divide(BigDecimal.valueOf(scale))
                .stripTrailingZeros()
                .toPlainString();
    }
}
