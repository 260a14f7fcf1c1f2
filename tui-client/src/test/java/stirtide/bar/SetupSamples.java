package stirtide.bar;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import stirtide.events.setup.BowlSize;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Developer;
import stirtide.events.setup.Directions;
import stirtide.events.setup.Menu;
import stirtide.events.setup.Person;
import stirtide.events.setup.Salon;
import stirtide.events.setup.Scale;
import stirtide.events.setup.Span;
import stirtide.events.view.SetupView;

/** An invented setup, complete and hardly begun, for the tests of its view. */
public final class SetupSamples {
    private static final LocalDate DATE = LocalDate.parse("2027-05-14");

    private SetupSamples() {}

    public static SetupView complete() {
        return new SetupView(41, setup(), List.of(), new TreeMap<>(Map.of("salon.json", "{}\n")));
    }

    public static SetupView begun() {
        var full = setup();
        Salon s = full.salon();
        var salon = new Salon(
                s.salonId(),
                s.name(),
                s.zone(),
                s.currency(),
                3,
                2,
                5,
                s.people(),
                List.of(),
                List.of(),
                Optional.empty(),
                Optional.empty());
        var menu = new Menu(List.of(), full.menu().lengthPermille(), full.menu().densityPermille());
        return new SetupView(
                2,
                new DaySetup(DATE, salon, List.of(), List.of(), menu),
                List.of("A scale at the bar, with the steps it shows.", "A developer on the shelf."),
                new TreeMap<>());
    }

    private static Span span(String from, String to) {
        return new Span(Instant.parse(DATE + "T" + from + ":00Z"), Instant.parse(DATE + "T" + to + ":00Z"));
    }

    private static DaySetup setup() {
        var salon = new Salon(
                "larch-lane",
                "Larch Lane",
                "Europe/Lisbon",
                "EUR",
                5,
                2,
                8,
                List.of(
                        new Person(
                                "tamsin",
                                "Tamsin",
                                Person.Role.ASSISTANT,
                                List.of(span("07:30", "11:30"), span("12:00", "16:00"))),
                        new Person("edda", "Edda", Person.Role.MANAGER, List.of())),
                List.of(new Scale(
                        "window",
                        Scale.AccuracyClass.II,
                        true,
                        Scale.Weighing.TARE_BETWEEN,
                        500,
                        List.of(new Scale.Range(600_000, 100, 100)))),
                List.of(new BowlSize("small", 90_000, 3_000, 8)),
                Optional.empty(),
                Optional.empty());
        var directions = new Directions(
                "dune-powder",
                "Dune Powder",
                "powder",
                45,
                4,
                false,
                List.of(
                        new Directions.TechniqueRule("foil", false, 1500, 3000, 900, 60),
                        new Directions.TechniqueRule("scalp", true, 2000, 3000, 600, 50)),
                500_000,
                new BigDecimal("21.50"),
                Optional.empty(),
                Optional.of(24),
                Optional.empty(),
                List.of("Wear gloves and air the room while mixing."));
        var back = new Menu.MenuZone("back", "foil", "dune-powder", 600, 2000, 32_500, 20, 0, 30, 1);
        var sides = new Menu.MenuZone("sides", "foil", "dune-powder", 600, 2000, 28_000, 18, 2, 30, 2);
        var menu = new Menu(
                List.of(new Menu.MenuEntry("half-foils", "Half head of foils", List.of(back, sides))),
                new TreeMap<>(Map.of("short", 750, "medium", 1000, "long", 1350)),
                new TreeMap<>(Map.of("fine", 850, "medium", 1000)));
        return new DaySetup(
                DATE,
                salon,
                List.of(new Developer(
                        "foam-20", "Foam 20", 600, 1_000_000, new BigDecimal("8.40"), Optional.of(2_750_000))),
                List.of(directions),
                menu);
    }
}
