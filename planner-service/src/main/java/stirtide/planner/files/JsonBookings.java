package stirtide.planner.files;

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

/** Reads {@code bookings.json}. */
final class JsonBookings {
    private static final int LOCAL_LENGTH = "2027-05-14T09:30".length();

    private JsonBookings() {}

    private record ItemSpot(Item item) implements Spot {
        @Override
        public void refuse(Part part, String value, String accepted) {
            item.at(part.jsonKey).refuse(value, accepted);
        }

        @Override
        public String where() {
            return item.json().source().name() + " " + item.pointer();
        }
    }

    static BookingsRead read(LocatedJson json, ZoneId zone) {
        Ids ids = new Ids("booking");
        List<Candidate> candidates = new ArrayList<>();
        for (Item item : json.top().items("bookings")) {
            ids.take(item.at("bookingUid"));
            candidate(item, zone).ifPresent(candidates::add);
        }
        return new BookingsRead(candidates, 0);
    }

    private static Optional<Candidate> candidate(Item item, ZoneId zone) {
        String text = item.text("start");
        boolean cancelled = item.has("status") && item.text("status").equals("cancelled");
        try {
            if (text.length() > LOCAL_LENGTH) {
                Instant start = OffsetDateTime.parse(text).toInstant();
                LocalDate date = start.atZone(zone).toLocalDate();
                return Optional.of(new Candidate(
                        date, cancelled, new ItemSpot(item), () -> Optional.of(booking(item, start, zone))));
            }
            LocalDateTime local = LocalDateTime.parse(text);
            return Optional.of(new Candidate(
                    local.toLocalDate(), cancelled, new ItemSpot(item), () -> booking(item, local, zone)));
        } catch (DateTimeException noSuchDate) {
            item.at("start").refuse("a date and time of the calendar, such as \"2027-05-14T09:30\"");
            return Optional.empty();
        }
    }

    private static Optional<Booking> booking(Item item, LocalDateTime local, ZoneId zone) {
        LocalTimes.Meaning meaning = LocalTimes.meaning(local, zone.getRules());
        if (meaning instanceof LocalTimes.Meaning.One one) return Optional.of(booking(item, one.instant(), zone));
        if (meaning instanceof LocalTimes.Meaning.Unclear unclear)
            item.at("start").refuse(unclear.accepted());
        return Optional.empty();
    }

    private static Booking booking(Item item, Instant start, ZoneId zone) {
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

    private static Optional<ClientTests> tests(Item item, Instant start, ZoneId zone) {
        if (!item.has("strandTest") && !item.has("patchTest")) return Optional.empty();
        return Optional.of(
                new ClientTests(test(item, "strandTest", start, zone), test(item, "patchTest", start, zone)));
    }

    /** When a test was done; a test after the start of its service is a slip of the pen and refused. */
    private static Optional<Instant> test(Item item, String key, Instant start, ZoneId zone) {
        if (!item.has(key)) return Optional.empty();
        Optional<Instant> at = instant(item, key, zone);
        if (at.filter(done -> done.isAfter(start)).isPresent())
            item.at(key).refuse("a time before the start of the service");
        return at;
    }

    private static Optional<Instant> instant(Item item, String key, ZoneId zone) {
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
