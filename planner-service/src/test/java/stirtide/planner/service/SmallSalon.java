package stirtide.planner.service;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import stirtide.events.command.CommandRequest;
import stirtide.events.command.DayCommand;
import stirtide.events.day.Booking;
import stirtide.events.setup.BowlSize;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Developer;
import stirtide.events.setup.Directions;
import stirtide.events.setup.Menu;
import stirtide.events.setup.Person;
import stirtide.events.setup.Salon;
import stirtide.events.setup.Scale;
import stirtide.events.setup.Span;

/** An invented salon with one assistant and four services on one morning. */
public final class SmallSalon {
    static final String DAY = "quay-house/2027-03-09";
    static final Instant MORNING = Instant.parse("2027-03-09T08:00:00Z");
    private static final LocalDate DATE = LocalDate.parse("2027-03-09");

    private SmallSalon() {}

    /** The request that opens its day. */
    public static CommandRequest opening() {
        return request("open-day-1", new DayCommand.OpenDay(setup(), bookings()));
    }

    static CommandRequest request(String commandId, DayCommand command) {
        return new CommandRequest(commandId, "mika", command);
    }

    static DaySetup setup() {
        Directions powder = new Directions(
                "powder",
                "House powder",
                "powder",
                45,
                5,
                false,
                List.of(new Directions.TechniqueRule("foil", false, 1500, 3000, 1200, 50)),
                500_000,
                new BigDecimal("20.00"),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of("Wear gloves."));
        Developer six = new Developer("six", "Developer 6 %", 600, 1_000_000, new BigDecimal("8.00"), Optional.empty());
        return new DaySetup(DATE, salon(), List.of(six), List.of(powder), menu());
    }

    private static Salon salon() {
        List<Span> allDay =
                List.of(new Span(Instant.parse("2027-03-09T08:00:00Z"), Instant.parse("2027-03-09T18:00:00Z")));
        Scale scale = new Scale(
                "bar-1",
                Scale.AccuracyClass.III,
                false,
                Scale.Weighing.TARE_BETWEEN,
                0,
                List.of(new Scale.Range(2_000_000, 500, 500)));
        return new Salon(
                "quay-house",
                "Quay House",
                "Europe/Lisbon",
                "EUR",
                3,
                1,
                5,
                List.of(
                        new Person("mika", "Mika", Person.Role.ASSISTANT, allDay),
                        new Person("ada", "Ada", Person.Role.STYLIST, allDay)),
                List.of(scale),
                List.of(new BowlSize("middle", 120_000, 6_000, 8)),
                Optional.empty(),
                Optional.empty());
    }

    private static Menu menu() {
        Menu.MenuZone front = new Menu.MenuZone("front foils", "foil", "powder", 600, 2000, 60_000, 25, 0, 30, 1);
        Menu.MenuZone back = new Menu.MenuZone("back foils", "foil", "powder", 600, 2000, 90_000, 30, 0, 30, 1);
        return new Menu(
                List.of(
                        new Menu.MenuEntry("half", "Half head of foils", List.of(front)),
                        new Menu.MenuEntry("full", "Full head of foils", List.of(front, back))),
                new TreeMap<>(Map.of("medium", 1000, "long", 1300)),
                new TreeMap<>(Map.of("medium", 1000, "thick", 1200)));
    }

    private static List<Booking> bookings() {
        return List.of(
                booking("b-1", "full", 1, "09:00", "long"),
                booking("b-2", "half", 2, "09:10", "medium"),
                booking("b-3", "full", 3, "09:20", "medium"),
                booking("b-4", "half", 2, "11:00", "long"));
    }

    static Booking booking(String uid, String menuId, int chair, String time, String length) {
        return new Booking(
                uid,
                menuId,
                chair,
                Instant.parse("2027-03-09T" + time + ":00Z"),
                "K" + chair,
                length,
                "medium",
                Optional.of("ada"),
                0,
                0,
                Optional.empty(),
                Optional.empty());
    }
}
