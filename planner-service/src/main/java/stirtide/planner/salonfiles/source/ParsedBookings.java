package stirtide.planner.salonfiles.source;

import java.util.List;

/**
 * What a file of bookings holds.
 *
 * @param candidates bookings of all dates
 * @param otherAppointments appointments that have nothing to do with the bar
 */
public record ParsedBookings(List<BookingCandidate> candidates, int otherAppointments) {
    public ParsedBookings {
        candidates = List.copyOf(candidates);
    }
}
