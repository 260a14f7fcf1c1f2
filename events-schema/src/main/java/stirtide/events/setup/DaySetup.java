package stirtide.events.setup;

import java.time.LocalDate;
import java.util.List;

/**
 * Everything that is in force for one day except its bookings.
 *
 * @param date the day, in the salon's zone
 * @param salon the salon
 * @param developers developers on the shelf
 * @param directions directions of the lighteners on the shelf
 * @param menu bookable services
 */
public record DaySetup(
        LocalDate date, Salon salon, List<Developer> developers, List<Directions> directions, Menu menu) {
    public DaySetup {
        developers = List.copyOf(developers);
        directions = List.copyOf(directions);
    }
}
