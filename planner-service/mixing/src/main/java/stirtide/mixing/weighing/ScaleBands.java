package stirtide.mixing.weighing;

import stirtide.events.setup.Scale.Weighing;
import stirtide.events.view.ScaleCard;
import stirtide.events.view.ScaleCard.ScaleBand;

/**
 * Errors of a scale as the service shows them to its clients, the same as those of {@link ScaleErrors}.
 *
 * @param scale the scale, with at least one band
 */
public record ScaleBands(ScaleCard scale) implements ReadingErrors {
    @Override
    public long errorHalfMilligrams(long reading) {
        return band(reading).errorHalfMilligrams();
    }

    @Override
    public boolean runningTotal() {
        return scale.weighing() == Weighing.RUNNING_TOTAL;
    }

    /** Step of the display at a load, in milligrams. */
    public int divisionMilligrams(long load) {
        return band(load).divisionMilligrams();
    }

    private ScaleBand band(long reading) {
        ScaleBand found = scale.bands().get(0);
        for (ScaleBand band : scale.bands()) if (band.aboveMilligrams() < reading) found = band;
        return found;
    }
}
