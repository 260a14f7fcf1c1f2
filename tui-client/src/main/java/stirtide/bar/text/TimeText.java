package stirtide.bar.text;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.Month;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** Times and countdowns as the bar reads them: 24 hours, rounded down, never more than there is. */
public final class TimeText {
    private static final List<String> DAYS = Stream.of(DayOfWeek.values())
            .map(day -> day.getDisplayName(TextStyle.SHORT, Locale.ENGLISH))
            .toList();
    private static final List<String> MONTHS = Stream.of(Month.values())
            .map(month -> month.getDisplayName(TextStyle.SHORT, Locale.ENGLISH))
            .toList();
    private static final int MINUTE_SECONDS = 60;
    private static final int HOUR_SECONDS = 3600;

    private TimeText() {}

    /** {@code 11:44}. */
    public static String minute(Instant instant, ZoneId zone) {
        return minute(instant.atZone(zone));
    }

    /** {@code Fri 14 May  11:42:07}. */
    public static String clock(Instant instant, ZoneId zone) {
        ZonedDateTime at = instant.atZone(zone);
        return DAYS.get(at.getDayOfWeek().ordinal()) + " " + at.getDayOfMonth() + " "
                + MONTHS.get(at.getMonthValue() - 1) + "  " + minute(at) + ":" + two(at.getSecond());
    }

    private static String minute(ZonedDateTime at) {
        return two(at.getHour()) + ":" + two(at.getMinute());
    }

    /**
     * What is left until a deadline: {@code 21:30} in minutes and seconds, {@code 1:05 h} from an hour on, and
     * {@code +02:10} when the deadline has passed.
     */
    public static String left(Instant deadline, Instant now) {
        // Floor, also below zero: a deadline missed by half a second is missed.
        long seconds = Math.floorDiv(Duration.between(now, deadline).toMillis(), 1000L);
        String sign = seconds < 0 ? "+" : "";
        return sign + span(Math.abs(seconds));
    }

    /** {@code 01:12} in minutes and seconds, {@code 1:05 h} from an hour on; seconds 0 or more. */
    public static String span(long seconds) {
        if (seconds >= HOUR_SECONDS) {
            return seconds / HOUR_SECONDS + ":" + two(seconds % HOUR_SECONDS / MINUTE_SECONDS) + " h";
        }
        return two(seconds / MINUTE_SECONDS) + ":" + two(seconds % MINUTE_SECONDS);
    }

    // Called several times a frame: a formatter would be slow.
    private static String two(long number) {
        return number < 10 ? "0" + number : Long.toString(number);
    }

    /** How long ago the last message came: {@code 7 s}, {@code 01:12}. */
    public static String age(long seconds) {
        return seconds < MINUTE_SECONDS ? seconds + " s" : span(seconds);
    }
}
