package stirtide.events.view;

import java.util.List;
import stirtide.events.setup.Scale;

/** A scale of the bar; {@code bands} by rising load, at least one. */
public record ScaleCard(String scaleId, Scale.Weighing weighing, List<ScaleBand> bands) {
    /**
     * What a scale shows of readings above a load: its steps, and how far the true load may be from what is shown, in half
     * milligrams. The band with the largest {@code aboveMilligrams} that is less than the reading counts.
     */
    public record ScaleBand(int aboveMilligrams, int divisionMilligrams, int errorHalfMilligrams) {}
}
