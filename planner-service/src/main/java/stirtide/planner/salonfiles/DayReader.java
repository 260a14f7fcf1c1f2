package stirtide.planner.salonfiles;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import stirtide.events.day.Booking;
import stirtide.events.setup.Person;
import stirtide.events.setup.Salon;
import stirtide.planner.salonfiles.calendar.CalendarReader;
import stirtide.planner.salonfiles.json.BookingsFile;
import stirtide.planner.salonfiles.json.BookingsReader;
import stirtide.planner.salonfiles.json.FieldPath;
import stirtide.planner.salonfiles.json.FieldPath.Located;
import stirtide.planner.salonfiles.json.FileJson;
import stirtide.planner.salonfiles.json.FileSchema;
import stirtide.planner.salonfiles.json.MenuFile;
import stirtide.planner.salonfiles.json.SalonFile;
import stirtide.planner.salonfiles.json.WorkHours;
import stirtide.planner.salonfiles.rules.SalonFileRules;
import stirtide.planner.salonfiles.source.BookingCandidate;
import stirtide.planner.salonfiles.source.ParsedBookings;
import stirtide.planner.salonfiles.source.ProblemCollector;
import stirtide.planner.salonfiles.source.SourceFile;
import stirtide.planner.salonfiles.source.TextFileReader;

/** Reads the bookings of a folder and finds its day: the date, the people at work on it, and the bookings that take place. */
record DayReader(
        Path folder,
        Optional<LocalDate> asked,
        ProblemCollector problems,
        Optional<Located<SalonFile>> salon,
        Optional<Located<MenuFile>> menu) {
    private static final String BOOKINGS_JSON = "bookings.json";
    private static final String BOOKINGS_ICS = "bookings.ics";

    /**
     * The day of a folder.
     *
     * @param date date in the salon's zone
     * @param salon the salon as it is on that date
     * @param bookings bookings that take place, sorted by start, chair and id
     * @param notes sentences about what was left out
     */
    record BookedDay(LocalDate date, Salon salon, List<Booking> bookings, List<String> notes) {}

    /** The day, or empty after the problems of its bookings were reported. */
    Optional<BookedDay> read(Function<String, SourceFile> sources) {
        SourceFile source = sources.apply(bookingsName());
        int before = problems.count();
        Optional<ZoneId> zone = salon.flatMap(each -> SalonFileRules.zone(each.value()));
        Optional<ParsedBookings> parsed = bookings(source, zone);
        if (parsed.isEmpty() || zone.isEmpty() || salon.isEmpty() || menu.isEmpty()) return Optional.empty();
        Optional<LocalDate> date = DaySelection.date(asked, parsed.get());
        if (date.isEmpty()) {
            // A booking that was refused may have been the one on the day; then its own problem says enough.
            if (problems.count() == before) DaySelection.refuse(asked, parsed.get(), source);
            return Optional.empty();
        }
        List<BookingCandidate> candidates = DaySelection.on(date.get(), parsed.get());
        if (isSkipped(date.get(), zone.get())) {
            refuseAll(candidates);
            return Optional.empty();
        }
        Salon onDay = onDay(salon.get(), date.get(), zone.get());
        List<Booking> bookings =
                checked(candidates, new BookingCheck(onDay, menu.get().value().menu()));
        return Optional.of(new BookedDay(date.get(), onDay, bookings, DaySelection.notes(date.get(), parsed.get())));
    }

    private static Salon onDay(Located<SalonFile> salon, LocalDate date, ZoneId zone) {
        FieldPath at = salon.path();
        var people = WorkHours.atWork(salon.value().people(), date, zone, at);
        if (people.stream().noneMatch(person -> person.role() == Person.Role.ASSISTANT))
            at.refuse("people", "no person who mixes on " + date, "an assistant with a shift on that weekday");
        return salon.value().on(people);
    }

    /** Each booking on a skipped day is refused with the reason, because its time never comes. */
    private static void refuseAll(List<BookingCandidate> candidates) {
        List<Booking> none = candidates.stream()
                .flatMap(each -> each.booking().get().stream())
                .toList();
        if (!none.isEmpty()) throw new IllegalStateException("a booking on a day that never came: " + none);
    }

    /** Whether a change of the date line took the whole day away; then no local time on it can be read. */
    private static boolean isSkipped(LocalDate date, ZoneId zone) {
        return !date.atStartOfDay(zone).toLocalDate().equals(date);
    }

    private static List<Booking> checked(List<BookingCandidate> candidates, BookingCheck check) {
        List<Booking> bookings = new ArrayList<>();
        for (BookingCandidate candidate : candidates) {
            Optional<Booking> booking = candidate.booking().get();
            booking.ifPresent(each -> check.check(each, candidate.location()));
            booking.ifPresent(bookings::add);
        }
        bookings.sort(Comparator.comparing(Booking::start)
                .thenComparing(Booking::chair)
                .thenComparing(Booking::bookingUid));
        return bookings;
    }

    private Optional<ParsedBookings> bookings(SourceFile source, Optional<ZoneId> zone) {
        boolean calendar = Files.exists(folder.resolve(BOOKINGS_ICS));
        boolean list = Files.exists(folder.resolve(BOOKINGS_JSON));
        if (calendar == list) {
            source.refuse(
                    calendar ? "both files of bookings" : "no file of bookings",
                    "exactly one of " + BOOKINGS_ICS + " and " + BOOKINGS_JSON);
            return Optional.empty();
        }
        Optional<String> text = TextFileReader.read(folder.resolve(source.name()), source);
        if (list)
            return text.flatMap(each -> FileJson.read(each, source, FileSchema.BOOKINGS, BookingsFile.class))
                    .flatMap(each -> zone.map(known -> BookingsReader.read(each.value(), known, each.path())));
        return text.flatMap(each -> CalendarReader.read(each, source, zone, menu.map(Located::value), asked));
    }

    private String bookingsName() {
        if (Files.exists(folder.resolve(BOOKINGS_ICS))) return BOOKINGS_ICS;
        return Files.exists(folder.resolve(BOOKINGS_JSON)) ? BOOKINGS_JSON : ".";
    }
}
