package stirtide.bar.scene;

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
public record PastDay(LocalDate date, int mixedMilligrams, int overMixedMilligrams, List<Left> left) {
    public PastDay {
        left = List.copyOf(left);
    }

    /** A day of which only the sums are known. */
    public PastDay(LocalDate date, int mixedMilligrams, int overMixedMilligrams) {
        this(date, mixedMilligrams, overMixedMilligrams, List.of());
    }

    /** The figures of a day as it is. */
    public static PastDay of(DayView view) {
        return new PastDay(
                view.date(), view.totals().mixedMilligrams(), view.totals().overMixedMilligrams(), Left.of(view));
    }

    /** What the over-mixed grams cost, in the salon's currency. */
    public BigDecimal cost() {
        return left.stream().map(one -> one.bowl().leftCost()).reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
