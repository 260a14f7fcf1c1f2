package stirtide.planner.salonfiles;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import stirtide.planner.salonfiles.source.BookingCandidate;
import stirtide.planner.salonfiles.source.ParsedBookings;
import stirtide.planner.salonfiles.source.SourceFile;

/** Finds the day of a folder and the bookings on it. */
final class DaySelection {
    private static final int MOST_DATES_SHOWN = 10;

    private DaySelection() {}

    /** The date asked for, or the only date with bookings; empty when there is no such date. */
    static Optional<LocalDate> date(Optional<LocalDate> asked, ParsedBookings read) {
        SortedSet<LocalDate> dates = dates(read);
        if (asked.isPresent()) return asked.filter(dates::contains);
        return dates.size() == 1 ? Optional.of(dates.first()) : Optional.empty();
    }

    /** Reports why there is no date. */
    static void refuse(Optional<LocalDate> asked, ParsedBookings read, SourceFile source) {
        SortedSet<LocalDate> dates = dates(read);
        if (dates.isEmpty()) {
            source.refuse("no booking that takes place" + on(asked), "at least one booking that is not cancelled");
        } else if (asked.isPresent()) {
            source.refuse("no booking on " + asked.get(), "a date with bookings: " + shown(dates));
        } else {
            source.refuse("bookings on " + dates.size() + " dates", "one date to be named of " + shown(dates));
        }
    }

    private static SortedSet<LocalDate> dates(ParsedBookings read) {
        SortedSet<LocalDate> dates = new TreeSet<>();
        read.candidates().stream().filter(each -> !each.cancelled()).forEach(each -> dates.add(each.date()));
        return dates;
    }

    private static String on(Optional<LocalDate> asked) {
        return asked.map(date -> " on " + date).orElse("");
    }

    private static String shown(SortedSet<LocalDate> dates) {
        String first =
                dates.stream().limit(MOST_DATES_SHOWN).map(LocalDate::toString).collect(Collectors.joining(", "));
        int more = dates.size() - MOST_DATES_SHOWN;
        return more > 0 ? first + " and " + more + " more" : first;
    }

    /** The bookings on the day that take place. */
    static List<BookingCandidate> on(LocalDate date, ParsedBookings read) {
        return read.candidates().stream()
                .filter(each -> each.date().equals(date) && !each.cancelled())
                .toList();
    }

    /** Sentences about what was left out. */
    static List<String> notes(LocalDate date, ParsedBookings read) {
        long cancelled = read.candidates().stream()
                .filter(each -> each.date().equals(date) && each.cancelled())
                .count();
        long elsewhere = read.candidates().stream()
                .filter(each -> !each.date().equals(date))
                .count();
        return List.of(
                        counted(cancelled, "cancelled booking"),
                        counted(elsewhere, "booking on another date", "bookings on other dates"),
                        counted(
                                read.otherAppointments(),
                                "appointment that is not for the color bar",
                                "appointments that are not for the color bar"))
                .stream()
                .flatMap(Optional::stream)
                .toList();
    }

    private static Optional<String> counted(long count, String one) {
        return counted(count, one, one + "s");
    }

    private static Optional<String> counted(long count, String one, String many) {
        return count == 0 ? Optional.empty() : Optional.of(count + " " + (count == 1 ? one : many) + " left out");
    }
}
