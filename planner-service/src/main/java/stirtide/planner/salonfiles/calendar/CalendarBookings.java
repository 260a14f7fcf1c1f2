package stirtide.planner.salonfiles.calendar;

import biweekly.util.ICalDate;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.zone.ZoneRules;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stirtide.events.day.Booking;
import stirtide.events.day.ClientTests;
import stirtide.events.setup.Menu;
import stirtide.planner.salonfiles.source.BookingCandidate;
import stirtide.planner.salonfiles.source.BookingLocation;
import stirtide.planner.salonfiles.source.FileProblem;
import stirtide.planner.salonfiles.source.LocalTimes;

/** Turns the events of a calendar into bookings, one for each time they take place. */
final class CalendarBookings {
    private static final DateTimeFormatter BASIC = DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmm");

    /** A local time with the rules of its zone. */
    private record Start(LocalDateTime local, ZoneRules rules, boolean allDay) {
        Instant near() {
            return LocalTimes.near(local, rules);
        }
    }

    private final CalendarZones zones;
    private final Menu menu;
    private final Optional<LocalDate> asked;
    private final Set<String> uids = new HashSet<>();
    private final Map<String, Set<Instant>> replaced = new HashMap<>();

    CalendarBookings(CalendarZones zones, Menu menu, Optional<LocalDate> asked) {
        this.zones = zones;
        this.menu = menu;
        this.asked = asked;
    }

    List<BookingCandidate> of(List<LocatedEvent> events) {
        events.forEach(this::noteReplacement);
        List<BookingCandidate> candidates = new ArrayList<>();
        for (LocatedEvent event : events) {
            if (!checkUid(event)) continue;
            Optional<Start> start = start(event);
            if (start.isEmpty() || !checkEnd(event, start.get())) continue;
            candidates.addAll(candidates(event, start.get()));
        }
        return candidates;
    }

    private List<BookingCandidate> candidates(LocatedEvent event, Start start) {
        boolean repeats = event.lines().properties().stream()
                .anyMatch(each -> each.name().equals("RRULE") || each.name().equals("RDATE"));
        if (!repeats) return List.of(candidate(event, start, event.uid()));
        if (asked.isEmpty() && !event.cancelled()) {
            event.refuse(
                    "RRULE", "a booking that repeats", "a date to be named, because repetitions have no only date");
            return List.of();
        }
        if (asked.isEmpty()) return List.of(candidate(event, start, event.uid()));
        EventRecurrence repetition = new EventRecurrence(event, zones, start.local(), start.rules());
        Set<Instant> others = replaced.getOrDefault(event.uid(), Set.of());
        return repetition.around(asked.get()).stream()
                .map(local -> new Start(local, start.rules(), start.allDay()))
                .filter(each -> !others.contains(each.near()))
                .map(each -> candidate(event, each, event.uid() + "#" + BASIC.format(each.local())))
                .toList();
    }

    private BookingCandidate candidate(LocatedEvent event, Start start, String uid) {
        LocalDate date = start.allDay()
                ? start.local().toLocalDate()
                : start.near().atZone(zones.salonZone()).toLocalDate();
        return new BookingCandidate(date, event.cancelled(), event, () -> booking(event, start, uid));
    }

    private Optional<Booking> booking(LocatedEvent event, Start start, String uid) {
        Optional<Instant> instant = instant(event, start);
        EventFields fields = new EventFields(event);
        String menuId = fields.menuId(menu);
        int chair = fields.chair();
        String client = fields.client();
        String length = fields.length(menu);
        String density = fields.density(menu);
        int earlier = fields.minutes(BookingLocation.Part.EARLIER, "earlier");
        int later = fields.minutes(BookingLocation.Part.LATER, "later");
        Optional<Boolean> asLastTime = fields.asLastTime();
        if (instant.isEmpty()) return Optional.empty();
        Optional<ClientTests> tests = fields.tests(instant.get(), zones.salonZone());
        if (!fields.complete()) return Optional.empty();
        return Optional.of(new Booking(
                uid,
                menuId,
                chair,
                instant.get(),
                client,
                length,
                density,
                fields.stylist(),
                earlier,
                later,
                tests,
                asLastTime));
    }

    private static Optional<Instant> instant(LocatedEvent event, Start start) {
        if (start.allDay()) {
            event.refuse(BookingLocation.Part.START, "(the whole day)", "a start with a time, such as 20270514T093000");
            return Optional.empty();
        }
        if (start.local().getSecond() != 0) {
            event.refuse(BookingLocation.Part.START, start.local().toString(), "a start on a whole minute");
            return Optional.empty();
        }
        LocalTimes.Meaning meaning = LocalTimes.meaning(start.local(), start.rules());
        if (meaning instanceof LocalTimes.Meaning.One one) return Optional.of(one.instant());
        if (meaning instanceof LocalTimes.Meaning.Unclear unclear) {
            event.refuse(BookingLocation.Part.START, start.local().toString(), unclear.acceptedInCalendar());
        }
        return Optional.empty();
    }

    private boolean checkUid(LocatedEvent event) {
        String uid = event.uid();
        if (uid.isBlank() || uid.length() > 200 || uid.codePoints().anyMatch(FileProblem::steers)) {
            event.refuse(BookingLocation.Part.UID, uid.isBlank() ? "(no UID)" : uid, "an id of 1 to 200 characters");
            return false;
        }
        String key = event.event().getRecurrenceId() == null
                ? uid
                : uid + "#"
                        + CalendarTimes.written(event.event().getRecurrenceId().getValue());
        if (uids.add(key)) return true;
        event.refuse(BookingLocation.Part.UID, uid + " a second time", "an id that no other event of the calendar has");
        return false;
    }

    private void noteReplacement(LocatedEvent event) {
        if (event.event().getRecurrenceId() == null) return;
        if (event.event().getRecurrenceId().getRange() != null) {
            event.refuse("RECURRENCE-ID", "RANGE", "a change of one time only, without RANGE");
        }
        start(event, "RECURRENCE-ID", event.event().getRecurrenceId().getValue())
                .ifPresent(start -> replaced.computeIfAbsent(event.uid(), uid -> new HashSet<>())
                        .add(start.near()));
    }

    private Optional<Start> start(LocatedEvent event) {
        if (event.event().getDateStart() == null) {
            event.refuse(BookingLocation.Part.START, "(no DTSTART)", "a start such as DTSTART:20270514T093000");
            return Optional.empty();
        }
        return start(event, "DTSTART", event.event().getDateStart().getValue());
    }

    private Optional<Start> start(LocatedEvent event, String name, ICalDate date) {
        try {
            LocalDateTime local = CalendarTimes.local(date);
            if (CalendarTimes.utc(date)) return Optional.of(new Start(local, ZoneOffset.UTC.getRules(), false));
            if (!date.hasTime())
                return Optional.of(new Start(local, zones.salonZone().getRules(), true));
            return zones.rules(event, event.lines().named(name).get(0), local)
                    .map(rules -> new Start(local, rules, false));
        } catch (DateTimeException noSuchTime) {
            event.refuse(name, CalendarTimes.written(date), "a date and time of the calendar, such as 20270514T093000");
            return Optional.empty();
        }
    }

    /** An end is not needed, but one that contradicts the start means that the event cannot be trusted. */
    private boolean checkEnd(LocatedEvent event, Start start) {
        boolean both = event.event().getDateEnd() != null && event.event().getDuration() != null;
        if (both) {
            event.refuse("DURATION", "DTEND and DURATION", "only one of the two (RFC 5545, 3.6.1)");
            return false;
        }
        if (event.event().getDuration() != null
                && event.event().getDuration().getValue().toMillis() <= 0) {
            event.refuse("DURATION", event.event().getDuration().getValue().toString(), "more than no time");
            return false;
        }
        if (event.event().getDateEnd() == null) return true;
        Optional<Start> end = start(event, "DTEND", event.event().getDateEnd().getValue());
        if (end.isPresent() && !end.get().near().isAfter(start.near())) {
            event.refuse("DTEND", end.get().local().toString(), "an end after the start, " + start.local());
            return false;
        }
        return end.isPresent();
    }
}
