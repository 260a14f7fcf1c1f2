package stirtide.planner.swatch;

import java.util.Optional;
import stirtide.events.setup.MixStrip;

/**
 * A pH strip read against its color chart.
 *
 * @param tenths pH in tenths, 0 to 140
 * @param stepTenths distance of the chart's fields in tenths of pH, 1 to 20: the reading is good to half of it
 */
public record StripReading(int tenths, int stepTenths) {
    /** What is wrong with the figures of a strip, with the ranges; empty when nothing is. */
    public static Optional<String> objection(MixStrip strip) {
        if (strip.phTenths() < 0 || strip.phTenths() > 140)
            return Optional.of("pH must be 0 to 14: " + strip.phTenths() / 10.0);
        return strip.stepTenths() < 1 || strip.stepTenths() > 20
                ? Optional.of("a chart's step must be 0.1 to 2: " + strip.stepTenths() / 10.0)
                : Optional.empty();
    }

    /** A strip as it was recorded. */
    public static StripReading of(MixStrip strip) {
        return new StripReading(strip.phTenths(), strip.stepTenths());
    }

    /** The reading as on the chart: {@code "pH 9.5"}. */
    public String shown() {
        return "pH " + tenths / 10 + (tenths % 10 == 0 ? "" : "." + tenths % 10);
    }
}
