package stirtide.mixing.text;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** The text of weights, ratios and strengths, the same in the service, in the terminal and on paper. */
public final class AmountText {
    /** 10 volumes are 3 % by weight, by the convention of the trade; 1 volume is 30 hundredths of a per cent. */
    private static final BigDecimal HUNDREDTHS_PER_VOLUME = BigDecimal.valueOf(30);

    private AmountText() {}

    /** Milligrams as grams, as exact as they are: 52300 is {@code "52.3 g"}. */
    public static String grams(long milligrams) {
        return number(milligrams, 3) + " g";
    }

    /** Milligrams as grams with one decimal or more: 40000 is {@code "40.0 g"}, 12340 is {@code "12.34 g"}. */
    public static String scaleGrams(long milligrams) {
        return number(milligrams, 3, 1) + " g";
    }

    /** Milligrams as grams, rounded half up to one decimal: 52340 is {@code "52.3 g"}, 40000 is {@code "40.0 g"}. */
    public static String roundedGrams(long milligrams) {
        return rounded(milligrams, 3, 1) + " g";
    }

    /** A ratio in thousandths, lightener first: 1500 is {@code "1:1.5"}. */
    public static String ratio(long thousandths) {
        return "1:" + number(thousandths, 3);
    }

    /** A ratio in thousandths, rounded half up to two decimals: 1667 is {@code "1:1.67"}. */
    public static String roundedRatio(long thousandths) {
        return ratio((thousandths + 5) / 10 * 10);
    }

    /** A strength in hundredths of a per cent by weight: 600 is {@code "6 %"}. */
    public static String percent(long hundredths) {
        return number(hundredths, 2) + " %";
    }

    /**
     * A strength in hundredths of a per cent by weight as volumes and per cent: 600 is {@code "20 vol (6 %)"}. Volumes
     * follow the convention of the trade, common practice, and are rounded half up to one decimal; they are within 1.5 % of
     * the stoichiometry of per cent by weight per volume.
     */
    public static String strength(long hundredths) {
        BigDecimal volumes = BigDecimal.valueOf(hundredths).divide(HUNDREDTHS_PER_VOLUME, 1, RoundingMode.HALF_UP);
        return plain(volumes, 0) + " vol (" + percent(hundredths) + ")";
    }

    /** A number with so many decimals, without trailing zeros: 1500 with 3 is {@code "1.5"}. */
    public static String number(long value, int decimals) {
        return number(value, decimals, 0);
    }

    /**
     * A number with so many decimals, without trailing zeros beyond the least.
     *
     * @param leastDecimals decimals that are always shown: 40000 with 3 and at least 1 is {@code "40.0"}
     */
    public static String number(long value, int decimals, int leastDecimals) {
        return plain(BigDecimal.valueOf(value, decimals), leastDecimals);
    }

    /** A number with so many decimals, rounded half up to {@code shown} of them: 1840500 with 3 and 0 is {@code "1841"}. */
    public static String rounded(long value, int decimals, int shown) {
        return BigDecimal.valueOf(value, decimals)
                .setScale(shown, RoundingMode.HALF_UP)
                .toPlainString();
    }

    private static String plain(BigDecimal number, int leastDecimals) {
        BigDecimal stripped = number.stripTrailingZeros();
        return (stripped.scale() < leastDecimals ? stripped.setScale(leastDecimals) : stripped).toPlainString();
    }
}
