package stirtide.bar.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import stirtide.events.view.DayView.PartCard;
import stirtide.mixing.text.AmountText;

/** Weights and liquids in the columns of the terminal, see {@link AmountText}. */
public final class WeightText {
    private static final int GRAM = 1000;
    private static final int THOUSAND_DIGITS = 3;

    private WeightText() {}

    /** Grams with one decimal, more only where the scale gives more: {@code 34.0}, {@code 34.25}, {@code 1 840.0}. */
    public static String grams(int milligrams) {
        String plain = AmountText.number(milligrams, 3, 1);
        int point = plain.indexOf('.');
        return grouped(plain.substring(0, point)) + plain.substring(point);
    }

    /** Whole grams, half up, with a space between thousands: {@code 1 840}. */
    public static String wholeGrams(int milligrams) {
        return grouped(AmountText.rounded(milligrams, 3, 0));
    }

    /** A strength in hundredths of a per cent as {@code 20 vol (6 %)}, 0 as {@code water}. */
    public static String strength(int hundredths) {
        return hundredths == 0 ? "water" : AmountText.strength(hundredths);
    }

    /** A liquid with its strength first, because that is what must not be mistaken: {@code 20 vol (6 %) Cream}. */
    public static String liquid(int strengthHundredths, String name) {
        String strength = strength(strengthHundredths);
        return strengthHundredths == 0 || name.contains(strength) ? name : strength + " " + name;
    }

    /** A liquid with its weight in front: {@code 36.7 g 20 vol (6 %) Cream}. */
    public static String part(PartCard part) {
        return grams(part.milligrams()) + " g " + liquid(part.strengthHundredths(), part.name());
    }

    /** Milligrams of a typed number of grams such as {@code 12.5} or {@code 12,5}; the text must be such a number. */
    public static int milligrams(String typed) {
        return new BigDecimal(typed.replace(',', '.'))
                .multiply(BigDecimal.valueOf(GRAM))
                .setScale(0, RoundingMode.HALF_UP)
                .intValueExact();
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
