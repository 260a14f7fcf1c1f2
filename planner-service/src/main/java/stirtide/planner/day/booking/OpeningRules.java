package stirtide.planner.day.booking;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import stirtide.events.command.DayCommand;
import stirtide.events.day.Booking;
import stirtide.events.day.DayEvent;
import stirtide.planner.day.setup.SetupRules;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.Decision;

/** Opening a day: the setup and all bookings, or nothing. */
final class OpeningRules {
    /** Order in which the bookings of a new day get their numbers. */
    private static final Comparator<Booking> BY_START =
            Comparator.comparing(Booking::start).thenComparing(Booking::chair).thenComparing(Booking::bookingUid);

    private OpeningRules() {}

    static Decision open(Day day, DayCommand.OpenDay command) {
        var setup = command.setup();
        if (day.setup().isPresent())
            return Decision.refuse(
                    "DAY_ALREADY_OPEN",
                    "The day " + day.opened().date() + " is open already. Book, move and cancel services on it.");
        var wrong = SetupRules.objection(setup);
        if (wrong.isPresent()) return Decision.refuse("SETUP_INVALID", wrong.get());
        var tooMany = BookingChecks.countObjection(command.bookings().size());
        if (tooMany.isPresent()) return new Decision.Refused(tooMany.get());
        var events = new ArrayList<DayEvent>();
        events.add(new DayEvent.DayOpened(setup));
        var seen = new HashSet<String>();
        var ordered = command.bookings().stream().sorted(BY_START).toList();
        for (var booking : ordered) {
            var refused = BookingChecks.objection(setup, booking);
            if (refused.isPresent())
                return Decision.refuse(
                        refused.get().code(),
                        "Booking \"" + booking.bookingUid() + "\": "
                                + refused.get().sentence());
            if (!seen.add(booking.bookingUid()))
                return Decision.refuse(
                        "BOOKING_KNOWN",
                        "Booking \"" + booking.bookingUid() + "\" stands twice in the list. Each id is used once.");
            events.add(new DayEvent.ServiceBooked(seen.size(), booking));
        }
        return new Decision.Accepted(events);
    }
}
