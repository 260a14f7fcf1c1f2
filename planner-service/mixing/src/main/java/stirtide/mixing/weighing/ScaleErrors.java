package stirtide.mixing.weighing;

import java.util.ArrayList;
import java.util.List;
import stirtide.events.setup.Scale;
import stirtide.events.setup.Scale.AccuracyClass;
import stirtide.events.setup.Scale.Range;
import stirtide.events.setup.Scale.Weighing;
import stirtide.events.view.ScaleCard.ScaleBand;

/**
 * What a scale can show and how far its reading may be from the truth. Errors are in half milligrams, so that half of
 * any verification interval is a whole number.
 *
 * <p>The largest permissible error is that of OIML R 76-1:2006, table 6: 0.5, 1 or 1.5 verification intervals by load
 * and accuracy class, doubled for a scale in service. That limit is on the error with the rounding of the display taken
 * out. Whoever weighs sees the rounded figure, so half a division is added here: the true load lies within permissible
 * error and rounding of what the display shows.
 *
 * <p>On a scale with several ranges a reading belongs to the first range whose maximum is not below it.
 */
public final class ScaleErrors implements ReadingErrors {
    private static final int[][] BAND_ENDS = {{50_000, 200_000}, {5_000, 20_000}, {500, 2_000}, {50, 200}};
    private static final long[] LAST_INTERVAL = {Long.MAX_VALUE, 100_000, 10_000, 1_000};

    private final AccuracyClass accuracyClass;
    private final int factor;
    private final boolean runningTotal;
    private final Range[] ranges;
    private final int step;

    /** Reads the limits of a scale. */
    public ScaleErrors(Scale scale) {
        accuracyClass = scale.accuracyClass();
        factor = scale.inServiceLimits() ? 2 : 1;
        runningTotal = scale.weighing() == Weighing.RUNNING_TOTAL;
        ranges = scale.ranges().toArray(Range[]::new);
        int common = 0;
        for (Range range : ranges) {
            if (range.divisionMilligrams() < 1 || range.verificationMilligrams() < range.divisionMilligrams())
                throw new IllegalArgumentException("a range needs 0 < d <= e: " + range);
            common = greatestCommonDivisor(common, range.divisionMilligrams());
        }
        step = common;
    }

    /**
     * Largest permissible error by OIML R 76-1:2006, table 6, before rounding of the display.
     *
     * @param accuracyClass accuracy class
     * @param verificationMilligrams verification interval (e)
     * @param loadMilligrams load, 0 or more
     * @param inService true for the doubled limits
     * @return error in half milligrams
     */
    public static long permissibleHalfMilligrams(
            AccuracyClass accuracyClass, int verificationMilligrams, long loadMilligrams, boolean inService) {
        int[] ends = BAND_ENDS[accuracyClass.ordinal()];
        long halves = loadMilligrams <= (long) ends[0] * verificationMilligrams
                ? 1
                : loadMilligrams <= (long) ends[1] * verificationMilligrams ? 2 : 3;
        return halves * verificationMilligrams * (inService ? 2 : 1);
    }

    @Override
    public boolean runningTotal() {
        return runningTotal;
    }

    /** Farthest the true load may be from a reading the scale can show, in half milligrams. */
    @Override
    public long errorHalfMilligrams(long reading) {
        Range range = rangeOf(reading);
        return permissibleHalfMilligrams(accuracyClass, range.verificationMilligrams(), reading, factor == 2)
                + range.divisionMilligrams();
    }

    /**
     * All bands by rising load, one for each range and row of the table. The error of a reading is that of the last band
     * whose {@code aboveMilligrams} is less than it.
     */
    public List<ScaleBand> bands() {
        List<ScaleBand> bands = new ArrayList<>();
        long above = 0;
        for (int i = 0; i < ranges.length; i++) {
            long end = i + 1 < ranges.length ? ranges[i].maximumMilligrams() : Integer.MAX_VALUE;
            while (above < end) {
                bands.add(new ScaleBand(
                        (int) above, ranges[i].divisionMilligrams(), (int) errorHalfMilligrams(above + 1)));
                above = Math.min(end, nextBorder(ranges[i], above));
            }
        }
        return bands;
    }

    private long nextBorder(Range range, long above) {
        for (int border : BAND_ENDS[accuracyClass.ordinal()]) {
            long load = (long) border * range.verificationMilligrams();
            if (load > above) return load;
        }
        return Integer.MAX_VALUE;
    }

    /** Smallest error any reading can have, in half milligrams. */
    public long leastErrorHalfMilligrams() {
        long least = Long.MAX_VALUE;
        for (Range range : ranges)
            least = Math.min(least, (long) range.verificationMilligrams() * factor + range.divisionMilligrams());
        return least;
    }

    /**
     * Smallest error a load of at least this much can have, in half milligrams. On a single range the limits grow with
     * the load; with several, a larger load may fall into a band with a smaller error.
     */
    public long leastErrorFrom(long load) {
        return ranges.length == 1 ? errorHalfMilligrams(Math.max(0, load)) : leastErrorHalfMilligrams();
    }

    /** Whether the scale can show exactly this many milligrams. */
    public boolean shows(long reading) {
        if (reading < 0 || reading > maximumMilligrams()) return false;
        Range range = rangeOf(reading);
        return reading % range.divisionMilligrams() == 0
                && reading / range.verificationMilligrams() <= LAST_INTERVAL[accuracyClass.ordinal()];
    }

    /** Greatest step of which every reading is a multiple, in milligrams. */
    public int stepMilligrams() {
        return step;
    }

    /** Largest load of the last range, in milligrams. */
    public long maximumMilligrams() {
        return ranges[ranges.length - 1].maximumMilligrams();
    }

    private Range rangeOf(long reading) {
        for (Range range : ranges) if (reading <= range.maximumMilligrams()) return range;
        return ranges[ranges.length - 1];
    }

    private static int greatestCommonDivisor(int a, int b) {
        return b == 0 ? a : greatestCommonDivisor(b, a % b);
    }
}
