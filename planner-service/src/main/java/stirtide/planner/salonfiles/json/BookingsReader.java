package stirtide.planner.salonfiles.json;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stirtide.events.day.Booking;
import stirtide.events.day.ClientTests;
import stirtide.planner.salonfiles.source.BookingCandidate;
import stirtide.planner.salonfiles.source.BookingLocation;
import stirtide.planner.salonfiles.source.LocalTimes;
import stirtide.planner.salonfiles.source.ParsedBookings;

/** Reads {@code bookings.json}. */
public final class BookingsReader {
    private static final int LOCAL_LENGTH = "2027-05-14T09:30".length();

    private BookingsReader() {}

    private record ItemSpot(LocatedValue item) implements BookingLocation {
        @Override
        public void refuse(Part part, String value, String accepted) {
            item.at(part.jsonKey).refuse(value, accepted);
        }

        @Override
        public String where() {
            return item.json().source().name() + " " + item.pointer();
        }
    }

    public static ParsedBookings read(LocatedJson json, ZoneId zone) {
        UniqueIds ids = new UniqueIds("booking");
        List<BookingCandidate> candidates = new ArrayList<>();
        for (LocatedValue item : json.top().items("bookings")) {
            ids.take(item.at("bookingUid"));
            candidate(item, zone).ifPresent(candidates::add);
        }
        return new ParsedBookings(candidates, 0);
    }

    private static Optional<BookingCandidate> candidate(LocatedValue item, ZoneId zone) {
        String text = item.text("start");
        boolean cancelled = item.has("status") && item.text("status").equals("cancelled");
        try {
            if (text.length() > LOCAL_LENGTH) {
                Instant start = OffsetDateTime.parse(text).toInstant();
                LocalDate date = start.atZone(zone).toLocalDate();
                return Optional.of(new BookingCandidate(
                        date, cancelled, new ItemSpot(item), () -> Optional.of(booking(item, start, zone))));
            }
            LocalDateTime local = LocalDateTime.parse(text);
            return Optional.of(new BookingCandidate(
                    local.toLocalDate(), cancelled, new ItemSpot(item), () -> booking(item, local, zone)));
        } catch (DateTimeException noSuchDate) {
            item.at("start").refuse("a date and time of the calendar, such as \"2027-05-14T09:30\"");
            return Optional.empty();
        }
    }

    private static Optional<Booking> booking(LocatedValue item, LocalDateTime local, ZoneId zone) {
        LocalTimes.Meaning meaning = LocalTimes.meaning(local, zone.getRules());
        if (meaning instanceof LocalTimes.Meaning.One one) return Optional.of(booking(item, one.instant(), zone));
        if (meaning instanceof LocalTimes.Meaning.Unclear unclear)
            item.at("start").refuse(unclear.accepted());
        return Optional.empty();
    }

    private static Booking booking(LocatedValue item, Instant start, ZoneId zone) {
        return new Booking(
                item.text("bookingUid"),
                item.text("menuId"),
                item.whole("chair"),
                start,
                item.has("clientRef") ? item.text("clientRef") : "",
                item.text("length"),
                item.text("density"),
                item.has("stylistId") ? Optional.of(item.text("stylistId")) : Optional.empty(),
                item.whole("earlierMinutes", 0),
                item.whole("laterMinutes", 0),
                tests(item, start, zone),
                item.has("asLastTime") ? Optional.of(item.flag("asLastTime")) : Optional.empty());
    }

    private static Optional<ClientTests> tests(LocatedValue item, Instant start, ZoneId zone) {
        if (!item.has("strandTest") && !item.has("patchTest")) return Optional.empty();
        return Optional.of(
                new ClientTests(test(item, "strandTest", start, zone), test(item, "patchTest", start, zone)));
    }

    /** When a test was done; a test after the start of its service is a slip of the pen and refused. */
    private static Optional<Instant> test(LocatedValue item, String key, Instant start, ZoneId zone) {
        if (!item.has(key)) return Optional.empty();
        Optional<Instant> at = instant(item, key, zone);
        if (at.filter(done -> done.isAfter(start)).isPresent())
            item.at(key).refuse("a time before the start of the service");
        return at;
    }

    private static Optional<Instant> instant(LocatedValue item, String key, ZoneId zone) {
        String text = item.text(key);
        try {
            if (text.length() > LOCAL_LENGTH)
                return Optional.of(OffsetDateTime.parse(text).toInstant());
            LocalTimes.Meaning meaning = LocalTimes.meaning(LocalDateTime.parse(text), zone.getRules());
            if (meaning instanceof LocalTimes.Meaning.One one) return Optional.of(one.instant());
            if (meaning instanceof LocalTimes.Meaning.Unclear unclear)
                item.at(key).refuse(unclear.accepted());
        } catch (DateTimeException noSuchDate) {
            item.at(key).refuse("a date and time of the calendar, such as \"2027-05-12T09:30\"");
        }
        return Optional.empty();
    }
}
