package stirtide.planner.day.booking;

import static org.assertj.core.api.Assertions.assertThat;
import static stirtide.planner.day.Given.booking;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import stirtide.events.command.DayCommand.CloseDay;
import stirtide.events.command.DayCommand.OpenDay;
import stirtide.events.day.Booking;
import stirtide.events.day.DayEvent.DayOpened;
import stirtide.events.day.DayEvent.ServiceBooked;
import stirtide.events.json.ContractJson;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Developer;
import stirtide.events.setup.Menu;
import stirtide.events.setup.Salon;
import stirtide.planner.day.Given;
import stirtide.planner.day.Scene;

class OpeningRulesTest {
    private final Scene scene = new Scene();

    @Test
    void services_are_numbered_by_start_chair_and_id() {
        scene.does(new OpenDay(
                Given.setup(),
                List.of(
                        booking("z", "foils", 2, "11:00"),
                        booking("b", "foils", 1, "11:00"),
                        booking("c", "foils", 2, "11:00"),
                        booking("a", "foils", 3, "09:00"))));
        assertThat(scene.log.get(0).event()).isEqualTo(new DayOpened(Given.setup()));
        assertThat(scene.day.services())
                .extracting(service -> service.booking().bookingUid())
                .containsExactly("a", "b", "c", "z");
        assertThat(scene.newest()).isEqualTo(new ServiceBooked(4, booking("z", "foils", 2, "11:00")));
    }

    @Test
    void a_day_opens_once() {
        scene.does(new OpenDay(Given.setup(), List.of()));
        scene.refused(new OpenDay(Given.setup(), List.of()), "DAY_ALREADY_OPEN");
    }

    @Test
    void nothing_happens_on_a_day_that_is_not_open() {
        scene.refused(new CloseDay(), "DAY_NOT_OPEN");
    }

    @Test
    void one_wrong_booking_refuses_all() {
        var refusal = scene.refused(
                new OpenDay(
                        Given.setup(), List.of(booking("a", "foils", 1, "09:00"), booking("b", "perm", 1, "09:00"))),
                "MENU_ENTRY_UNKNOWN");
        assertThat(refusal.sentence()).contains("\"b\"").contains("foils, full");
    }

    @Test
    void an_id_is_used_once() {
        scene.refused(
                new OpenDay(
                        Given.setup(), List.of(booking("a", "foils", 1, "09:00"), booking("a", "foils", 1, "10:00"))),
                "BOOKING_KNOWN");
    }

    /** A wash of years once took the planner all memory. */
    @ParameterizedTest
    @CsvSource({
        "washMinutes, 5",
        "handOverMinutes, 2",
        "workingLifeMinutes, 40",
        "mixMinutes, 4",
        "applyMinutes, 15",
        "gapMinutes, 10",
        "processMinutes, 20",
        "longestProcessingMinutes, 45"
    })
    void nothing_takes_longer_than_a_day(String what, int minutes) {
        String written = ContractJson.write(Given.setup());
        assertThat(written).contains("\"" + what + "\":" + minutes);
        for (int many : new int[] {1441, Integer.MAX_VALUE}) {
            String changed = written.replace("\"" + what + "\":" + minutes, "\"" + what + "\":" + many);
            var refusal =
                    scene.refused(new OpenDay(ContractJson.read(changed, DaySetup.class), List.of()), "SETUP_INVALID");
            assertThat(refusal.sentence()).contains("1440");
        }
    }

    @Test
    void a_day_holds_five_hundred_services() {
        var bookings = new ArrayList<Booking>();
        for (int i = 0; i < 501; i++) bookings.add(booking("b" + i, "foils", 1, "09:00"));
        scene.refused(new OpenDay(Given.setup(), bookings), "DAY_FULL");
        scene.does(new OpenDay(Given.setup(), bookings.subList(0, 500)));
    }

    static Stream<DaySetup> wrongSetups() {
        var right = Given.setup();
        return Stream.of(
                salon(right, s -> salon(s, "Mars/Base", 3, 2)),
                salon(right, s -> salon(s, "UTC", 0, 2)),
                salon(right, s -> salon(s, "UTC", 3, -1)),
                salon(
                        right,
                        s -> new Salon(
                                "a/b",
                                "A",
                                "UTC",
                                "EUR",
                                3,
                                2,
                                5,
                                s.people(),
                                s.scales(),
                                s.bowls(),
                                Optional.empty(),
                                Optional.empty())),
                salon(
                        right,
                        s -> new Salon(
                                "a",
                                "A",
                                "UTC",
                                "EUR",
                                3,
                                2,
                                5,
                                s.people(),
                                List.of(),
                                s.bowls(),
                                Optional.empty(),
                                Optional.empty())),
                salon(
                        right,
                        s -> new Salon(
                                "a",
                                "A",
                                "UTC",
                                "EUR",
                                3,
                                2,
                                5,
                                s.people(),
                                s.scales(),
                                List.of(),
                                Optional.empty(),
                                Optional.empty())),
                new DaySetup(right.date(), right.salon(), List.of(), right.directions(), right.menu()),
                new DaySetup(
                        right.date(),
                        right.salon(),
                        List.of(developer("water", 600)),
                        right.directions(),
                        right.menu()),
                new DaySetup(
                        right.date(), right.salon(), List.of(developer("x", 1201)), right.directions(), right.menu()),
                new DaySetup(
                        right.date(),
                        right.salon(),
                        List.of(developer("x", 600), developer("x", 900)),
                        right.directions(),
                        right.menu()),
                new DaySetup(right.date(), right.salon(), right.developers(), List.of(), right.menu()),
                zone(right, "foil", 900, 2600, 40_000),
                zone(right, "foil", 901, 2000, 40_000),
                zone(right, "balayage", 900, 2000, 40_000),
                zone(right, "foil", 900, 2000, 0));
    }

    @ParameterizedTest
    @MethodSource("wrongSetups")
    void a_setup_that_cannot_be_worked_with_is_refused(DaySetup setup) {
        scene.refused(new OpenDay(setup, List.of()), "SETUP_INVALID");
    }

    private static DaySetup salon(DaySetup setup, UnaryOperator<Salon> change) {
        return new DaySetup(
                setup.date(), change.apply(setup.salon()), setup.developers(), setup.directions(), setup.menu());
    }

    private static Salon salon(Salon s, String zone, int chairs, int handOver) {
        return new Salon(
                s.salonId(),
                s.name(),
                zone,
                s.currency(),
                chairs,
                handOver,
                5,
                s.people(),
                s.scales(),
                s.bowls(),
                Optional.empty(),
                Optional.empty());
    }

    private static Developer developer(String id, int strength) {
        return new Developer(id, id, strength, 1, java.math.BigDecimal.ONE, Optional.empty());
    }

    private static DaySetup zone(DaySetup setup, String technique, int strength, int ratio, int base) {
        var zone = new Menu.MenuZone("crown", technique, "cloudlift", strength, ratio, base, 20, 0, 20, 1);
        var menu = new Menu(
                List.of(new Menu.MenuEntry("foils", "Foils", List.of(zone))),
                setup.menu().lengthPermille(),
                setup.menu().densityPermille());
        return new DaySetup(setup.date(), setup.salon(), setup.developers(), setup.directions(), menu);
    }
}
