package stirtide.planner.files;

import java.util.List;

/**
 * What a file of bookings holds.
 *
 * @param candidates bookings of all dates
 * @param otherAppointments appointments that have nothing to do with the bar
 */
record BookingsRead(List<Candidate> candidates, int otherAppointments) {
    BookingsRead {
        candidates = List.copyOf(candidates);
    }
}
