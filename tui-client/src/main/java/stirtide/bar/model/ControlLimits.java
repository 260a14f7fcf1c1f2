package stirtide.bar.model;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/**
 * Limits of an individuals chart: the mean, and three times the mean moving range over 1.128 on either side, as
 * NIST/SEMATECH e-Handbook 6.3.2.2 gives them. All figures are in the unit of the values, milligrams on the screen.
 *
 * @param mean mean of the values
 * @param meanRange mean of the differences between neighbors, without sign
 * @param lower lower limit; below 0 means that no value can be unusually small
 * @param upper upper limit
 */
public record ControlLimits(BigDecimal mean, BigDecimal meanRange, BigDecimal lower, BigDecimal upper) {
    /** Fewest values for which limits are shown; with fewer they say little. */
    public static final int FEWEST = 8;

    private static final BigDecimal D2 = new BigDecimal("1.128");
    private static final BigDecimal SIGMAS = BigDecimal.valueOf(3);
    private static final int DIGITS = 6;

    /**
     * The limits of values in the order of their days.
     *
     * @throws IllegalArgumentException with fewer than two values
     */
    public static ControlLimits of(List<BigDecimal> values) {
        if (values.size() < 2) throw new IllegalArgumentException("limits need at least two values");
        BigDecimal sum = values.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal ranges = BigDecimal.ZERO;
        for (int i = 1; i < values.size(); i++)
            ranges = ranges.add(values.get(i).subtract(values.get(i - 1)).abs());
        BigDecimal mean = divide(sum, values.size());
        BigDecimal meanRange = divide(ranges, values.size() - 1);
        BigDecimal reach = SIGMAS.multiply(ranges)
                .divide(D2.multiply(BigDecimal.valueOf(values.size() - 1L)), DIGITS, RoundingMode.HALF_EVEN);
        return new ControlLimits(mean, meanRange, mean.subtract(reach), mean.add(reach));
    }

    private static BigDecimal divide(BigDecimal sum, int count) {
        return sum.divide(BigDecimal.valueOf(count), DIGITS, RoundingMode.HALF_EVEN);
    }

    /** Whether a value lies outside. */
    public boolean isUnusual(BigDecimal value) {
        return value.compareTo(lower) < 0 || value.compareTo(upper) > 0;
    }
}
