package stirtide.events.setup;

import java.util.List;

/**
 * A scale at the bar.
 *
 * @param scaleId short id, unique in the salon
 * @param accuracyClass accuracy class by OIML R 76-1
 * @param inServiceLimits true when the doubled limits for scales in service apply, false for the initial limits
 * @param weighing how two parts are weighed one after the other
 * @param minimumMilligrams smallest load that may be weighed, 0 or more
 * @param ranges weighing ranges in order of rising maximum, at least one
 */
public record Scale(
        String scaleId,
        AccuracyClass accuracyClass,
        boolean inServiceLimits,
        Weighing weighing,
        int minimumMilligrams,
        List<Range> ranges) {
    public Scale {
        ranges = List.copyOf(ranges);
        if (ranges.isEmpty()) throw new IllegalArgumentException("a scale needs at least one range: " + scaleId);
    }

    /**
     * One weighing range.
     *
     * @param maximumMilligrams largest load of the range
     * @param divisionMilligrams smallest step the scale shows (d), more than 0
     * @param verificationMilligrams verification interval (e), at least d
     */
    public record Range(int maximumMilligrams, int divisionMilligrams, int verificationMilligrams) {}

    /** Accuracy classes of OIML R 76-1: special, high, medium, ordinary. */
    public enum AccuracyClass {
        I,
        II,
        III,
        IIII
    }

    /** How the second part is weighed: after a tare, or on top of the first. */
    public enum Weighing {
        TARE_BETWEEN,
        RUNNING_TOTAL
    }
}
