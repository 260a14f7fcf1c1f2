package stirtide.planner.day.booking;

import java.util.List;
import java.util.Optional;
import stirtide.events.command.DayCommand;
import stirtide.events.day.DayEvent;
import stirtide.planner.day.state.CommandRule;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.DayTime;
import stirtide.planner.day.state.Decision;
import stirtide.planner.day.state.NamedService;
import stirtide.planner.day.state.Refusal;
import stirtide.planner.day.state.ServiceState;

/**
 * Booking, moving and cancelling. A chair may be booked twice at one time: a client may process while the next one
 * waits, and a salon knows its own overlaps. The day then shows a note, it does not refuse.
 */
public final class BookingRules {
    /** A rule for each command of this folder. */
    public static final List<CommandRule<?>> RULES = List.of(
            CommandRule.of(DayCommand.OpenDay.class, OpeningRules::open),
            CommandRule.of(DayCommand.BookService.class, BookingRules::book),
            CommandRule.of(DayCommand.MoveService.class, BookingRules::move),
            CommandRule.of(DayCommand.CancelService.class, BookingRules::cancel));

    private static final int LONGEST_REASON = 200;

    private BookingRules() {}

    private static Decision book(Day day, DayCommand.BookService command) {
        var booking = command.booking();
        var wrong = BookingChecks.objection(day.opened(), booking)
                .or(() -> knownObjection(day, booking.bookingUid()))
                .or(() -> BookingChecks.countObjection(day.services().size() + 1));
        return Decision.acceptUnless(
                wrong, () -> new DayEvent.ServiceBooked(day.services().size() + 1, booking));
    }

    private static Optional<Refusal> knownObjection(Day day, String bookingUid) {
        if (day.services().stream()
                .noneMatch(other -> other.booking().bookingUid().equals(bookingUid))) return Optional.empty();
        return Refusal.of(
                "BOOKING_KNOWN", "Booking \"" + bookingUid + "\" is on this day already. Move it, or use another id.");
    }

    private static Decision move(Day day, DayCommand.MoveService command) {
        return NamedService.standing(day, command.service(), service -> moveStanding(day, service, command));
    }

    private static Decision moveStanding(Day day, ServiceState service, DayCommand.MoveService command) {
        if (service.startedAt().isPresent())
            return Decision.refuse(
                    "SERVICE_STARTED",
                    "Service " + service.service() + " started at "
                            + DayTime.of(day.opened()).clock(service.startedAt().get())
                            + ". Only a service that has not started can be moved.");
        int chair = command.chair().orElse(service.booking().chair());
        var wrong = BookingChecks.startObjection(day.opened(), command.start())
                .or(() -> BookingChecks.chairObjection(day.opened(), chair))
                .or(() -> reasonObjection(command.reason()));
        if (wrong.isPresent()) return new Decision.Refused(wrong.get());
        if (chair == service.booking().chair()
                && command.start().equals(service.booking().start()))
            return Decision.refuse(
                    "NOTHING_MOVES",
                    "Service " + service.service() + " is booked for that time and chair already. Name another.");
        return Decision.accept(new DayEvent.ServiceMoved(service.service(), command.start(), chair, command.reason()));
    }

    private static Decision cancel(Day day, DayCommand.CancelService command) {
        return NamedService.standing(day, command.service(), service -> cancelStanding(day, service, command.reason()));
    }

    private static Decision cancelStanding(Day day, ServiceState service, String reason) {
        if (day.applied(service))
            return Decision.refuse(
                    "SERVICE_APPLIED",
                    "All zones of service " + service.service()
                            + " are applied. Only a service with a zone still to apply can be cancelled.");
        return Decision.acceptUnless(
                reasonObjection(reason), () -> new DayEvent.ServiceCancelled(service.service(), reason));
    }

    private static Optional<Refusal> reasonObjection(String reason) {
        if (reason.length() <= LONGEST_REASON) return Optional.empty();
        return Refusal.of("REASON_LONG", "A reason has at most " + LONGEST_REASON + " characters.");
    }
}
