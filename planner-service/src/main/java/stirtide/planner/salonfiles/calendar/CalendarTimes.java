package stirtide.planner.salonfiles.calendar;

import biweekly.util.DateTimeComponents;
import biweekly.util.ICalDate;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;

/** Times of a calendar as they are written, before any zone is applied. */
final class CalendarTimes {
    /** Offsets of zones lie up to 26 hours apart. */
    private static final int FARTHEST_DAYS = 2;

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

    /** Whether a time may lie on a day in some zone; one that nobody can read may. */
    static boolean maybeOn(ICalDate date, LocalDate day) {
        try {
            long days = ChronoUnit.DAYS.between(day, local(date).toLocalDate());
            return Math.abs(days) <= FARTHEST_DAYS;
        } catch (DateTimeException noSuchTime) {
            return true;
        }
    }
}
