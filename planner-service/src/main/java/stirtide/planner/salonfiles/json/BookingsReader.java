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
import stirtide.planner.salonfiles.json.FieldPath.Located;
import stirtide.planner.salonfiles.source.BookingCandidate;
import stirtide.planner.salonfiles.source.BookingLocation;
import stirtide.planner.salonfiles.source.LocalTimes;
import stirtide.planner.salonfiles.source.ParsedBookings;

/** Turns the entries of {@code bookings.json} into bookings. */
public final class BookingsReader {
    private static final int LOCAL_LENGTH = "2027-05-14T09:30".length();

    private BookingsReader() {}

    private record EntryLocation(FieldPath path) implements BookingLocation {
        @Override
        public void refuse(Part part, String value, String accepted) {
            path.at(part.jsonKey()).refuse(value, accepted);
        }

        @Override
        public String where() {
            return path.where();
        }
    }

    /** All bookings with a start that a calendar has; the others are refused. */
    public static ParsedBookings read(BookingsFile file, ZoneId zone, FieldPath top) {
        UniqueIds ids = new UniqueIds("booking");
        List<BookingCandidate> candidates = new ArrayList<>();
        for (Located<BookingsFile.Entry> entry : top.each("bookings", file.bookings())) {
            ids.take(entry.value().bookingUid(), entry.path().at("bookingUid"));
            candidate(entry.value(), entry.path(), zone).ifPresent(candidates::add);
        }
        return new ParsedBookings(candidates, 0);
    }

    private static Optional<BookingCandidate> candidate(BookingsFile.Entry entry, FieldPath path, ZoneId zone) {
        EntryLocation location = new EntryLocation(path);
        String start = entry.start();
        try {
            if (start.length() > LOCAL_LENGTH) {
                Instant at = OffsetDateTime.parse(start).toInstant();
                LocalDate date = at.atZone(zone).toLocalDate();
                return Optional.of(new BookingCandidate(
                        date, entry.cancelled(), location, () -> Optional.of(booking(entry, at, path, zone))));
            }
            LocalDateTime local = LocalDateTime.parse(start);
            return Optional.of(new BookingCandidate(
                    local.toLocalDate(),
                    entry.cancelled(),
                    location,
                    () -> instant(start, path.at("start"), zone).map(at -> booking(entry, at, path, zone))));
        } catch (DateTimeException noSuchDate) {
            path.refuse(
                    "start", FieldText.quoted(start), "a date and time of the calendar, such as \"2027-05-14T09:30\"");
            return Optional.empty();
        }
    }

    private static Booking booking(BookingsFile.Entry entry, Instant start, FieldPath path, ZoneId zone) {
        Optional<ClientTests> tests =
                entry.strandTest().isEmpty() && entry.patchTest().isEmpty()
                        ? Optional.empty()
                        : Optional.of(new ClientTests(
                                test(entry.strandTest(), start, path.at("strandTest"), zone),
                                test(entry.patchTest(), start, path.at("patchTest"), zone)));
        return entry.booking(start, tests);
    }

    /** When a test was done. A test after the start of its service is refused as a mistake. */
    private static Optional<Instant> test(Optional<String> text, Instant start, FieldPath path, ZoneId zone) {
        Optional<Instant> at = text.flatMap(written -> instant(written, path, zone));
        if (at.filter(done -> done.isAfter(start)).isPresent())
            path.refuse(FieldText.quoted(text.orElseThrow()), "a time before the start of the service");
        return at;
    }

    private static Optional<Instant> instant(String text, FieldPath path, ZoneId zone) {
        try {
            if (text.length() > LOCAL_LENGTH)
                return Optional.of(OffsetDateTime.parse(text).toInstant());
            LocalTimes.Meaning meaning = LocalTimes.meaning(LocalDateTime.parse(text), zone.getRules());
            if (meaning instanceof LocalTimes.Meaning.One one) return Optional.of(one.instant());
            if (meaning instanceof LocalTimes.Meaning.Unclear unclear)
                path.refuse(FieldText.quoted(text), unclear.accepted());
        } catch (DateTimeException noSuchDate) {
            path.refuse(FieldText.quoted(text), "a date and time of the calendar, such as \"2027-05-12T09:30\"");
        }
        return Optional.empty();
    }
}
