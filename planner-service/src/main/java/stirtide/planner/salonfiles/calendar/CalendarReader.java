package stirtide.planner.salonfiles.calendar;

import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.io.ParseWarning;
import biweekly.io.text.ICalReader;
import java.io.IOException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import stirtide.planner.salonfiles.json.MenuFile;
import stirtide.planner.salonfiles.source.BookingCandidate;
import stirtide.planner.salonfiles.source.ParsedBookings;
import stirtide.planner.salonfiles.source.SourceFile;

/** Reads {@code bookings.ics} (RFC 5545) as any calendar exports it. */
public final class CalendarReader {
    /** Properties that carry a meaning here, in events and in descriptions of zones. */
    private static final Set<String> USED = Set.of(
            "UID",
            "DTSTART",
            "DTEND",
            "DURATION",
            "CATEGORIES",
            "LOCATION",
            "DESCRIPTION",
            "STATUS",
            "RRULE",
            "EXRULE",
            "RDATE",
            "EXDATE",
            "RECURRENCE-ID",
            "TZID",
            "TZOFFSETFROM",
            "TZOFFSETTO",
            "METHOD");

    /** Without these, nobody knows when an event takes place. */
    private static final Set<String> DATES = Set.of("DTSTART", "RRULE", "EXRULE", "RDATE", "RECURRENCE-ID");

    private CalendarReader() {}

    /** All bookings of the calendar, or empty after its problems were reported. */
    public static Optional<ParsedBookings> read(
            String text, SourceFile source, Optional<ZoneId> zone, Optional<MenuFile> menu, Optional<LocalDate> asked) {
        Optional<List<ContentLines.Event>> lines = ContentLines.read(text, source);
        if (lines.isEmpty()) return Optional.empty();
        List<ParseWarning> warnings = new ArrayList<>();
        Optional<List<ICalendar>> calendars = parse(text, source, lines.get(), warnings);
        if (calendars.isEmpty()) return Optional.empty();
        if (lines.get().isEmpty()) source.refuse("a calendar without events", "at least one VEVENT");
        if (zone.isEmpty() || menu.isEmpty() || lines.get().isEmpty()) {
            warnings.forEach(each -> refuse(each, text, source));
            return Optional.empty();
        }
        List<BookingCandidate> candidates = new ArrayList<>();
        int others = 0;
        int next = 0;
        for (ICalendar calendar : calendars.get()) {
            CalendarZones zones =
                    new CalendarZones(zone.get(), calendar.getTimezoneInfo().getComponents());
            CalendarBookings bookings = new CalendarBookings(zones, menu.get().menu(), asked);
            List<LocatedEvent> mine = new ArrayList<>();
            List<LocatedEvent> foreign = new ArrayList<>();
            for (VEvent event : calendar.getEvents()) {
                LocatedEvent located =
                        new LocatedEvent(source, event, lines.get().get(next++));
                if (!isRead(located, warnings, bookings, text)) continue;
                (isOther(event, menu.get().otherCategories()) ? foreign : mine).add(located);
            }
            others += foreign.size();
            candidates.addAll(bookings.of(mine, foreign));
        }
        return Optional.of(new ParsedBookings(candidates, others));
    }

    /** Whether an event was read as it is written; if not, and if it may take place on the day, it is refused. */
    private static boolean isRead(
            LocatedEvent event, List<ParseWarning> warnings, CalendarBookings bookings, String text) {
        List<ParseWarning> own = warnings.stream()
                .filter(each -> event.lines().holds(each.getLineNumber()))
                .toList();
        if (own.isEmpty()) return true;
        boolean datesUnknown = own.stream().anyMatch(each -> DATES.contains(name(each)));
        if (datesUnknown ? bookings.mayTouch(event) : bookings.touches(event)) {
            own.forEach(each -> refuse(each, text, event.source()));
            return false;
        }
        return true;
    }

    private static boolean isOther(VEvent event, List<String> otherCategories) {
        List<String> categories = EventFields.categories(event);
        return !categories.isEmpty() && otherCategories.containsAll(categories);
    }

    private static Optional<List<ICalendar>> parse(
            String text, SourceFile source, List<ContentLines.Event> lines, List<ParseWarning> ofEvents) {
        boolean fine = true;
        try (ICalReader reader = new ICalReader(text)) {
            List<ICalendar> calendars = new ArrayList<>();
            for (ICalendar next = reader.readNext(); next != null; next = reader.readNext()) {
                for (ParseWarning warning : reader.getWarnings()) {
                    if (!matters(warning)) continue;
                    if (lines.stream().anyMatch(each -> each.holds(warning.getLineNumber()))) ofEvents.add(warning);
                    else fine = refuse(warning, text, source);
                }
                fine &= isExport(next, source);
                calendars.add(next);
            }
            return fine ? Optional.of(calendars) : Optional.empty();
        } catch (IOException | RuntimeException | Error notACalendar) {
            // The library fails with errors too, such as a stack that is too small for what is written.
            source.refuse("(cannot be read)", "a calendar as RFC 5545 describes it");
            return Optional.empty();
        }
    }

    private static boolean isExport(ICalendar calendar, SourceFile source) {
        String method =
                calendar.getMethod() == null ? "PUBLISH" : calendar.getMethod().getValue();
        if (method.equalsIgnoreCase("PUBLISH") || method.equalsIgnoreCase("REQUEST")) return true;
        source.refuse(1, 0, "METHOD", method, "an export of a calendar: no METHOD, PUBLISH or REQUEST");
        return false;
    }

    private static boolean matters(ParseWarning warning) {
        return warning.getLineNumber() != null && (warning.getPropertyName() == null || USED.contains(name(warning)));
    }

    private static String name(ParseWarning warning) {
        return warning.getPropertyName() == null
                ? ""
                : warning.getPropertyName().toUpperCase(Locale.ROOT);
    }

    /** Refuses what the library could not read; always false. */
    private static boolean refuse(ParseWarning warning, String text, SourceFile source) {
        Integer line = warning.getLineNumber();
        String property = warning.getPropertyName();
        String[] lines = text.split("\r\n|\r|\n", -1);
        String written = line >= 1 && line <= lines.length ? lines[line - 1] : "";
        String where = "line " + line + (property == null ? "" : " " + property);
        source.refuse(line, 0, where, written, accepted(property));
        return false;
    }

    private static String accepted(@Nullable String property) {
        String name = property == null ? "" : property;
        return switch (name) {
            case "DTSTART", "DTEND", "RECURRENCE-ID", "EXDATE", "RDATE" -> "a date and time such as 20270514T093000";
            case "DURATION" -> "a duration such as PT1H30M";
            case "RRULE" -> "a rule such as FREQ=WEEKLY;BYDAY=FR;COUNT=10";
            case "TZOFFSETFROM", "TZOFFSETTO" -> "an offset such as +0100";
            default -> "a line as RFC 5545 describes it";
        };
    }
}
