package stirtide.planner.day.booking;

import java.time.Instant;
import java.util.Collection;
import java.util.Optional;
import stirtide.events.day.Booking;
import stirtide.events.day.ClientTests;
import stirtide.events.setup.DaySetup;
import stirtide.planner.day.state.DayTime;
import stirtide.planner.day.state.Refusal;

/** What a booking must hold to be planned: names of the setup, a start on the day, tests before it. */
final class BookingChecks {
    /** Most services of one day. */
    private static final int MOST_SERVICES = 500;

    private static final int LONGEST_REFERENCE = 64;

    private BookingChecks() {}

    /** What is wrong with a booking, if anything. */
    static Optional<Refusal> objection(DaySetup setup, Booking booking) {
        if (booking.bookingUid().isBlank() || booking.bookingUid().length() > 4 * LONGEST_REFERENCE)
            return Refusal.of("BOOKING_UNNAMED", "A booking needs an id of 1 to 256 characters, unique on its day.");
        if (setup.menuEntry(booking.menuId()).isEmpty())
            return Refusal.of(
                    "MENU_ENTRY_UNKNOWN",
                    "\"" + booking.menuId() + "\" is not on the menu. Accepted: "
                            + Refusal.listed(setup.menu().entries().stream()
                                    .map(entry -> entry.menuId())
                                    .toList()) + ".");
        if (booking.clientRef().length() > LONGEST_REFERENCE
                && !booking.clientRef().startsWith("sealed:c"))
            return Refusal.of(
                    "CLIENT_REFERENCE_LONG", "A client reference is initials or a number, 64 characters at most.");
        if (booking.earlierMinutes() < 0 || booking.laterMinutes() < 0)
            return Refusal.of("MOVE_NEGATIVE", "How far a service may be moved is 0 minutes or more.");
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

    static Optional<Refusal> chairObjection(DaySetup setup, int chair) {
        int chairs = setup.salon().chairs();
        if (chair >= 1 && chair <= chairs) return Optional.empty();
        return Refusal.of("CHAIR_UNKNOWN", "There is no chair " + chair + ". Accepted: 1 to " + chairs + ".");
    }

    static Optional<Refusal> startObjection(DaySetup setup, Instant start) {
        if (DayTime.of(setup).holds(start)) return Optional.empty();
        return Refusal.of(
                "START_OUTSIDE_DAY",
                start + " is not on this day. Accepted: a start on " + setup.date() + " in "
                        + setup.salon().zone() + ".");
    }

    private static Optional<Refusal> testsObjection(Booking booking) {
        var tests = booking.tests().orElse(ClientTests.NONE);
        for (var kind : ClientTests.Kind.values())
            if (tests.at(kind).filter(at -> at.isAfter(booking.start())).isPresent())
                return Refusal.of(
                        "TEST_AFTER_START", "A test is done before its service. Accepted: a time before the start.");
        return Optional.empty();
    }

    private static Optional<Refusal> hairObjection(String what, String value, Collection<String> known) {
        if (known.contains(value)) return Optional.empty();
        return Refusal.of(
                what.equals("length") ? "LENGTH_UNKNOWN" : "DENSITY_UNKNOWN",
                "Hair " + what + " \"" + value + "\" is not on the menu. Accepted: " + Refusal.listed(known) + ".");
    }

    private static Optional<Refusal> stylistObjection(DaySetup setup, Optional<String> stylistId) {
        var people =
                setup.salon().people().stream().map(person -> person.personId()).toList();
        if (stylistId.isEmpty() || people.contains(stylistId.get())) return Optional.empty();
        return Refusal.of(
                "PERSON_UNKNOWN",
                "\"" + stylistId.get() + "\" does not work here on this day. Accepted: " + Refusal.listed(people)
                        + ".");
    }

    /** Whether a day can hold so many services. */
    static Optional<Refusal> countObjection(int services) {
        if (services <= MOST_SERVICES) return Optional.empty();
        return Refusal.of("DAY_FULL", "A day holds at most " + MOST_SERVICES + " services.");
    }
}
