package stirtide.planner.salonfiles.json;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stirtide.events.day.Booking;
import stirtide.events.day.ClientTests;

/** {@code bookings.json}: the booked services. */
public record BookingsFile(List<Entry> bookings) {
    private static final DateTimeFormatter START = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mmxxx", Locale.ROOT);

    /**
     * One booking.
     *
     * @param start local time of the salon, or one with an offset
     * @param clientRef initials or a number, may be empty text
     * @param strandTest when a strand test was done, written like the start
     * @param patchTest when a patch test was done, written like the start
     * @param status {@code "booked"} or {@code "cancelled"}, empty for booked
     */
    public record Entry(
            String bookingUid,
            String menuId,
            int chair,
            String start,
            @JsonInclude(JsonInclude.Include.NON_EMPTY) String clientRef,
            String length,
            String density,
            Optional<String> stylistId,
            @JsonInclude(JsonInclude.Include.NON_DEFAULT) int earlierMinutes,
            @JsonInclude(JsonInclude.Include.NON_DEFAULT) int laterMinutes,
            Optional<String> strandTest,
            Optional<String> patchTest,
            Optional<Boolean> asLastTime,
            Optional<String> status) {

        boolean cancelled() {
            return status.filter("cancelled"::equals).isPresent();
        }

        Booking booking(Instant at, Optional<ClientTests> tests) {
            return new Booking(
                    bookingUid,
                    menuId,
                    chair,
                    at,
                    clientRef,
                    length,
                    density,
                    stylistId,
                    earlierMinutes,
                    laterMinutes,
                    tests,
                    asLastTime);
        }

        private static Entry of(Booking booking, ZoneId zone) {
            ClientTests tests = booking.tests().orElse(ClientTests.NONE);
            return new Entry(
                    booking.bookingUid(),
                    booking.menuId(),
                    booking.chair(),
                    START.format(booking.start().atZone(zone)),
                    booking.clientRef(),
                    booking.length(),
                    booking.density(),
                    booking.stylistId(),
                    booking.earlierMinutes(),
                    booking.laterMinutes(),
                    tests.strandTestAt().map(at -> START.format(at.atZone(zone))),
                    tests.patchTestAt().map(at -> START.format(at.atZone(zone))),
                    booking.asLastTime(),
                    Optional.empty());
        }
    }

    /** Bookings with times in the zone of their salon. */
    public static BookingsFile of(Collection<Booking> bookings, ZoneId zone) {
        return new BookingsFile(
                bookings.stream().map(booking -> Entry.of(booking, zone)).toList());
    }
}
