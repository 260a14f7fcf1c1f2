package stirtide.planner.salonfiles.calendar;

import biweekly.util.DateTimeComponents;
import biweekly.util.ICalDate;
import java.time.DateTimeException;
import java.time.LocalDateTime;

/** Times of a calendar as they are written, before any zone is applied. */
final class CalendarTimes {
    private CalendarTimes() {}

    /**
     * The local time as written; a date is its midnight.
     *
     * @throws DateTimeException when no calendar has such a date or time
     */
    static LocalDateTime local(ICalDate date) {
        DateTimeComponents parts = date.getRawComponents();
        if (parts == null) throw new DateTimeException("not a date");
        return LocalDateTime.of(
                parts.getYear(),
                parts.getMonth(),
                parts.getDate(),
                date.hasTime() ? parts.getHour() : 0,
                date.hasTime() ? parts.getMinute() : 0,
                date.hasTime() ? parts.getSecond() : 0);
    }

    /** Whether the time was written in UTC. */
    static boolean utc(ICalDate date) {
        return date.getRawComponents() != null
                && date.hasTime()
                && date.getRawComponents().isUtc();
    }

    /** The time as written, for people. */
    static String written(ICalDate date) {
        DateTimeComponents parts = date.getRawComponents();
        return parts == null ? date.toString() : parts.toString(date.hasTime(), false);
    }
}
