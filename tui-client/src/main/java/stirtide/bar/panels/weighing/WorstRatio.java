package stirtide.bar.panels.weighing;

import java.util.List;
import stirtide.events.setup.Scale;
import stirtide.events.view.DayView.ScaleBand;
import stirtide.events.view.DayView.ScaleCard;

/**
 * What true weights can be at the worst, by what the service reports of the scale. In half milligrams, because half of a
 * verification interval need not be a whole milligram.
 */
record WorstRatio(ScaleCard scale) {
    /**
     * Least that {@code ofLightener} times the lightener plus {@code ofLiquids} times all liquids can truly be, in half
     * milligrams. Every reading's error counts with the size of its factor; weighed to a running total, an error in between
     * adds to one part what it takes from the next. A liquid of 0 was not weighed.
     */
    long least(long ofLightener, long ofLiquids, long lightener, List<Integer> liquids) {
        long[] amounts = new long[liquids.size() + 1];
        amounts[0] = lightener;
        int count = 1;
        for (int liquid : liquids) if (liquid != 0) amounts[count++] = liquid;
        boolean running = scale.weighing() == Scale.Weighing.RUNNING_TOTAL;
        long sum = 0;
        long total = 0;
        for (int i = 0; i < count; i++) {
            total += amounts[i];
            long own = i == 0 ? ofLightener : ofLiquids;
            long next = running && i + 1 < count ? ofLiquids : 0;
            sum += 2 * own * amounts[i]
                    - Math.abs(own - next) * band(running ? total : amounts[i]).errorHalfMilligrams();
        }
        return sum;
    }

    /** Step of the display at a load, in milligrams. */
    int division(long milligrams) {
        return band(milligrams).divisionMilligrams();
    }

    private ScaleBand band(long milligrams) {
        ScaleBand found = scale.bands().get(0);
        for (ScaleBand band : scale.bands()) if (band.aboveMilligrams() < milligrams) found = band;
        return found;
    }
}
