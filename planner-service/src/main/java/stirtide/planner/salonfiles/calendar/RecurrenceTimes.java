package stirtide.planner.salonfiles.calendar;

import biweekly.util.Google2445Utils;
import biweekly.util.ICalDate;
import biweekly.util.Recurrence;
import biweekly.util.com.google.ical.iter.RecurrenceIterator;
import biweekly.util.com.google.ical.values.DateValue;
import biweekly.util.com.google.ical.values.DateValueImpl;
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
    /** Enough for a daily rule with COUNT over five centuries. */
    private static final int MOST_STEPS = 200_000;

    /** Enough for every minute of three days. */
    static final int MOST_TIMES = 5_000;

    private static final TimeZone PLAIN = TimeZone.getTimeZone("UTC");

    private RecurrenceTimes() {}

    /**
     * Local times of the rule in a range, the first of them maybe being {@code first}. Nothing outside the range is kept.
     *
     * @param from start of the range
     * @param end end of the range, itself inside
     * @throws IllegalArgumentException when the rule has impossible parts, or takes place too often to be followed
     */
    static List<LocalDateTime> times(
            Recurrence rule, LocalDateTime first, ZoneRules zone, LocalDateTime from, LocalDateTime end) {
        if (RuleParts.impossible(rule).isPresent()) throw new IllegalArgumentException("impossible parts");
        try {
            return stepped(rule, first, zone, from, end);
        } catch (Error brokenInside) {
            // The library throws assertion errors for rules it does not expect, and may run out of stack or memory.
            throw new IllegalArgumentException("a rule the library cannot follow", brokenInside);
        }
    }

    private static List<LocalDateTime> stepped(
            Recurrence rule, LocalDateTime first, ZoneRules zone, LocalDateTime from, LocalDateTime end) {
        Recurrence endless = new Recurrence.Builder(rule).until((ICalDate) null).build();
        ICalDate start = new ICalDate(Date.from(first.toInstant(ZoneOffset.UTC)), true);
        RecurrenceIterator steps = Google2445Utils.createRecurrenceIterator(endless, start, PLAIN);
        // A rule with COUNT or BYSETPOS must be stepped from its start to be counted.
        boolean countable = rule.getCount() != null || !rule.getBySetPos().isEmpty();
        if (!countable && from.isAfter(first)) {
            steps.advanceTo(new DateValueImpl(from.getYear(), from.getMonthValue(), from.getDayOfMonth()));
        }
        List<LocalDateTime> times = new ArrayList<>();
        for (int taken = 0; steps.hasNext(); taken++) {
            LocalDateTime next = local(steps.next());
            if (next.isAfter(end) || isPast(rule.getUntil(), next, zone)) break;
            if (!next.isBefore(from)) times.add(next);
            if (taken >= MOST_STEPS || times.size() > MOST_TIMES) {
                throw new IllegalArgumentException("too many times");
            }
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
