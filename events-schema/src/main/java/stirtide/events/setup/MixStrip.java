package stirtide.events.setup;

import java.time.LocalDate;

/**
 * A pH strip read in a test mix.
 *
 * @param on day of the reading
 * @param lightenerId lightener
 * @param ratioThousandths developer per lightener, in thousandths
 * @param strengthHundredths strength of the developer, in hundredths of a per cent by weight
 * @param phTenths reading in tenths of pH, 0 to 140
 * @param stepTenths distance of the chart's fields in tenths of pH, 1 to 20: the reading is good to half of it
 */
public record MixStrip(
        LocalDate on, String lightenerId, int ratioThousandths, int strengthHundredths, int phTenths, int stepTenths) {}
