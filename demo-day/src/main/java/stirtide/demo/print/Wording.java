package stirtide.demo.print;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Weights, strengths, ratios and times as people at the bar read them. */
public final class Wording {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    private Wording() {}

    /** Grams with at least one decimal: 40000 mg is "40.0 g", 12340 mg is "12.34 g". */
    public static String grams(long milligrams) {
        return plain(BigDecimal.valueOf(milligrams, 3), 1) + " g";
    }

    /** Grams rounded to whole tenths, for sums and reports. */
    public static String roundGrams(long milligrams) {
        return BigDecimal.valueOf(milligrams, 3)
                        .setScale(1, RoundingMode.HALF_UP)
                        .toPlainString() + " g";
    }

    /**
     * A developer's strength, as volumes and per cent by weight: 600 is "20 vol (6 %)".
     *
     * @param strengthHundredths hydrogen peroxide in hundredths of a per cent by weight
     */
    public static String strength(int strengthHundredths) {
        BigDecimal volumes =
                BigDecimal.valueOf(strengthHundredths).divide(BigDecimal.valueOf(30), 1, RoundingMode.HALF_UP);
        return plain(volumes, 0) + " vol (" + plain(BigDecimal.valueOf(strengthHundredths, 2), 0) + " %)";
    }

    /** A ratio, lightener first: 2000 is "1:2", 1850 is "1:1.85". */
    public static String ratio(int ratioThousandths) {
        return "1:" + plain(BigDecimal.valueOf(ratioThousandths, 3), 0);
    }

    /** A ratio to two decimals, as far as anybody can see on a scale. */
    public static String roundRatio(int ratioThousandths) {
        BigDecimal rounded = BigDecimal.valueOf(ratioThousandths, 3).setScale(2, RoundingMode.HALF_UP);
        return "1:" + plain(rounded, 0);
    }

    /** Time of day, hours and minutes. */
    public static String clock(Instant instant, ZoneId zone) {
        return CLOCK.format(instant.atZone(zone));
    }

    /** "1 bowl", "2 bowls". */
    public static String count(long number, String thing) {
        return number + " " + thing + (number == 1 ? "" : "s");
    }

    private static String plain(BigDecimal number, int leastDecimals) {
        BigDecimal stripped = number.stripTrailingZeros();
        return (stripped.scale() < leastDecimals ? stripped.setScale(leastDecimals) : stripped).toPlainString();
    }
}
