package stirtide.planner.day.state;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import stirtide.events.setup.DaySetup;

/**
 * The day in the salon's time zone. The planner counts minutes since the start of the day as they pass, so a day on
 * which the clock changes has 1380 or 1500 of them.
 *
 * @param dayStart first instant of the day
 * @param dayEnd first instant of the next day
 * @param zone time zone of the salon
 */
public record DayTime(Instant dayStart, Instant dayEnd, ZoneId zone) {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
    private static final long MINUTE_MILLIS = 60_000;

    /** Some years: what lies farther from the day is no farther for a plan. */
    private static final long FARTHEST_MINUTES = 10_000_000;

    /** The times of a day. */
    public static DayTime of(DaySetup setup) {
        var zone = ZoneId.of(setup.salon().zone());
        return new DayTime(
                setup.date().atStartOfDay(zone).toInstant(),
                setup.date().plusDays(1).atStartOfDay(zone).toInstant(),
                zone);
    }

    /** Whether an instant belongs to the day. */
    public boolean holds(Instant instant) {
        return !instant.isBefore(dayStart) && instant.isBefore(dayEnd);
    }

    /** Whole minutes from the start of the day, rounded down; ten millions at most, either way. */
    public int minuteDown(Instant instant) {
        return near(Math.floorDiv(Duration.between(dayStart, instant).toMillis(), MINUTE_MILLIS));
    }

    /** Whole minutes from the start of the day, rounded up; ten millions at most, either way. */
    public int minuteUp(Instant instant) {
        return near(-Math.floorDiv(-Duration.between(dayStart, instant).toMillis(), MINUTE_MILLIS));
    }

    private static int near(long minutes) {
        return (int) Math.max(-FARTHEST_MINUTES, Math.min(FARTHEST_MINUTES, minutes));
    }

    /** Time of day as the salon's clock shows it: {@code "10:05"}. */
    public String clock(Instant instant) {
        return CLOCK.format(instant.atZone(zone));
    }
}
