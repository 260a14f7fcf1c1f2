package stirtide.mixing.formula;

import java.util.Optional;
import stirtide.events.setup.Scale;
import stirtide.events.setup.Scale.AccuracyClass;
import stirtide.events.setup.Scale.Range;
import stirtide.events.setup.Scale.Weighing;

/**
 * The slow way to find a formula, written apart from the fast one: tries every pair of weights and every corner of the
 * box of scale errors. Limits of OIML R 76-1 table 6 are typed in again here on purpose.
 */
final class EveryWeighing {
    private final Scale scale;
    private final long low;
    private final long high;

    EveryWeighing(Scale scale, int low, int high) {
        this.scale = scale;
        this.low = low;
        this.high = high;
    }

    /** Best pair by surplus, then |ln| to the wanted ratio, then lightener; lightener and developer in milligrams. */
    Optional<long[]> pair(int least, int usable, int wanted) {
        long[] best = null;
        int step = scale.ranges().get(0).divisionMilligrams();
        for (long total = (least + step - 1) / step * step; total <= usable; total += step)
            for (long lightener = step; lightener < total; lightener += step) {
                long developer = total - lightener;
                if (!allowed(lightener, developer)) continue;
                if (best == null || closer(lightener, developer, best, wanted))
                    best = new long[] {lightener, developer};
                if (best[0] + best[1] < total) return Optional.of(best);
            }
        return Optional.ofNullable(best);
    }

    private boolean closer(long lightener, long developer, long[] best, int wanted) {
        if (lightener + developer != best[0] + best[1]) return false;
        java.math.BigDecimal mine = away(lightener, developer, wanted);
        java.math.BigDecimal theirs = away(best[0], best[1], wanted);
        return mine.compareTo(theirs) < 0;
    }

    /** max(ratio / wanted, wanted / ratio): grows with |ln|. */
    private static java.math.BigDecimal away(long lightener, long developer, int wanted) {
        java.math.BigDecimal times = new java.math.BigDecimal(1000 * developer)
                .divide(new java.math.BigDecimal(wanted * lightener), java.math.MathContext.DECIMAL128);
        java.math.BigDecimal inverse = java.math.BigDecimal.ONE.divide(times, java.math.MathContext.DECIMAL128);
        return times.max(inverse);
    }

    boolean allowed(long lightener, long developer) {
        boolean running = scale.weighing() == Weighing.RUNNING_TOTAL;
        long second = running ? lightener + developer : developer;
        if (!shown(lightener) || !shown(second)) return false;
        if (lightener < scale.minimumMilligrams() || developer < scale.minimumMilligrams()) return false;
        if (lightener + developer
                > scale.ranges().get(scale.ranges().size() - 1).maximumMilligrams()) return false;
        for (int a = -1; a <= 1; a += 2)
            for (int b = -1; b <= 1; b += 2) {
                long first = 2 * lightener + a * error(lightener);
                long last = 2 * second + b * error(second);
                long trueDeveloper = running ? last - first : last;
                if (first <= 0 || 1000 * trueDeveloper < low * first || 1000 * trueDeveloper > high * first)
                    return false;
            }
        return true;
    }

    private boolean shown(long reading) {
        return reading % range(reading).divisionMilligrams() == 0;
    }

    long error(long reading) {
        Range range = range(reading);
        double load = (double) reading / range.verificationMilligrams();
        double[] ends = scale.accuracyClass() == AccuracyClass.III
                ? new double[] {500, 2000}
                : scale.accuracyClass() == AccuracyClass.IIII ? new double[] {50, 200} : new double[] {5000, 20000};
        double limit = load <= ends[0] ? 0.5 : load <= ends[1] ? 1.0 : 1.5;
        if (scale.inServiceLimits()) limit *= 2;
        return Math.round(2 * limit * range.verificationMilligrams()) + range.divisionMilligrams();
    }

    private Range range(long reading) {
        for (Range range : scale.ranges()) if (reading <= range.maximumMilligrams()) return range;
        return scale.ranges().get(scale.ranges().size() - 1);
    }
}
