package stirtide.planner.swatch;

import stirtide.events.setup.MixStrip;

/**
 * A pH strip read against its color chart.
 *
 * @param tenths pH in tenths, 0 to 140
 * @param stepTenths distance of the chart's fields in tenths of pH, 1 to 20: the reading is good to half of it
 */
public record StripReading(int tenths, int stepTenths) {
    /** @throws IllegalArgumentException if a value is out of range, with the range */
    public StripReading {
        if (tenths < 0 || tenths > 140) throw new IllegalArgumentException("pH must be 0 to 14: " + tenths / 10.0);
        if (stepTenths < 1 || stepTenths > 20)
            throw new IllegalArgumentException("a chart's step must be 0.1 to 2: " + stepTenths / 10.0);
    }

    /**
     * A strip as it was recorded.
     *
     * @throws IllegalArgumentException if a value is out of range, with the range
     */
    public static StripReading of(MixStrip strip) {
        return new StripReading(strip.phTenths(), strip.stepTenths());
    }

    /** The reading as on the chart: {@code "pH 9.5"}. */
    public String shown() {
        return "pH " + tenths / 10 + (tenths % 10 == 0 ? "" : "." + tenths % 10);
    }
}
