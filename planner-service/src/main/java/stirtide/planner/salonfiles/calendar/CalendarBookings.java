package stirtide.planner.salonfiles.calendar;

import biweekly.util.ICalDate;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import stirtide.events.day.Booking;
import stirtide.events.day.ClientTests;
import stirtide.events.setup.Menu;
import stirtide.planner.salonfiles.source.BookingCandidate;
import stirtide.planner.salonfiles.source.BookingLocation;
import stirtide.planner.salonfiles.source.FileProblem;
import stirtide.planner.salonfiles.source.LocalTimes;
import stirtide.planner.salonfiles.source.ProblemCollector;
import stirtide.planner.salonfiles.source.SourceFile;

/** Turns the events of a calendar into bookings, one for each time they take place. */
final class CalendarBookings {
    /** As many as bookings.json may hold. */
    private static final int MOST_ON_DAY = 2_000;

    private static final DateTimeFormatter BASIC = DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmm");

    private final CalendarZones zones;
    private final Menu menu;
    private final Optional<LocalDate> asked;
    private final Set<String> uids = new HashSet<>();
    private final Map<String, Set<Instant>> replaced = new HashMap<>();
    private int onDay;
    private boolean crowded;

    CalendarBookings(CalendarZones zones, Menu menu, Optional<LocalDate> asked) {
        this.zones = zones;
        this.menu = menu;
        this.asked = asked;
    }

    /**
     * The bookings of events.
     *
     * @param events events for the color bar
     * @param others events that are not; one of them may replace a repetition of an event that is
     */
    List<BookingCandidate> of(List<LocatedEvent> events, List<LocatedEvent> others) {
        Set<String> ours = events.stream().map(LocatedEvent::uid).collect(Collectors.toSet());
        events.forEach(this::noteReplacement);
        others.stream().filter(each -> ours.contains(each.uid())).forEach(this::noteReplacement);
        List<BookingCandidate> candidates = new ArrayList<>();
        for (LocatedEvent event : events) if (!crowded) candidates.addAll(counted(event, of(event)));
        return candidates;
    }

    /** The rest of a calendar with too many bookings on the day is not looked at. */
    private List<BookingCandidate> counted(LocatedEvent event, List<BookingCandidate> found) {
        onDay +=
                asked.isEmpty() ? 0 : (int) found.stream().filter(this::isOnDay).count();
        crowded = onDay > MOST_ON_DAY;
        if (!crowded) return found;
        event.refuse(
                BookingLocation.Part.START,
                "more than " + MOST_ON_DAY + " bookings on " + asked.get(),
                "at most " + MOST_ON_DAY + " bookings on one day");
        return List.of();
    }

    private boolean isOnDay(BookingCandidate candidate) {
        return candidate.date().equals(asked.orElseThrow());
    }

    private List<BookingCandidate> of(LocatedEvent event) {
        // What does not take place on the day is only counted: its mistakes must not keep the salon from its day.
        Optional<List<BookingCandidate>> elsewhere = elsewhere(event);
        if (elsewhere.isPresent()) return elsewhere.get();
        if (!checkUid(event)) return List.of();
        Optional<EventStart> start = EventStart.of(event, zones);
        if (start.isEmpty() || !checkEnd(event, start.get())) return List.of();
        return candidates(event, start.get());
    }

    /** Whether an event takes place on the day asked for, or may do so as far as it can be read. */
    boolean touches(LocatedEvent event) {
        return elsewhere(event).isEmpty();
    }

    /** What becomes of an event that does not take place on the day asked for; empty when it does, or may do so. */
    private Optional<List<BookingCandidate>> elsewhere(LocatedEvent event) {
        if (asked.isEmpty()) return Optional.empty();
        ProblemCollector problems = new ProblemCollector();
        List<BookingCandidate> found = candidates(event.reportedTo(new SourceFile("", 0, problems)));
        boolean touches = problems.none() ? found.stream().anyMatch(this::isOnDay) : mayTouch(event);
        return touches ? Optional.empty() : Optional.of(found);
    }

    /** Whether an event may take place on the day asked for, judged by its dates alone. */
    boolean mayTouch(LocatedEvent event) {
        if (asked.isEmpty() || event.event().getDateStart() == null) return true;
        boolean replaces = !event.lines().named("RECURRENCE-ID").isEmpty();
        if (replaces && event.event().getRecurrenceId() == null) return true;
        ICalDate start = event.event().getDateStart().getValue();
        if (CalendarTimes.maybeOn(start, asked.get())) return true;
        if (!event.repeats()) return false;
        return CalendarTimes.local(start).toLocalDate().isBefore(asked.get());
    }

    private static SourceFile unheard() {
        return new SourceFile("", 0, new ProblemCollector());
    }

    private List<BookingCandidate> candidates(LocatedEvent event) {
        return EventStart.of(event, zones)
                .map(start -> candidates(event, start))
                .orElse(List.of());
    }

    private List<BookingCandidate> candidates(LocatedEvent event, EventStart start) {
        if (!event.repeats()) return List.of(candidate(event, start, event.uid()));
        if (asked.isEmpty() && !event.cancelled()) {
            event.refuse(
                    "RRULE", "a booking that repeats", "a date to be named, because repetitions have no only date");
            return List.of();
        }
        if (asked.isEmpty()) return List.of(candidate(event, start, event.uid()));
        // Of what is left out anyway one for each date is kept, so that no calendar fills the memory.
        Set<LocalDate> elsewhere = new HashSet<>();
        EventRecurrence repetition = new EventRecurrence(event, zones, start.local(), start.rules());
        Set<Instant> others = replaced.getOrDefault(event.uid(), Set.of());
        return repetition.around(asked.get()).stream()
                .map(local -> new EventStart(local, start.rules(), start.allDay()))
                .filter(each -> !others.contains(each.near()))
                .map(each -> candidate(event, each, event.uid() + "#" + BASIC.format(each.local())))
                .filter(each -> isOnDay(each) || elsewhere.add(each.date()))
                .toList();
    }

    private BookingCandidate candidate(LocatedEvent event, EventStart start, String uid) {
        LocalDate date = start.date(zones.salonZone());
        return new BookingCandidate(date, event.cancelled(), event, () -> booking(event, start, uid));
    }

    private Optional<Booking> booking(LocatedEvent event, EventStart start, String uid) {
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

    private static Optional<Instant> instant(LocatedEvent event, EventStart start) {
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
        ICalDate date = event.event().getRecurrenceId().getValue();
        boolean later = asked.isPresent() && isAfterDay(date);
        if (event.event().getRecurrenceId().getRange() != null && !later) {
            event.refuse("RECURRENCE-ID", "RANGE", "a change of one time only, without RANGE");
        }
        boolean near = asked.isEmpty() || CalendarTimes.maybeOn(date, asked.get());
        LocatedEvent heard = near ? event : event.reportedTo(unheard());
        EventStart.of(heard, zones, "RECURRENCE-ID", date)
                .ifPresent(start -> replaced.computeIfAbsent(event.uid(), uid -> new HashSet<>())
                        .add(start.near()));
    }

    private boolean isAfterDay(ICalDate date) {
        return !CalendarTimes.maybeOn(date, asked.get())
                && CalendarTimes.local(date).toLocalDate().isAfter(asked.get());
    }

    /** An end is not needed, but one that contradicts the start means that the event cannot be trusted. */
    private boolean checkEnd(LocatedEvent event, EventStart start) {
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
        Optional<EventStart> end =
                EventStart.of(event, zones, "DTEND", event.event().getDateEnd().getValue());
        if (end.isPresent() && !end.get().near().isAfter(start.near())) {
            event.refuse("DTEND", end.get().local().toString(), "an end after the start, " + start.local());
            return false;
        }
        return end.isPresent();
    }
}
