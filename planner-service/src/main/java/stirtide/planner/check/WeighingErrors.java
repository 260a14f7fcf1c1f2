package stirtide.planner.check;

import java.util.List;
import stirtide.events.formula.BowlFormula;
import stirtide.events.setup.Scale;
import stirtide.events.setup.Scale.Range;
import stirtide.events.setup.Scale.Weighing;

/**
 * Weights as a scale shows them and the farthest the true ones may be. Tries both ends of every reading's error, so it
 * needs no argument about which end is the bad one. All weights here are in half milligrams.
 *
 * <p>Errors: OIML R 76-1:2006, table 6, doubled in service where the scale says so, and half a division of rounding.
 */
final class WeighingErrors {
    private static final long[][] BANDS = {{50_000, 200_000}, {5_000, 20_000}, {500, 2_000}, {50, 200}};

    private final Scale scale;
    private final boolean running;
    private final long[] readings;
    private final long[] parts;

    WeighingErrors(Scale scale, BowlFormula formula) {
        this.scale = scale;
        running = scale.weighing() == Weighing.RUNNING_TOTAL;
        int count = formula.developerParts().size() + 1;
        parts = new long[count];
        readings = new long[count];
        parts[0] = formula.lightenerMilligrams();
        for (int i = 1; i < count; i++)
            parts[i] = formula.developerParts().get(i - 1).milligrams();
        for (int i = 0; i < count; i++) readings[i] = running && i > 0 ? readings[i - 1] + parts[i] : parts[i];
    }

    boolean weighable() {
        for (int i = 0; i < readings.length; i++) {
            if (parts[i] < Math.max(1, scale.minimumMilligrams())) return false;
            if (readings[i] > scale.ranges().get(scale.ranges().size() - 1).maximumMilligrams()) return false;
            if (readings[i] % range(readings[i]).divisionMilligrams() != 0) return false;
        }
        return true;
    }

    /** Whether a scale can show one weight, put on it alone. */
    static boolean shows(Scale scale, int milligrams) {
        if (milligrams < Math.max(1, scale.minimumMilligrams())) return false;
        for (Range range : scale.ranges())
            if (milligrams <= range.maximumMilligrams()) return milligrams % range.divisionMilligrams() == 0;
        return false;
    }

    private Range range(long milligrams) {
        for (Range range : scale.ranges()) if (milligrams <= range.maximumMilligrams()) return range;
        return scale.ranges().get(scale.ranges().size() - 1);
    }

    private long error(long milligrams) {
        Range range = range(milligrams);
        long e = range.verificationMilligrams();
        long[] bands = BANDS[scale.accuracyClass().ordinal()];
        long halves = milligrams <= bands[0] * e ? 1 : milligrams <= bands[1] * e ? 2 : 3;
        return halves * e * (scale.inServiceLimits() ? 2 : 1) + range.divisionMilligrams();
    }

    /** True weights when the readings whose bit is set err upward and the others downward. */
    private long[] trueParts(int bits) {
        long[] weights = new long[parts.length];
        long before = 0;
        for (int i = 0; i < parts.length; i++) {
            long load = 2 * readings[i] + ((bits >> i & 1) == 1 ? error(readings[i]) : -error(readings[i]));
            weights[i] = running ? load - before : load;
            before = load;
        }
        return weights;
    }

    /** Whether the ratio stays on its side of a limit in every case; side -1 is a lower limit, 1 an upper one. */
    boolean worst(int limitThousandths, int side) {
        for (int bits = 0; bits < 1 << parts.length; bits++) {
            long[] weights = trueParts(bits);
            long developer = 0;
            for (int i = 1; i < weights.length; i++) developer += weights[i];
            long beyond = 1000 * developer - limitThousandths * weights[0];
            if (weights[0] <= 0 || side * beyond > 0) return false;
        }
        return true;
    }

    /** Whether the strength of the liquids together stays within limits; one liquid alone has its own strength. */
    boolean strengthWithin(List<Integer> strengths, int lowest, int highest) {
        if (strengths.size() == 1) return strengths.get(0) >= lowest && strengths.get(0) <= highest;
        for (int bits = 0; bits < 1 << parts.length; bits++) {
            long[] weights = trueParts(bits);
            long low = 0;
            long high = 0;
            for (int i = 1; i < weights.length; i++) {
                low += weights[i] * (strengths.get(i - 1) - Math.max(0, lowest));
                high += weights[i] * (strengths.get(i - 1) - highest);
            }
            if (low < 0 || high > 0) return false;
        }
        return true;
    }

    /** Strength of the liquids together as shown, rounded to nearest. */
    int strength(List<Integer> strengths) {
        long sum = 0;
        long developer = 0;
        for (int i = 1; i < parts.length; i++) {
            sum += parts[i] * strengths.get(i - 1);
            developer += parts[i];
        }
        return (int) ((sum + developer / 2) / developer);
    }
}
