package stirtide.events.setup;

import java.time.LocalDate;

/**
 * A test swatch of hair, lightened with a test mix.
 *
 * @param on day of the test
 * @param lightenerId lightener
 * @param ratioThousandths developer per lightener as weighed, in thousandths
 * @param strengthHundredths strength of the developer, in hundredths of a per cent by weight
 * @param minutes minutes until it was rinsed, 1 or more
 * @param levelBeforeTenths level before, in tenths, 10 to 100
 * @param levelAfterTenths level after, in tenths, 10 to 100
 */
public record SwatchTest(
        LocalDate on,
        String lightenerId,
        int ratioThousandths,
        int strengthHundredths,
        int minutes,
        int levelBeforeTenths,
        int levelAfterTenths) {}
