package stirtide.bar.model;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import stirtide.events.view.DayView;

/**
 * A day in figures.
 *
 * @param date the day
 * @param mixedMilligrams mixed in bowls that are done
 * @param overMixedMilligrams of those, not applied and not stuck to bowls
 * @param left what was over-mixed, bowl by bowl
 */
public record DayOverMix(LocalDate date, int mixedMilligrams, int overMixedMilligrams, List<BowlOverMix> left) {
    public DayOverMix {
        left = List.copyOf(left);
    }

    /** The figures of a day as it is. */
    public static DayOverMix of(DayView view) {
        return new DayOverMix(
                view.date(),
                view.totals().mixedMilligrams(),
                view.totals().overMixedMilligrams(),
                BowlOverMix.of(view));
    }

    /** What the over-mixed grams cost, in the salon's currency. */
    public BigDecimal cost() {
        return left.stream().map(one -> one.bowl().leftCost()).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** Days summed, at least one, under the date of the last. */
    public static DayOverMix together(List<DayOverMix> days) {
        return new DayOverMix(
                days.get(days.size() - 1).date(),
                days.stream().mapToInt(DayOverMix::mixedMilligrams).sum(),
                days.stream().mapToInt(DayOverMix::overMixedMilligrams).sum(),
                days.stream().flatMap(day -> day.left().stream()).toList());
    }
}
