package stirtide.planner.salonfiles;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stirtide.events.day.Booking;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Developer;
import stirtide.events.setup.Directions;
import stirtide.events.setup.Salon;
import stirtide.events.setup.UseHistory;
import stirtide.planner.salonfiles.calendar.CalendarReader;
import stirtide.planner.salonfiles.json.BookingsReader;
import stirtide.planner.salonfiles.json.FileSchema;
import stirtide.planner.salonfiles.json.HistoryReader;
import stirtide.planner.salonfiles.json.LocatedJson;
import stirtide.planner.salonfiles.json.LocatedJsonParser;
import stirtide.planner.salonfiles.json.MenuCheck;
import stirtide.planner.salonfiles.json.MenuReader;
import stirtide.planner.salonfiles.json.ProductReader;
import stirtide.planner.salonfiles.json.SalonReader;
import stirtide.planner.salonfiles.source.BookingCandidate;
import stirtide.planner.salonfiles.source.ParsedBookings;
import stirtide.planner.salonfiles.source.ProblemCollector;
import stirtide.planner.salonfiles.source.SourceFile;
import stirtide.planner.salonfiles.source.TextFileReader;

/** One reading of a folder: each file on its own first, then all of them together. */
final class FolderReader {
    private static final String BOOKINGS_JSON = "bookings.json";
    private static final String HISTORY_JSON = "history.json";
    private static final String BOOKINGS_ICS = "bookings.ics";
    private static final int MOST_DIRECTIONS = 100;

    private final Path folder;
    private final Optional<LocalDate> asked;
    private final ProblemCollector problems = new ProblemCollector();
    private int rank;

    FolderReader(Path folder, Optional<LocalDate> asked) {
        this.folder = folder;
        this.asked = asked;
    }

    FolderResult read() {
        if (!Files.isDirectory(folder)) {
            source(".").refuse(folder.toString(), "a folder that exists");
            return problems.refusal();
        }
        Optional<SalonReader> salon = json("salon.json", FileSchema.SALON).map(SalonReader::new);
        ProductReader products = new ProductReader(salon.flatMap(SalonReader::currency));
        Optional<List<Developer>> developers =
                json("developers.json", FileSchema.DEVELOPERS).map(products::developers);
        List<Directions> directions = directions(products, salon);
        boolean shelfKnown = problems.none();
        Optional<MenuReader> menu = json("menu.json", FileSchema.MENU).map(MenuReader::new);
        if (shelfKnown) {
            menu.ifPresent(each -> new MenuCheck(directions, developers.orElse(List.of())).check(each));
        }
        Optional<UseHistory> history = history(menu);
        Optional<FolderResult> answer = day(salon, developers, directions, menu, history);
        return problems.none() && answer.isPresent() ? answer.get() : problems.refusal();
    }

    private Optional<FolderResult> day(
            Optional<SalonReader> salon,
            Optional<List<Developer>> developers,
            List<Directions> directions,
            Optional<MenuReader> menu,
            Optional<UseHistory> history) {
        SourceFile source = source(bookingsName());
        int before = problems.count();
        Optional<ParsedBookings> read = bookings(source, salon.flatMap(SalonReader::zone), menu);
        if (read.isEmpty() || salon.isEmpty() || menu.isEmpty()) return Optional.empty();
        Optional<LocalDate> date = DaySelection.date(asked, read.get());
        if (date.isEmpty()) {
            // A booking that was refused may have been the one on the day; then its own problem says enough.
            if (problems.count() == before) DaySelection.refuse(asked, read.get(), source);
            return Optional.empty();
        }
        ZoneId zone = salon.get().zone().orElseThrow();
        if (isSkipped(date.get(), zone)) {
            refuseAll(DaySelection.on(date.get(), read.get()));
            return Optional.empty();
        }
        Salon onDay = salon.get().on(date.get());
        List<Booking> bookings = checked(
                DaySelection.on(date.get(), read.get()),
                new BookingCheck(onDay, menu.get().menu()));
        DaySetup setup = new DaySetup(
                date.get(),
                onDay,
                developers.orElse(List.of()),
                directions,
                menu.get().menu(),
                history,
                salon.get().allowances());
        return Optional.of(new FolderResult.Read(setup, bookings, DaySelection.notes(date.get(), read.get())));
    }

    /** What a salon brings along from before; a folder without the file remembers nothing. */
    private Optional<UseHistory> history(Optional<MenuReader> menu) {
        if (!Files.exists(folder.resolve(HISTORY_JSON)) || menu.isEmpty()) return Optional.empty();
        return json(HISTORY_JSON, FileSchema.HISTORY)
                .map(each -> new HistoryReader(menu.get().menu()).read(each));
    }

    /** Bookings on a skipped day say themselves, when asked for, that their time never comes. */
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
            booking.ifPresent(each -> check.check(each, candidate.spot()));
            booking.ifPresent(bookings::add);
        }
        bookings.sort(Comparator.comparing(Booking::start)
                .thenComparing(Booking::chair)
                .thenComparing(Booking::bookingUid));
        return bookings;
    }

    private Optional<ParsedBookings> bookings(SourceFile source, Optional<ZoneId> zone, Optional<MenuReader> menu) {
        boolean calendar = Files.exists(folder.resolve(BOOKINGS_ICS));
        boolean list = Files.exists(folder.resolve(BOOKINGS_JSON));
        if (calendar == list) {
            source.refuse(
                    calendar ? "both files of bookings" : "no file of bookings",
                    "exactly one of " + BOOKINGS_ICS + " and " + BOOKINGS_JSON);
            return Optional.empty();
        }
        Optional<String> text = TextFileReader.read(folder.resolve(source.name()), source);
        if (list) {
            return text.flatMap(each -> LocatedJsonParser.parse(each, source))
                    .filter(FileSchema.BOOKINGS::fits)
                    .flatMap(each -> zone.map(known -> BookingsReader.read(each, known)));
        }
        return text.flatMap(each -> CalendarReader.read(each, source, zone, menu, asked));
    }

    private String bookingsName() {
        if (Files.exists(folder.resolve(BOOKINGS_ICS))) return BOOKINGS_ICS;
        return Files.exists(folder.resolve(BOOKINGS_JSON)) ? BOOKINGS_JSON : ".";
    }

    private List<Directions> directions(ProductReader products, Optional<SalonReader> salon) {
        List<Directions> read = new ArrayList<>();
        int handOver = salon.map(SalonReader::handOverMinutes).orElse(0);
        for (String name : directionsNames()) {
            json("directions/" + name, FileSchema.DIRECTIONS)
                    .map(each -> products.directions(each, handOver))
                    .ifPresent(read::add);
        }
        return read;
    }

    /** Files of the folder of directions in the order of their names; hidden files are none of ours. */
    private List<String> directionsNames() {
        Path inside = folder.resolve("directions");
        SourceFile source = source("directions");
        List<String> names = List.of();
        try (Stream<Path> files = Files.list(inside)) {
            names = files.map(file -> file.getFileName().toString())
                    .filter(name -> !name.startsWith("."))
                    .limit(MOST_DIRECTIONS + 1L)
                    .sorted()
                    .toList();
        } catch (IOException | UncheckedIOException unreadable) {
            source.refuse("(no such folder)", "a folder with one file of directions for each lightener");
            return List.of();
        }
        if (names.isEmpty()) source.refuse("(empty)", "one file of directions for each lightener");
        if (names.size() > MOST_DIRECTIONS) source.refuse("(too many files)", "at most " + MOST_DIRECTIONS + " files");
        names.stream()
                .filter(name -> !name.endsWith(".json"))
                .forEach(name -> source.refuse(name, "only files whose names end in .json"));
        return names.stream()
                .filter(name -> name.endsWith(".json"))
                .limit(MOST_DIRECTIONS)
                .toList();
    }

    private Optional<LocatedJson> json(String name, FileSchema schema) {
        SourceFile source = source(name);
        return TextFileReader.read(folder.resolve(name), source)
                .flatMap(text -> LocatedJsonParser.parse(text, source))
                .filter(schema::fits);
    }

    private SourceFile source(String name) {
        return new SourceFile(name, rank++, problems);
    }
}
