package stirtide.planner.salonfiles.calendar;

import biweekly.util.ICalDate;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.zone.ZoneRules;
import java.util.Optional;
import stirtide.planner.salonfiles.source.BookingLocation;
import stirtide.planner.salonfiles.source.LocalTimes;

/**
 * A local time of an event with the rules of its zone.
 *
 * @param local time as written
 * @param rules rules of its zone
 * @param allDay whether only a date was written
 */
record EventStart(LocalDateTime local, ZoneRules rules, boolean allDay) {
    /** DTSTART of an event, or empty after its problem was reported. */
    static Optional<EventStart> of(LocatedEvent event, CalendarZones zones) {
        if (event.event().getDateStart() == null) {
            event.refuse(BookingLocation.Part.START, "(no DTSTART)", "a start such as DTSTART:20270514T093000");
            return Optional.empty();
        }
        return of(event, zones, "DTSTART", event.event().getDateStart().getValue());
    }

    /** A time of the property with a name, or empty after its problem was reported. */
    static Optional<EventStart> of(LocatedEvent event, CalendarZones zones, String name, ICalDate date) {
        try {
            LocalDateTime local = CalendarTimes.local(date);
            if (CalendarTimes.utc(date)) return Optional.of(new EventStart(local, ZoneOffset.UTC.getRules(), false));
            if (!date.hasTime())
                return Optional.of(new EventStart(local, zones.salonZone().getRules(), true));
            return zones.rules(event, event.lines().named(name).get(0), local)
                    .map(rules -> new EventStart(local, rules, false));
        } catch (DateTimeException noSuchTime) {
            event.refuse(name, CalendarTimes.written(date), "a date and time of the calendar, such as 20270514T093000");
            return Optional.empty();
        }
    }

    /** The instant meant most likely. */
    Instant near() {
        return LocalTimes.near(local, rules);
    }

    /** The date in the zone of the salon. */
    LocalDate date(ZoneId salonZone) {
        return allDay ? local.toLocalDate() : near().atZone(salonZone).toLocalDate();
    }
}
