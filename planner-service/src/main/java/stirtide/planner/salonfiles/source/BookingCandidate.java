package stirtide.planner.salonfiles.source;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Supplier;
import stirtide.events.day.Booking;

/**
 * A booking of a file, before the day of the folder is known.
 *
 * @param date date in the salon's zone
 * @param cancelled whether it was cancelled
 * @param location where it stands
 * @param booking the booking itself; asked for only when its date is the day, and empty after its problems were reported
 */
public record BookingCandidate(
        LocalDate date, boolean cancelled, BookingLocation location, Supplier<Optional<Booking>> booking) {}
