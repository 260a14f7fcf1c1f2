package stirtide.planner.cost;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * How often an allowance should be enough: shortage / (shortage + over), the rule of the newsvendor. Both costs are of
 * one gram.
 */
public final class CriticalFraction {
    private static final int LOWEST_PERMILLE = 500;
    private static final int HIGHEST_PERMILLE = 995;

    private CriticalFraction() {}

    /**
     * The fraction to six decimals, rounded up: where two neighbors are as good, the one that is enough.
     *
     * @param shortageCost cost of a gram too few, above 0
     * @param overCost cost of a gram too many, above 0
     */
    public static BigDecimal of(BigDecimal shortageCost, BigDecimal overCost) {
        if (shortageCost.signum() <= 0 || overCost.signum() <= 0)
            throw new IllegalArgumentException("costs must be above 0: " + shortageCost + ", " + overCost);
        return shortageCost.divide(shortageCost.add(overCost), 6, RoundingMode.CEILING);
    }

    /**
     * The fraction for an allowance, in thousandths, kept within what allowances accept (500 to 995).
     *
     * @param runningShort cost of running short once: an extra mix and the minutes the client waits
     * @param shortMilligrams grams that are usually short when it happens, above 0
     * @param perGram cost of a gram thrown away
     */
    public static int permille(Money runningShort, int shortMilligrams, Money perGram) {
        BigDecimal perShortGram = runningShort
                .amount()
                .multiply(BigDecimal.valueOf(1000))
                .divide(BigDecimal.valueOf(shortMilligrams), 12, RoundingMode.HALF_UP);
        int permille = of(perShortGram, perGram.amount())
                .movePointRight(3)
                .setScale(0, RoundingMode.HALF_UP)
                .intValueExact();
        return Math.max(LOWEST_PERMILLE, Math.min(HIGHEST_PERMILLE, permille));
    }
}
