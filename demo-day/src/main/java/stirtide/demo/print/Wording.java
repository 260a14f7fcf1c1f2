package stirtide.demo.print;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Times and counts as people at the bar read them. */
public final class Wording {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    private Wording() {}

    /** Time of day, hours and minutes. */
    public static String clock(Instant instant, ZoneId zone) {
        return CLOCK.format(instant.atZone(zone));
    }

    /** "1 bowl", "2 bowls". */
    public static String count(long number, String thing) {
        return number + " " + thing + (number == 1 ? "" : "s");
    }
}
