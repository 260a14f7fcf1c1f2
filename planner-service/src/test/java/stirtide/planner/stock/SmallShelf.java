package stirtide.planner.stock;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Developer;
import stirtide.events.setup.Directions;
import stirtide.events.setup.Menu;
import stirtide.events.setup.Salon;

/** A day with one lightener (24.00 for 500 g) and one developer (9.00 a pack) on its shelf. Invented. */
public final class SmallShelf {
    private SmallShelf() {}

    /** The day; the pack of developer and what was counted of it differ from test to test. */
    public static DaySetup with(int developerPackMilligrams, Optional<Integer> counted) {
        return new DaySetup(
                LocalDate.of(2027, 5, 14),
                new Salon(
                        "s",
                        "Salon",
                        "Europe/Lisbon",
                        "EUR",
                        4,
                        2,
                        5,
                        List.of(),
                        List.of(),
                        List.of(),
                        Optional.empty(),
                        Optional.empty()),
                List.of(new Developer("dev-600", "Six", 600, developerPackMilligrams, new BigDecimal("9.00"), counted)),
                List.of(new Directions(
                        "pale-clay",
                        "Pale Clay",
                        "clay",
                        40,
                        3,
                        true,
                        List.of(),
                        500_000,
                        new BigDecimal("24.00"),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        List.of())),
                new Menu(List.of(), new TreeMap<>(), new TreeMap<>()));
    }
}
