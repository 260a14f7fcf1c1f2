package stirtide.planner.day.booking;

import static org.assertj.core.api.Assertions.assertThat;
import static stirtide.planner.day.Given.at;
import static stirtide.planner.day.Given.booking;

import java.time.Instant;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import stirtide.events.command.DayCommand.BookService;
import stirtide.events.command.DayCommand.CancelService;
import stirtide.events.command.DayCommand.FinishZone;
import stirtide.events.command.DayCommand.MoveService;
import stirtide.events.command.DayCommand.StartService;
import stirtide.events.day.Booking;
import stirtide.events.day.DayEvent.ServiceBooked;
import stirtide.events.day.DayEvent.ServiceCancelled;
import stirtide.events.day.DayEvent.ServiceMoved;
import stirtide.planner.day.Scene;
import stirtide.planner.day.state.Decision;

class BookingRulesTest {
    private final Scene scene = Scene.open(booking("one", "foils", 1, "10:00"), booking("two", "foils", 2, "10:30"));

    @Test
    void a_walk_in_gets_the_next_number() {
        scene.does(new BookService(booking("walk-in", "full", 3, "11:00")));
        assertThat(scene.newest()).isEqualTo(new ServiceBooked(3, booking("walk-in", "full", 3, "11:00")));
    }

    @Test
    void a_chair_may_be_booked_twice() {
        scene.does(new BookService(booking("same chair", "foils", 1, "10:00")));
        assertThat(scene.day.services()).hasSize(3);
    }

    static Stream<Arguments> wrongBookings() {
        return Stream.of(
                Arguments.of("BOOKING_UNNAMED", booking(" ", "foils", 1, "10:00")),
                Arguments.of("BOOKING_KNOWN", booking("one", "foils", 1, "10:00")),
                Arguments.of("MENU_ENTRY_UNKNOWN", booking("x", "perm", 1, "10:00")),
                Arguments.of("CHAIR_UNKNOWN", booking("x", "foils", 0, "10:00")),
                Arguments.of("CHAIR_UNKNOWN", booking("x", "foils", 4, "10:00")),
                Arguments.of("START_OUTSIDE_DAY", starting("2027-05-13T23:59:59Z")),
                Arguments.of("START_OUTSIDE_DAY", starting("2027-05-15T00:00:00Z")),
                Arguments.of("LENGTH_UNKNOWN", with("endless", "medium", "Q.Z.", Optional.empty(), 0)),
                Arguments.of("DENSITY_UNKNOWN", with("medium", "solid", "Q.Z.", Optional.empty(), 0)),
                Arguments.of("PERSON_UNKNOWN", with("medium", "medium", "Q.Z.", Optional.of("nobody"), 0)),
                Arguments.of("CLIENT_REFERENCE_LONG", with("medium", "medium", "x".repeat(65), Optional.empty(), 0)),
                Arguments.of("MOVE_NEGATIVE", with("medium", "medium", "Q.Z.", Optional.empty(), -1)));
    }

    @ParameterizedTest
    @MethodSource("wrongBookings")
    void a_booking_that_means_nothing_here_is_refused(String code, Booking booking) {
        scene.refused(new BookService(booking), code);
    }

    @Test
    void a_start_at_the_first_and_at_the_last_instant_of_the_day_is_accepted() {
        scene.does(new BookService(starting("2027-05-14T00:00:00Z")));
        scene.does(new MoveService(3, Instant.parse("2027-05-14T23:59:59Z"), Optional.empty(), ""));
    }

    @Test
    void a_service_that_has_not_started_moves_and_keeps_its_chair() {
        scene.does(new MoveService(1, at("10:20"), Optional.empty(), "late"));
        assertThat(scene.newest()).isEqualTo(new ServiceMoved(1, at("10:20"), 1, "late"));
        assertThat(scene.day.service(1).orElseThrow().booking().start()).isEqualTo(at("10:20"));
    }

    @Test
    void a_move_that_moves_nothing_is_refused() {
        scene.refused(new MoveService(1, at("10:00"), Optional.of(1), ""), "NOTHING_MOVES");
    }

    @Test
    void a_move_to_a_chair_or_time_that_is_not_there_is_refused() {
        scene.refused(new MoveService(1, at("10:10"), Optional.of(9), ""), "CHAIR_UNKNOWN");
        scene.refused(new MoveService(1, Instant.EPOCH, Optional.empty(), ""), "START_OUTSIDE_DAY");
        scene.refused(new MoveService(1, at("10:10"), Optional.empty(), "x".repeat(201)), "REASON_LONG");
    }

    @Test
    void only_a_known_service_moves_or_is_cancelled() {
        scene.refused(new MoveService(3, at("10:10"), Optional.empty(), ""), "SERVICE_UNKNOWN");
        scene.refused(new CancelService(0, ""), "SERVICE_UNKNOWN");
    }

    @Test
    void a_started_service_does_not_move() {
        scene.does(new StartService(1));
        scene.refused(new MoveService(1, at("10:10"), Optional.empty(), ""), "SERVICE_STARTED");
    }

    @Test
    void a_cancelled_service_neither_moves_nor_is_cancelled_again() {
        scene.does(new CancelService(1, "ill"));
        assertThat(scene.newest()).isEqualTo(new ServiceCancelled(1, "ill"));
        scene.refused(new MoveService(1, at("10:10"), Optional.empty(), ""), "SERVICE_CANCELLED");
        scene.refused(new CancelService(1, ""), "SERVICE_CANCELLED");
        scene.refused(new StartService(1), "SERVICE_CANCELLED");
    }

    @Test
    void a_client_may_leave_until_all_is_applied() {
        scene.does(new StartService(1)).does(new FinishZone(1, "crown"));
        assertThat(scene.ask(new CancelService(1, "left"))).isInstanceOf(Decision.Accepted.class);
        scene.does(new FinishZone(1, "sides"));
        scene.refused(new CancelService(1, "left"), "SERVICE_APPLIED");
    }

    private static Booking starting(String start) {
        return new Booking(
                "x",
                "foils",
                1,
                Instant.parse(start),
                "Q.Z.",
                "medium",
                "medium",
                Optional.empty(),
                0,
                0,
                Optional.empty(),
                Optional.empty());
    }

    private static Booking with(
            String length, String density, String client, Optional<String> stylist, int earlierMinutes) {
        return new Booking(
                "x",
                "foils",
                1,
                at("10:00"),
                client,
                length,
                density,
                stylist,
                earlierMinutes,
                0,
                Optional.empty(),
                Optional.empty());
    }
}
