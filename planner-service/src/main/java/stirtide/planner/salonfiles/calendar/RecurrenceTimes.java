package stirtide.planner.salonfiles.calendar;

import biweekly.util.Google2445Utils;
import biweekly.util.ICalDate;
import biweekly.util.Recurrence;
import biweekly.util.com.google.ical.iter.RecurrenceIterator;
import biweekly.util.com.google.ical.values.DateValue;
import biweekly.util.com.google.ical.values.TimeValue;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.zone.ZoneRules;
import java.util.ArrayList;
import java.util.Date;
import java.util.List;
import java.util.TimeZone;
import org.jspecify.annotations.Nullable;
import stirtide.planner.salonfiles.source.LocalTimes;

/**
 * Expands a repetition rule in local time. The rule is stepped as if the zone were UTC, so that no clock change moves a
 * time of day; its UNTIL is compared afterwards, in the right zone.
 */
final class RecurrenceTimes {
    private static final TimeZone PLAIN = TimeZone.getTimeZone("UTC");

    private RecurrenceTimes() {}

    /** Local times of the rule, the first of them maybe being {@code first}, up to the end given. */
    static List<LocalDateTime> times(Recurrence rule, LocalDateTime first, ZoneRules zone, LocalDateTime end) {
        Recurrence endless = new Recurrence.Builder(rule).until((ICalDate) null).build();
        ICalDate start = new ICalDate(Date.from(first.toInstant(ZoneOffset.UTC)), true);
        RecurrenceIterator steps = Google2445Utils.createRecurrenceIterator(endless, start, PLAIN);
        List<LocalDateTime> times = new ArrayList<>();
        while (steps.hasNext()) {
            LocalDateTime next = local(steps.next());
            if (next.isAfter(end) || isPast(rule.getUntil(), next, zone)) break;
            times.add(next);
        }
        return times;
    }

    private static boolean isPast(@Nullable ICalDate until, LocalDateTime local, ZoneRules zone) {
        if (until == null) return false;
        LocalDateTime last = CalendarTimes.local(until);
        if (!until.hasTime()) return local.toLocalDate().isAfter(last.toLocalDate());
        if (!CalendarTimes.utc(until)) return local.isAfter(last);
        return LocalTimes.near(local, zone).isAfter(last.toInstant(ZoneOffset.UTC));
    }

    private static LocalDateTime local(DateValue value) {
        LocalDateTime day = LocalDateTime.of(value.year(), value.month(), value.day(), 0, 0);
        if (!(value instanceof TimeValue time)) return day;
        return day.plusHours(time.hour()).plusMinutes(time.minute()).plusSeconds(time.second());
    }
}
