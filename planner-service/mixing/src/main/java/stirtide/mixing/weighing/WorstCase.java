package stirtide.mixing.weighing;

/**
 * What the true weights of a mix can be at the worst. Every limit is a linear form of the true weights, so the worst case is
 * exact: each reading's error counts with the size of its coefficient. Weighed with a tare between, every pour has the error
 * of its own reading. Weighed to a running total, a pour is the difference of two readings, and an error in between adds to
 * one pour what it takes from the next.
 *
 * <p>A mix is a list of pours in the order of weighing. Kind 0 is lightener, kind k is liquid k; a kind may be poured more
 * than once.
 *
 * @param errors errors of the scale
 */
record WorstCase(ReadingErrors errors) {
    /** Errors of the readings after each pour, in half milligrams. */
    long[] readingErrors(int[] amounts) {
        long[] error = new long[amounts.length];
        long total = 0;
        for (int i = 0; i < amounts.length; i++) {
            total += amounts[i];
            error[i] = errors.errorHalfMilligrams(errors.runningTotal() ? total : amounts[i]);
        }
        return error;
    }

    /** Least that the sum of coefficient times true half milligrams can be; coefficients by kind. */
    long least(long[] coefficients, int[] kinds, int[] amounts, long[] error) {
        long sum = 0;
        for (int i = 0; i < amounts.length; i++) {
            long own = coefficients[kinds[i]];
            long next = errors.runningTotal() && i + 1 < amounts.length ? coefficients[kinds[i + 1]] : 0;
            sum += 2 * own * amounts[i] - Math.abs(own - next) * error[i];
        }
        return sum;
    }

    private long least(long[] coefficients, int[] kinds, int[] amounts) {
        return least(coefficients, kinds, amounts, readingErrors(amounts));
    }

    /** Whether there is enough developer for the lightener in the worst case of all pours. */
    boolean enoughDeveloper(int lowestRatioThousandths, int[] kinds, int[] amounts) {
        return least(new long[] {-lowestRatioThousandths, 1000, 1000, 1000}, kinds, amounts) >= 0;
    }

    /** Whether there is enough lightener for the developer in the worst case of all pours. */
    boolean enoughLightener(int highestRatioThousandths, int[] kinds, int[] amounts) {
        return least(new long[] {highestRatioThousandths, -1000, -1000, -1000}, kinds, amounts) >= 0;
    }

    /**
     * Whether the liquids together are within the highest strength in the worst case of all pours. Liquids none of which is
     * stronger are, whatever was weighed.
     */
    boolean weakEnough(int highestStrengthHundredths, int[] kinds, int[] amounts, int[] strengthsHundredths) {
        long[] coefficients = new long[strengthsHundredths.length + 1];
        boolean stronger = false;
        for (int k = 1; k < coefficients.length; k++) {
            coefficients[k] = (long) highestStrengthHundredths - strengthsHundredths[k - 1];
            stronger |= coefficients[k] < 0;
        }
        return !stronger || least(coefficients, kinds, amounts) >= 0;
    }
}
