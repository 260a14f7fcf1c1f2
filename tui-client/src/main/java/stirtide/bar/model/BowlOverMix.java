package stirtide.bar.model;

import java.time.LocalDate;
import java.util.List;
import stirtide.events.view.DayView;
import stirtide.events.view.DoneBowl;

/**
 * What was left of one bowl of a day, over-mixed.
 *
 * @param date the day
 * @param menuName booked service, empty text when the day does not name it
 * @param bowl the bowl, with more than nothing left and a cause
 */
public record BowlOverMix(LocalDate date, String menuName, DoneBowl bowl) {
    /** All of a day, in the order of its done bowls. */
    public static List<BowlOverMix> of(DayView view) {
        return view.done().stream()
                .filter(bowl -> bowl.leftMilligrams() > 0 && !bowl.cause().isEmpty())
                .map(bowl -> new BowlOverMix(
                        view.date(),
                        view.service(bowl.service())
                                .map(DayView.ServiceCard::menuName)
                                .orElse(""),
                        bowl))
                .toList();
    }
}
