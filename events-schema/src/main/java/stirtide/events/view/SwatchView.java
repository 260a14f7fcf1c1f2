package stirtide.events.view;

import java.util.List;
import java.util.Optional;

/**
 * What test swatches and pH strips of a salon tell.
 *
 * @param revision newest event the view knows
 * @param lighteners one part for each lightener of the day and of earlier tests, by id
 * @param limits what a strip cannot tell
 */
public record SwatchView(long revision, List<LightenerCard> lighteners, String limits) {

    /** Swatches and strips of one lightener; {@code comparisons} set each strip against the one of the next ratio. */
    public record LightenerCard(
            String lightenerId, String name, List<LiftCard> lifts, List<StripCard> strips, List<String> comparisons) {}

    /**
     * Level lifted by one ratio, strength and time: mean and spread (standard deviation, n - 1) in hundredths of a level,
     * and how many swatches stand behind them. A single swatch has no spread.
     */
    public record LiftCard(
            int ratioThousandths,
            int strengthHundredths,
            int minutes,
            int swatches,
            int meanLiftHundredths,
            Optional<Integer> spreadHundredths,
            String sentence) {}

    /** One strip as read, in tenths of pH; {@code on} is a date. */
    public record StripCard(
            String on, int ratioThousandths, int strengthHundredths, int phTenths, int stepTenths, String sentence) {}
}
