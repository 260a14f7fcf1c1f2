package stirtide.bar.text;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Weights, ratios and strengths as the bar reads them. */
public final class WeightText {
    private static final int GRAM = 1000;
    private static final int HUNDREDTHS_PER_VOLUME = 30;
    private static final int THOUSAND_DIGITS = 3;

    private WeightText() {}

    /** Grams with one decimal, more only where the scale gives more: {@code 34.0}, {@code 34.25}, {@code 1 840.0}. */
    public static String grams(int milligrams) {
        var exact = BigDecimal.valueOf(milligrams, 3).stripTrailingZeros();
        String plain = exact.setScale(Math.max(1, exact.scale())).toPlainString();
        int point = plain.indexOf('.');
        return grouped(plain.substring(0, point)) + plain.substring(point);
    }

    /** Whole grams, half up, with a space between thousands: {@code 1 840}. */
    public static String wholeGrams(int milligrams) {
        return grouped(BigDecimal.valueOf(milligrams, 3)
                .setScale(0, RoundingMode.HALF_UP)
                .toPlainString());
    }

    /** A ratio by weight, lightener first: 1500 thousandths is {@code 1:1.5}. */
    public static String ratio(int thousandths) {
        return "1:" + plain(BigDecimal.valueOf(thousandths, 3));
    }

    /** A strength in hundredths of a per cent as {@code 20 vol (6 %)}. */
    public static String strength(int hundredths) {
        // 10 volume is 3 % by the trade's convention.
        var volumes = BigDecimal.valueOf(hundredths)
                .divide(BigDecimal.valueOf(HUNDREDTHS_PER_VOLUME), 1, RoundingMode.HALF_UP);
        return hundredths == 0 ? "water" : plain(volumes) + " vol (" + percent(hundredths) + ")";
    }

    /** A liquid with its strength first, because that is what must not be mistaken: {@code 20 vol (6 %) Cream}. */
    public static String liquid(int strengthHundredths, String name) {
        String strength = strength(strengthHundredths);
        return strengthHundredths == 0 || name.contains(strength) ? name : strength + " " + name;
    }

    /** A strength in hundredths of a per cent as {@code 6 %}. */
    public static String percent(int hundredths) {
        return plain(BigDecimal.valueOf(hundredths, 2)) + " %";
    }

    /** Milligrams of a typed number of grams such as {@code 12.5} or {@code 12,5}; the text must be such a number. */
    public static int milligrams(String typed) {
        return new BigDecimal(typed.replace(',', '.'))
                .multiply(BigDecimal.valueOf(GRAM))
                .setScale(0, RoundingMode.HALF_UP)
                .intValueExact();
    }

    private static String plain(BigDecimal number) {
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }

    private static String grouped(String digits) {
        if (digits.length() <= THOUSAND_DIGITS) return digits;
        var text = new StringBuilder(digits);
        // Never before the first digit, whatever stands in front of it.
        int first = digits.startsWith("-") ? 1 : 0;
        for (int place = digits.length() - THOUSAND_DIGITS; place > first; place -= THOUSAND_DIGITS)
            text.insert(place, ' ');
        return text.toString();
    }
}
