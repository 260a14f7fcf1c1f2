package stirtide.mixing.text;

import stirtide.events.formula.BowlFormula;

/** Weights, ratios and strengths as people at the bar read them, and exact comparison of ratios. */
public final class AmountText {
    private AmountText() {}

    /** Milligrams as grams: 52300 is {@code "52.3 g"}. */
    public static String grams(long milligrams) {
        return decimal(milligrams, 1000, 3) + " g";
    }

    /** A ratio in thousandths, lightener first: 1500 is {@code "1:1.5"}. */
    public static String ratio(long thousandths) {
        return "1:" + decimal(thousandths, 1000, 3);
    }

    /**
     * The real ratio of a formula and how far it may be off: {@code "1:2, between 1:1.93 and 1:2.07 on this scale"}. The
     * ends are rounded outward to hundredths, so the truth is never outside what is said.
     */
    public static String onThisScale(BowlFormula formula) {
        long ratio = (2000L * formula.developerMilligrams() + formula.lightenerMilligrams())
                / (2L * formula.lightenerMilligrams());
        return ratio(ratio) + ", between " + ratio(formula.worstLowRatioThousandths() / 10 * 10L) + " and "
                + ratio((formula.worstHighRatioThousandths() + 9) / 10 * 10L) + " on this scale";
    }

    /**
     * A strength as volumes and per cent by the trade's convention that 10 vol is 3 %: 600 is {@code "20 vol (6 %)"}.
     * The convention is common practice; it is within 1.5 % of the stoichiometry of per cent by weight per volume.
     */
    public static String strength(long hundredths) {
        return decimal((2 * hundredths + 3) / 6, 10, 1) + " vol (" + decimal(hundredths, 100, 2) + " %)";
    }

    /**
     * Compares how far two ratios are from a wanted one by |ln(ratio / wanted)|, exactly.
     *
     * @return negative if the first pair is closer, positive if the second is, 0 if both are as close
     */
    public static int compareCloseness(
            long lightenerA, long developerA, long lightenerB, long developerB, int wantedThousandths) {
        long a = 1000 * developerA;
        long wantedA = wantedThousandths * lightenerA;
        long b = 1000 * developerB;
        long wantedB = wantedThousandths * lightenerB;
        return compareProducts(Math.max(a, wantedA), Math.min(b, wantedB), Math.max(b, wantedB), Math.min(a, wantedA));
    }

    /** Compares a*b with c*d for factors of 0 or more, in 128 bits. */
    static int compareProducts(long a, long b, long c, long d) {
        int high = Long.compare(Math.multiplyHigh(a, b), Math.multiplyHigh(c, d));
        return high != 0 ? high : Long.compareUnsigned(a * b, c * d);
    }

    private static String decimal(long value, int unit, int digits) {
        long whole = value / unit;
        long rest = value % unit;
        if (rest == 0) return Long.toString(whole);
        String fraction = Long.toString(rest);
        fraction = "0".repeat(digits - fraction.length()) + fraction;
        int end = fraction.length();
        while (fraction.charAt(end - 1) == '0') end--;
        return whole + "." + fraction.substring(0, end);
    }
}
