package stirtide.events.setup;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Everything that is in force for one day except its bookings.
 *
 * @param date the day, in the salon's zone
 * @param salon the salon
 * @param developers developers on the shelf
 * @param directions directions of the lighteners on the shelf
 * @param menu bookable services
 * @param history what earlier days teach about grams, empty when nothing is known of them
 * @param allowances how generous allowances are, empty for the usual
 */
@RecordBuilder
public record DaySetup(
        LocalDate date,
        Salon salon,
        List<Developer> developers,
        List<Directions> directions,
        Menu menu,
        Optional<UseHistory> history,
        Optional<AllowancePolicy> allowances)
        implements DaySetupBuilder.With {
    public DaySetup {
        developers = List.copyOf(developers);
        directions = List.copyOf(directions);
    }

    /** A day nothing is known about from earlier ones. */
    public DaySetup(LocalDate date, Salon salon, List<Developer> developers, List<Directions> directions, Menu menu) {
        this(date, salon, developers, directions, menu, Optional.empty(), Optional.empty());
    }

    /** The same day with what earlier days teach. */
    public DaySetup with(UseHistory learned) {
        return withHistory(Optional.of(learned));
    }

    /** What earlier days teach, nothing when they teach nothing. */
    public UseHistory learned() {
        return history.orElse(UseHistory.NONE);
    }

    /** A developer by id. */
    public Optional<Developer> developer(String developerId) {
        return developers.stream()
                .filter(one -> one.developerId().equals(developerId))
                .findFirst();
    }

    /** Strength of a developer in hundredths of a per cent by weight; 0 for water and for an unknown id. */
    public int strengthHundredths(String developerId) {
        return developer(developerId).map(Developer::strengthHundredths).orElse(0);
    }

    /** The directions of a lightener by its id. */
    public Optional<Directions> directions(String lightenerId) {
        return directions.stream()
                .filter(one -> one.lightenerId().equals(lightenerId))
                .findFirst();
    }

    /** A menu entry by id. */
    public Optional<Menu.MenuEntry> menuEntry(String menuId) {
        return menu.entries().stream()
                .filter(one -> one.menuId().equals(menuId))
                .findFirst();
    }
}
