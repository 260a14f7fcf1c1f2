package stirtide.planner.day.booking;

import java.time.Instant;
import java.util.Collection;
import java.util.Optional;
import stirtide.events.command.DayCommand;
import stirtide.events.day.Booking;
import stirtide.events.day.ClientTests;
import stirtide.events.day.DayEvent;
import stirtide.events.setup.DaySetup;
import stirtide.planner.day.chair.ChairRules;
import stirtide.planner.day.state.Bookings;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.DayTime;
import stirtide.planner.day.state.Decision;
import stirtide.planner.day.state.Refusal;
import stirtide.planner.day.state.ServiceState;

/**
 * Booking, moving and cancelling. A chair may be booked twice at one time: a client may process while the next one
 * waits, and a salon knows its own overlaps. The day then shows a note, it does not refuse.
 */
public final class BookingRules {
    /** Most services of one day. */
    static final int MOST_SERVICES = 500;

    private static final int LONGEST_REFERENCE = 64;
    private static final int LONGEST_REASON = 200;

    private BookingRules() {}

    public static Decision book(Day day, DayCommand.BookService command) {
        var booking = command.booking();
        var wrong = objection(day.opened(), booking);
        if (wrong.isPresent()) return new Decision.Refused(wrong.get());
        if (day.services().stream()
                .anyMatch(other -> other.booking().bookingUid().equals(booking.bookingUid())))
            return Decision.refuse(
                    "BOOKING_KNOWN",
                    "Booking \"" + booking.bookingUid() + "\" is on this day already. Move it, or use another id.");
        if (day.services().size() >= MOST_SERVICES)
            return Decision.refuse("DAY_FULL", "A day holds at most " + MOST_SERVICES + " services.");
        return Decision.accept(new DayEvent.ServiceBooked(day.services().size() + 1, booking));
    }

    public static Decision move(Day day, DayCommand.MoveService command) {
        var found = day.service(command.service());
        if (found.isEmpty()) return noService(day, command.service());
        var service = found.get();
        if (!service.standing()) return cancelled(service);
        if (service.startedAt().isPresent())
            return Decision.refuse(
                    "SERVICE_STARTED",
                    "Service " + service.service() + " started at "
                            + DayTime.of(day.opened()).clock(service.startedAt().get())
                            + ". Only a service that has not started can be moved.");
        int chair = command.chair().orElse(service.booking().chair());
        var wrong = startObjection(day.opened(), command.start())
                .or(() -> chairObjection(day.opened(), chair))
                .or(() -> reasonObjection(command.reason()));
        if (wrong.isPresent()) return new Decision.Refused(wrong.get());
        if (chair == service.booking().chair()
                && command.start().equals(service.booking().start()))
            return Decision.refuse(
                    "NOTHING_MOVES",
                    "Service " + service.service() + " is booked for that time and chair already. Name another.");
        return Decision.accept(new DayEvent.ServiceMoved(service.service(), command.start(), chair, command.reason()));
    }

    public static Decision cancel(Day day, DayCommand.CancelService command) {
        var found = day.service(command.service());
        if (found.isEmpty()) return noService(day, command.service());
        var service = found.get();
        if (!service.standing()) return cancelled(service);
        if (ChairRules.applied(day, service))
            return Decision.refuse(
                    "SERVICE_APPLIED",
                    "All zones of service " + service.service()
                            + " are applied. Only a service with a zone still to apply can be cancelled.");
        var wrong = reasonObjection(command.reason());
        if (wrong.isPresent()) return new Decision.Refused(wrong.get());
        return Decision.accept(new DayEvent.ServiceCancelled(service.service(), command.reason()));
    }

    /** What is wrong with a booking, if anything. */
    static Optional<Refusal> objection(DaySetup setup, Booking booking) {
        if (booking.bookingUid().isBlank() || booking.bookingUid().length() > 4 * LONGEST_REFERENCE)
            return refusal("BOOKING_UNNAMED", "A booking needs an id of 1 to 256 characters, unique on its day.");
        if (Bookings.entry(setup, booking.menuId()).isEmpty())
            return refusal(
                    "MENU_ENTRY_UNKNOWN",
                    "\"" + booking.menuId() + "\" is not on the menu. Accepted: "
                            + listed(setup.menu().entries().stream()
                                    .map(entry -> entry.menuId())
                                    .toList()) + ".");
        if (booking.clientRef().length() > LONGEST_REFERENCE
                && !booking.clientRef().startsWith("sealed:c"))
            return refusal(
                    "CLIENT_REFERENCE_LONG", "A client reference is initials or a number, 64 characters at most.");
        if (booking.earlierMinutes() < 0 || booking.laterMinutes() < 0)
            return refusal("MOVE_NEGATIVE", "How far a service may be moved is 0 minutes or more.");
        return chairObjection(setup, booking.chair())
                .or(() -> startObjection(setup, booking.start()))
                .or(() -> testsObjection(booking))
                .or(() -> hairObjection(
                        "length",
                        booking.length(),
                        setup.menu().lengthPermille().keySet()))
                .or(() -> hairObjection(
                        "density",
                        booking.density(),
                        setup.menu().densityPermille().keySet()))
                .or(() -> stylistObjection(setup, booking.stylistId()));
    }

    private static Optional<Refusal> chairObjection(DaySetup setup, int chair) {
        int chairs = setup.salon().chairs();
        if (chair >= 1 && chair <= chairs) return Optional.empty();
        return refusal("CHAIR_UNKNOWN", "There is no chair " + chair + ". Accepted: 1 to " + chairs + ".");
    }

    private static Optional<Refusal> startObjection(DaySetup setup, Instant start) {
        if (DayTime.of(setup).holds(start)) return Optional.empty();
        return refusal(
                "START_OUTSIDE_DAY",
                start + " is not on this day. Accepted: a start on " + setup.date() + " in "
                        + setup.salon().zone() + ".");
    }

    private static Optional<Refusal> testsObjection(Booking booking) {
        var tests = booking.tests().orElse(ClientTests.NONE);
        for (var kind : ClientTests.Kind.values())
            if (tests.at(kind).filter(at -> at.isAfter(booking.start())).isPresent())
                return refusal(
                        "TEST_AFTER_START", "A test is done before its service. Accepted: a time before the start.");
        return Optional.empty();
    }

    private static Optional<Refusal> hairObjection(String what, String value, Collection<String> known) {
        if (known.contains(value)) return Optional.empty();
        return refusal(
                what.equals("length") ? "LENGTH_UNKNOWN" : "DENSITY_UNKNOWN",
                "Hair " + what + " \"" + value + "\" is not on the menu. Accepted: " + listed(known) + ".");
    }

    private static Optional<Refusal> stylistObjection(DaySetup setup, Optional<String> stylistId) {
        var people =
                setup.salon().people().stream().map(person -> person.personId()).toList();
        if (stylistId.isEmpty() || people.contains(stylistId.get())) return Optional.empty();
        return refusal(
                "PERSON_UNKNOWN",
                "\"" + stylistId.get() + "\" does not work here on this day. Accepted: " + listed(people) + ".");
    }

    private static Optional<Refusal> reasonObjection(String reason) {
        if (reason.length() <= LONGEST_REASON) return Optional.empty();
        return refusal("REASON_LONG", "A reason has at most " + LONGEST_REASON + " characters.");
    }

    public static Decision noService(Day day, int service) {
        int known = day.services().size();
        return Decision.refuse(
                "SERVICE_UNKNOWN",
                "There is no service " + service + ". "
                        + (known == 0 ? "No service is booked yet. Book it first." : "Accepted: 1 to " + known + "."));
    }

    public static Decision cancelled(ServiceState service) {
        return Decision.refuse(
                "SERVICE_CANCELLED",
                "Service " + service.service() + " is cancelled. Book it anew if the client comes after all.");
    }

    private static Optional<Refusal> refusal(String code, String sentence) {
        return Optional.of(new Refusal(code, sentence));
    }

    public static String listed(Collection<String> values) {
        return values.isEmpty() ? "none" : String.join(", ", values);
    }
}
