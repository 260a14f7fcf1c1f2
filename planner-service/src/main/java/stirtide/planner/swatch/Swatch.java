package stirtide.planner.swatch;

import java.time.LocalDate;
import stirtide.events.setup.SwatchTest;

/**
 * One test swatch of hair, lightened with a test mix.
 *
 * @param on day of the test
 * @param lightenerId lightener
 * @param ratioThousandths real ratio, developer per lightener, in thousandths
 * @param strengthHundredths strength of the developer, in hundredths of a per cent by weight
 * @param minutes minutes until it was rinsed, 1 or more
 * @param levelBeforeTenths level before, in tenths, 10 to 100
 * @param levelAfterTenths level after, in tenths, 10 to 100
 */
public record Swatch(
        LocalDate on,
        String lightenerId,
        int ratioThousandths,
        int strengthHundredths,
        int minutes,
        int levelBeforeTenths,
        int levelAfterTenths) {
    /** @throws IllegalArgumentException if a value is out of range, with the range */
    public Swatch {
        if (ratioThousandths < 1 || strengthHundredths < 0 || minutes < 1)
            throw new IllegalArgumentException("ratio and minutes must be above 0, strength 0 or more: "
                    + ratioThousandths + ", " + minutes + ", " + strengthHundredths);
        if (Math.min(levelBeforeTenths, levelAfterTenths) < 10 || Math.max(levelBeforeTenths, levelAfterTenths) > 100)
            throw new IllegalArgumentException(
                    "levels must be 1 to 10: " + levelBeforeTenths / 10.0 + ", " + levelAfterTenths / 10.0);
    }

    /**
     * A swatch as it was recorded.
     *
     * @throws IllegalArgumentException if a value is out of range, with the range
     */
    public static Swatch of(SwatchTest test) {
        return new Swatch(
                test.on(),
                test.lightenerId(),
                test.ratioThousandths(),
                test.strengthHundredths(),
                test.minutes(),
                test.levelBeforeTenths(),
                test.levelAfterTenths());
    }

    /** Levels lifted, in tenths. */
    public int liftTenths() {
        return levelAfterTenths - levelBeforeTenths;
    }
}
