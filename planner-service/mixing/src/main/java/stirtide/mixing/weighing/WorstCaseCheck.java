package stirtide.mixing.weighing;

import java.util.Arrays;
import java.util.List;
import stirtide.events.setup.Scale;
import stirtide.mixing.strength.Liquid;

/**
 * Whether weights stay inside all limits for every error the scale may have, see {@link WorstCase}. Kind 0 is lightener,
 * kind k is liquid k - 1 of the list.
 */
public final class WorstCaseCheck {
    private static final int[][] EACH_ONCE = {{0}, {0, 1}, {0, 1, 2}, {0, 1, 2, 3}};

    private final ScaleErrors errors;
    private final WorstCase worst;
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
    public WorstCaseCheck(Scale scale, int lowestRatio, int highestRatio, int lowestStrength, int highestStrength) {
        this.errors = new ScaleErrors(scale);
        this.worst = new WorstCase(errors);
        this.runningTotal = errors.runningTotal();
        this.leastPart = Math.max(scale.minimumMilligrams(), errors.stepMilligrams());
        this.lowestRatio = lowestRatio;
        this.highestRatio = highestRatio;
        this.lowestStrength = lowestStrength;
        this.highestStrength = highestStrength;
    }

    public ScaleErrors errors() {
        return errors;
    }

    public boolean runningTotal() {
        return runningTotal;
    }

    public int lowestRatio() {
        return lowestRatio;
    }

    public int highestRatio() {
        return highestRatio;
    }

    public int lowestStrength() {
        return lowestStrength;
    }

    public int highestStrength() {
        return highestStrength;
    }

    /** Least that may be weighed of any kind: the scale's minimum load, at least one step. */
    public int leastPartMilligrams() {
        return leastPart;
    }

    /** Whether all limits hold in the worst case when each kind is weighed once. */
    public boolean holds(int lightener, int[] parts, List<Liquid> liquids) {
        return holds(EACH_ONCE[parts.length], withFirst(lightener, parts), liquids);
    }

    /** Whether all limits hold in the worst case of all pours. */
    public boolean holds(int[] kinds, int[] amounts, List<Liquid> liquids) {
        if (!weighable(kinds, amounts, liquids)) return false;
        long[] error = worst.readingErrors(amounts);
        long[] weight = new long[liquids.size() + 1];
        weight[0] = 1;
        if (worst.least(weight, kinds, amounts, error) <= 0) return false;
        fill(weight, 1000, -lowestRatio);
        if (worst.least(weight, kinds, amounts, error) < 0) return false;
        fill(weight, -1000, highestRatio);
        if (worst.least(weight, kinds, amounts, error) < 0) return false;
        return liquids.size() == 1 || strengthHolds(weight, kinds, amounts, error, liquids);
    }

    /**
     * Developer weights below or above which the ratio cannot hold, {least, most}, given the smallest error the
     * developer can have; in milligrams. Weights between them may hold or not.
     */
    public long[] developerRange(long lightener, long developerError) {
        long first = errors.errorHalfMilligrams(lightener);
        long lowest = lowestRatio * (2 * lightener + first) + 1000 * developerError;
        long highest = highestRatio * (2 * lightener - first) - 1000 * developerError;
        return new long[] {-Math.floorDiv(-lowest, 2000), Math.floorDiv(highest, 2000)};
    }

    /** Whether the ratio holds when the developer's error is this many half milligrams. */
    public boolean ratioHolds(long lightener, long developer, long developerError) {
        long first = errors.errorHalfMilligrams(lightener);
        return 1000 * (2 * developer - developerError) >= lowestRatio * (2 * lightener + first)
                && 1000 * (2 * developer + developerError) <= highestRatio * (2 * lightener - first);
    }

    /** Smallest weight of developer in which two liquids can hold the strength, in milligrams. */
    public long leastBlendMilligrams(List<Liquid> liquids) {
        if (liquids.size() != 2 || highestStrength <= lowestStrength) return 0;
        long least = errors.leastErrorHalfMilligrams();
        long both = 0;
        for (int limit : new int[] {lowestStrength, highestStrength}) {
            long strong = liquids.get(0).strengthHundredths() - (long) limit;
            long weak = liquids.get(1).strengthHundredths() - (long) limit;
            both += runningTotal
                    ? least * (Math.abs(strong) + Math.abs(strong - weak) + Math.abs(weak))
                    : least * (Math.abs(strong) + Math.abs(weak));
        }
        return both / (2L * (highestStrength - lowestStrength));
    }

    private boolean strengthHolds(long[] weight, int[] kinds, int[] amounts, long[] error, List<Liquid> liquids) {
        weight[0] = 0;
        for (int k = 1; k < weight.length; k++)
            weight[k] = liquids.get(k - 1).strengthHundredths() - (long) lowestStrength;
        if (worst.least(weight, kinds, amounts, error) < 0) return false;
        for (int k = 1; k < weight.length; k++)
            weight[k] = (long) highestStrength - liquids.get(k - 1).strengthHundredths();
        return worst.least(weight, kinds, amounts, error) >= 0;
    }

    /** Smallest true ratio in the worst case, in thousandths, rounded down. */
    public int worstLowRatio(int[] kinds, int[] amounts) {
        long[] error = worst.readingErrors(amounts);
        long developer = worst.least(new long[] {0, 1, 1, 1}, kinds, amounts, error);
        return (int) Math.floorDiv(1000 * developer, -worst.least(new long[] {-1, 0, 0, 0}, kinds, amounts, error));
    }

    /** Largest true ratio in the worst case, in thousandths, rounded up. */
    public int worstHighRatio(int[] kinds, int[] amounts) {
        long[] error = worst.readingErrors(amounts);
        long developer = -worst.least(new long[] {0, -1, -1, -1}, kinds, amounts, error);
        return (int) -Math.floorDiv(-1000 * developer, worst.least(new long[] {1, 0, 0, 0}, kinds, amounts, error));
    }

    /** Order of pours when each kind is weighed once. */
    public static int[] eachOnce(int liquids) {
        return EACH_ONCE[liquids].clone();
    }

    public static int[] withFirst(int lightener, int[] parts) {
        int[] amounts = new int[parts.length + 1];
        amounts[0] = lightener;
        System.arraycopy(parts, 0, amounts, 1, parts.length);
        return amounts;
    }

    /** Whether the scale can show every reading, and no pour is below its minimum or beyond what there is. */
    private boolean weighable(int[] kinds, int[] amounts, List<Liquid> liquids) {
        long total = 0;
        int[] sums = new int[liquids.size() + 1];
        for (int i = 0; i < amounts.length; i++) {
            total += amounts[i];
            sums[kinds[i]] += amounts[i];
            if (!runningTotal && amounts[i] < leastPart) return false;
            if (!errors.shows(runningTotal ? total : amounts[i])) return false;
        }
        for (int k = 0; k < sums.length; k++)
            if (sums[k] < leastPart || k > 0 && sums[k] > liquids.get(k - 1).mostMilligrams()) return false;
        return total <= errors.maximumMilligrams();
    }

    private static void fill(long[] weight, long ofLiquids, long ofLightener) {
        Arrays.fill(weight, ofLiquids);
        weight[0] = ofLightener;
    }
}
