package stirtide.planner.salonfiles;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stirtide.events.day.Booking;

/** Calendars made by chance, read against a reckoning of their own, and then damaged. */
class SeededCalendarTest {
    private static final LocalDate DAY = LocalDate.of(2027, 5, 14);
    private static final int CALENDARS = 60;
    private static final int MUTANTS_EACH = 4;
    private static final List<String> RULE_PARTS = List.of(
            "BYMONTH=13",
            "BYMONTHDAY=40",
            "BYMONTHDAY=-1",
            "INTERVAL=0",
            "INTERVAL=2147483647",
            "COUNT=2147483647",
            "BYDAY=9FR",
            "BYDAY=XX",
            "BYSETPOS=-1",
            "BYHOUR=0,99",
            "BYWEEKNO=53",
            "BYYEARDAY=-366",
            "UNTIL=00000000",
            "FREQ=SECONDLY");

    /** A series that takes place every so many days. */
    private record Series(String uid, LocalDate first, int everyDays, int count, boolean weekly) {
        boolean isOnDay() {
            long days = ChronoUnit.DAYS.between(first, DAY);
            return days >= 0 && days % everyDays == 0 && days / everyDays < count;
        }

        String text(int minute) {
            String interval = weekly ? "FREQ=WEEKLY;INTERVAL=" + everyDays / 7 : "FREQ=DAILY;INTERVAL=" + everyDays;
            String ends = count == Integer.MAX_VALUE ? "" : ";COUNT=" + count;
            String start = DateTimeFormatter.BASIC_ISO_DATE.format(first);
            return CalendarText.service(
                    uid, "DTSTART:" + start + "T09" + String.format("%02d", minute) + "00", "RRULE:" + interval + ends);
        }
    }

    @TempDir
    Path temp;

    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23, 24, 25})
    void the_series_on_the_day_are_those_a_plain_count_of_days_gives(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < CALENDARS; i++) {
            List<Series> all = series(random);
            List<String> expected = all.stream()
                    .filter(Series::isOnDay)
                    .map(each -> each.uid().substring(0, 2))
                    .toList();
            assertThat(folder(all).accepted(Optional.of(DAY)).bookings())
                    .extracting(Booking::bookingUid)
                    .filteredOn(uid -> !uid.equals("z"))
                    .extracting(uid -> uid.substring(0, 2))
                    .containsExactlyElementsOf(expected);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {31, 32, 33})
    void a_damaged_calendar_is_read_or_refused_in_words(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < CALENDARS; i++) {
            TestFolder folder = folder(series(random));
            String good = folder.text("bookings.ics");
            for (int j = 0; j < MUTANTS_EACH; j++) {
                folder.withCalendar(mutant(good, random));
                FolderResult answer = SalonFolder.read(temp, Optional.of(DAY));
                if (!(answer instanceof FolderResult.Rejected rejected)) continue;
                assertThat(rejected.problems()).isNotEmpty().allSatisfy(problem -> {
                    assertThat(problem.file()).isEqualTo("bookings.ics");
                    assertThat(problem.accepted()).isNotBlank().doesNotContain("Exception", "Error", "java");
                });
            }
        }
    }

    private static String mutant(String good, Random random) {
        List<String> lines = new ArrayList<>(List.of(good.split("\n", -1)));
        int at = random.nextInt(lines.size());
        switch (random.nextInt(4)) {
            case 0 -> lines.remove(at);
            case 1 -> lines.add(at, lines.get(random.nextInt(lines.size())));
            case 2 ->
                lines.set(
                        at,
                        lines.get(at).substring(0, random.nextInt(lines.get(at).length() + 1)));
            default ->
                lines.replaceAll(line -> line.startsWith("RRULE")
                        ? line + ";" + RULE_PARTS.get(random.nextInt(RULE_PARTS.size()))
                        : line);
        }
        return String.join("\n", lines);
    }

    private TestFolder folder(List<Series> all) {
        List<String> events = new ArrayList<>();
        for (Series each : all) events.add(each.text(events.size()));
        events.add(CalendarText.service("z", "DTSTART:20270514T170000"));
        return new TestFolder(temp).withCalendar(CalendarText.calendar(events.toArray(String[]::new)));
    }

    private static List<Series> series(Random random) {
        List<Series> all = new ArrayList<>();
        int size = 1 + random.nextInt(6);
        for (int i = 0; i < size; i++) {
            boolean weekly = random.nextBoolean();
            int every = weekly ? 7 * (1 + random.nextInt(4)) : 1 + random.nextInt(5);
            // Half of the series begin so that the day is one of theirs unless they end before it.
            long back = random.nextBoolean() ? (long) every * random.nextInt(1500) : random.nextInt(15_000);
            int count = random.nextBoolean() ? Integer.MAX_VALUE : 1 + random.nextInt(2000);
            LocalDate first = DAY.minusDays(Math.min(back, 20_000 / every * every));
            all.add(new Series("s" + i + "@test", first, every, count, weekly));
        }
        return all;
    }
}
