package stirtide.planner.formula;

import java.util.Arrays;
import java.util.List;
import stirtide.events.setup.Scale;
import stirtide.events.setup.Scale.Weighing;

/**
 * Whether weights stay inside all limits however the scale errs within its limits. Every limit is a linear form of the
 * true weights, so the worst case is exact: each reading's error counts with the size of its coefficient. Weighed with
 * a tare between, every part has the error of its own reading. Weighed to a running total, a part is the difference of
 * two readings, and an error in between helps one part as much as it harms the next.
 */
final class MixCheck {
    private final ScaleErrors errors;
    private final boolean runningTotal;
    private final int leastPart;
    private final int lowestRatio;
    private final int highestRatio;
    private final int lowestStrength;
    private final int highestStrength;

    /**
     * @param lowestRatio smallest developer per lightener, in thousandths
     * @param highestRatio largest developer per lightener, in thousandths
     * @param lowestStrength weakest blend accepted, in hundredths of a per cent
     * @param highestStrength strongest blend accepted, in hundredths of a per cent
     */
    MixCheck(Scale scale, int lowestRatio, int highestRatio, int lowestStrength, int highestStrength) {
        this.errors = new ScaleErrors(scale);
        this.runningTotal = scale.weighing() == Weighing.RUNNING_TOTAL;
        this.leastPart = scale.minimumMilligrams();
        this.lowestRatio = lowestRatio;
        this.highestRatio = highestRatio;
        this.lowestStrength = lowestStrength;
        this.highestStrength = highestStrength;
    }

    ScaleErrors errors() {
        return errors;
    }

    int lowestRatio() {
        return lowestRatio;
    }

    int highestRatio() {
        return highestRatio;
    }

    int lowestStrength() {
        return lowestStrength;
    }

    int highestStrength() {
        return highestStrength;
    }

    /** Least that may be weighed of any part: the scale's minimum load, at least one step. */
    int leastPartMilligrams() {
        return Math.max(leastPart, errors.stepMilligrams());
    }

    /**
     * Whether all limits hold in the worst case.
     *
     * @param lightener milligrams of lightener
     * @param parts milligrams of each liquid, in the order of weighing
     * @param liquids the liquids, in the same order
     */
    boolean holds(int lightener, int[] parts, List<Liquid> liquids) {
        if (!weighable(lightener, parts, liquids)) return false;
        long[] error = readingErrors(lightener, parts);
        if (2L * lightener <= error[0]) return false;
        long developer = 0;
        for (int part : parts) developer += part;
        long[] weight = new long[parts.length + 1];
        Arrays.fill(weight, 1000);
        weight[0] = -lowestRatio;
        long low = 2 * (1000 * developer - (long) lowestRatio * lightener);
        if (low < deviation(weight, error)) return false;
        weight[0] = -highestRatio;
        if (-2 * (1000 * developer - (long) highestRatio * lightener) < deviation(weight, error)) return false;
        return parts.length == 1
                || strengthHolds(parts, liquids, error, lowestStrength, -1)
                        && strengthHolds(parts, liquids, error, highestStrength, 1);
    }

    /** Smallest true ratio in the worst case, in thousandths, rounded down. */
    int worstLowRatio(int lightener, int[] parts) {
        long[] error = readingErrors(lightener, parts);
        return (int) Math.floorDiv(1000 * (2 * sum(parts) - developerError(error)), 2L * lightener + error[0]);
    }

    /** Largest true ratio in the worst case, in thousandths, rounded up. */
    int worstHighRatio(int lightener, int[] parts) {
        long[] error = readingErrors(lightener, parts);
        return (int) -Math.floorDiv(-1000 * (2 * sum(parts) + developerError(error)), 2L * lightener - error[0]);
    }

    private boolean weighable(int lightener, int[] parts, List<Liquid> liquids) {
        if (lightener < leastPart || !errors.shows(lightener)) return false;
        long total = lightener;
        for (int k = 0; k < parts.length; k++) {
            total += parts[k];
            if (parts[k] < leastPart || parts[k] > liquids.get(k).mostMilligrams()) return false;
            if (!errors.shows(runningTotal ? total : parts[k])) return false;
        }
        return total <= errors.maximumMilligrams();
    }

    private boolean strengthHolds(int[] parts, List<Liquid> liquids, long[] error, int limit, int sign) {
        long[] weight = new long[parts.length + 1];
        long nominal = 0;
        for (int k = 0; k < parts.length; k++) {
            weight[k + 1] = (long) sign * (limit - liquids.get(k).strengthHundredths());
            nominal += 2 * weight[k + 1] * parts[k];
        }
        return nominal >= deviation(weight, error);
    }

    private long[] readingErrors(int lightener, int[] parts) {
        long[] error = new long[parts.length + 1];
        error[0] = errors.errorHalfMilligrams(lightener);
        long reading = lightener;
        for (int k = 0; k < parts.length; k++) {
            reading = runningTotal ? reading + parts[k] : parts[k];
            error[k + 1] = errors.errorHalfMilligrams(reading);
        }
        return error;
    }

    /** Largest change of the sum of weight[k] * part[k] that the errors of the readings can make. */
    private long deviation(long[] weight, long[] error) {
        long worst = 0;
        for (int k = 0; k < weight.length; k++) {
            long next = runningTotal && k + 1 < weight.length ? weight[k + 1] : 0;
            worst += Math.abs(weight[k] - next) * error[k];
        }
        return worst;
    }

    private long developerError(long[] error) {
        if (runningTotal) return error[0] + error[error.length - 1];
        long all = 0;
        for (int k = 1; k < error.length; k++) all += error[k];
        return all;
    }

    private static long sum(int[] parts) {
        long all = 0;
        for (int part : parts) all += part;
        return all;
    }
}
