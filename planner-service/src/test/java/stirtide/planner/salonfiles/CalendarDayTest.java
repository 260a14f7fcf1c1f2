package stirtide.planner.salonfiles;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import stirtide.events.day.Booking;
import stirtide.planner.salonfiles.source.FileProblem;

/** One day out of a calendar that holds other days and other people's appointments as well. */
class CalendarDayTest {
    private static final LocalDate FRIDAY = LocalDate.of(2027, 5, 14);
    private static final String ON_THE_DAY = CalendarText.service("z", "DTSTART:20270514T170000");
    private static final String WEEKLY =
            CalendarText.service("w", "DTSTART;TZID=Europe/Lisbon:20270430T093000", "RRULE:FREQ=WEEKLY");

    @TempDir
    Path temp;

    @ParameterizedTest
    @CsvSource({
        "FREQ=DAILY;BYMONTH=13, BYMONTH=13, from 1 to 12",
        "FREQ=DAILY;BYMONTH=0, BYMONTH=0, from 1 to 12",
        "FREQ=MONTHLY;BYMONTHDAY=40, BYMONTHDAY=40, 'from 1 to 31, or from -31 to -1'",
        "FREQ=MONTHLY;BYMONTHDAY=-32, BYMONTHDAY=-32, 'from 1 to 31, or from -31 to -1'",
        "FREQ=DAILY;INTERVAL=0, INTERVAL=0, from 1 to 9999",
        "FREQ=WEEKLY;INTERVAL=-1, INTERVAL=-1, from 1 to 9999",
        "FREQ=DAILY;INTERVAL=2147483647, INTERVAL=2147483647, from 1 to 9999",
        "FREQ=DAILY;COUNT=0, COUNT=0, 1 or more",
        "FREQ=MONTHLY;BYDAY=60MO, BYDAY=60, from 1 to 53",
        "FREQ=YEARLY;BYWEEKNO=90, BYWEEKNO=90, from 1 to 53",
        "FREQ=YEARLY;BYYEARDAY=400, BYYEARDAY=400, from 1 to 366",
        "FREQ=DAILY;BYHOUR=30, BYHOUR=30, from 0 to 23",
        "FREQ=DAILY;BYMINUTE=70, BYMINUTE=70, from 0 to 59",
        "FREQ=DAILY;BYSECOND=99, BYSECOND=99, from 0 to 60",
        "FREQ=MONTHLY;BYDAY=MO;BYSETPOS=400, BYSETPOS=400, from 1 to 366",
    })
    void a_rule_with_an_impossible_part_is_refused_with_what_is_accepted(String rule, String value, String accepted) {
        FileProblem problem = refused(CalendarText.service("w", "DTSTART:20270514T093000", "RRULE:" + rule));
        assertThat(problem.file()).isEqualTo("bookings.ics");
        assertThat(problem.place()).isEqualTo("line 8 RRULE");
        assertThat(problem.value()).isEqualTo(value);
        assertThat(problem.accepted()).contains(accepted);
    }

    @Test
    void a_described_zone_whose_rule_breaks_the_library_is_refused() {
        String zone = "BEGIN:VTIMEZONE\nTZID:Salon Time\nBEGIN:STANDARD\nDTSTART:20000101T030000\n"
                + "TZOFFSETFROM:+0200\nTZOFFSETTO:+0100\nRRULE:FREQ=YEARLY;BYMONTH=13\nEND:STANDARD\nEND:VTIMEZONE\n";
        FileProblem problem =
                refused(zone, CalendarText.service("a", "DTSTART;TZID=Salon Time:20270514T093000"), ON_THE_DAY);
        assertThat(problem.file()).isEqualTo("bookings.ics");
        assertThat(problem.value()).isEqualTo("(cannot be read)");
        assertThat(problem.accepted()).contains("RFC 5545");
    }

    @Test
    void a_rule_of_every_minute_since_1970_keeps_only_the_days_around() {
        // With all of its 30 million times in memory the reader does not come to an end.
        String everyMinute = CalendarText.service(
                "m", "DTSTART:19700101T000000", "RRULE:FREQ=DAILY;BYHOUR=" + upTo(23) + ";BYMINUTE=" + upTo(59));
        assertThat(read(everyMinute, ON_THE_DAY.replace("Chair 1", "Chair 4"))).hasSize(24 * 60 + 1);
    }

    @Test
    void a_small_file_of_very_many_bookings_is_refused_before_they_fill_the_memory() {
        // Two million times on the day, and as many before and after it.
        String[] everyMinute = new String[1500];
        for (int i = 0; i < everyMinute.length; i++)
            everyMinute[i] = CalendarText.service(
                    "m" + i,
                    "DTSTART:20270510T000000",
                    "RRULE:FREQ=DAILY;BYHOUR=" + upTo(23) + ";BYMINUTE=" + upTo(59));
        FileProblem problem = refused(everyMinute);
        assertThat(problem.value()).isEqualTo("more than 2000 bookings on 2027-05-14");
        assertThat(problem.accepted()).isEqualTo("at most 2000 bookings on one day");
    }

    @Test
    void a_rule_that_takes_place_too_often_is_refused() {
        String everySecond = CalendarText.service(
                "m",
                "DTSTART:20270101T000000",
                "RRULE:FREQ=DAILY;BYHOUR=" + upTo(23) + ";BYMINUTE=" + upTo(59) + ";BYSECOND=" + upTo(59));
        assertThat(refused(everySecond).place()).isEqualTo("line 8 RRULE");
    }

    @Test
    void a_repetition_changed_into_something_else_leaves_the_day() {
        String haircut = CalendarText.event(
                "w",
                "DTSTART;TZID=Europe/Lisbon:20270514T093000",
                "RECURRENCE-ID;TZID=Europe/Lisbon:20270514T093000",
                "CATEGORIES:Haircut");
        assertThat(read(WEEKLY, haircut, ON_THE_DAY))
                .extracting(Booking::bookingUid)
                .containsExactly("z");
    }

    @Test
    void the_iana_zone_wins_over_a_description_of_the_same_name() {
        String zone = "BEGIN:VTIMEZONE\nTZID:Europe/Lisbon\nBEGIN:STANDARD\nDTSTART:16010101T030000\n"
                + "TZOFFSETFROM:+0700\nTZOFFSETTO:+0700\nEND:STANDARD\nEND:VTIMEZONE\n";
        assertThat(read(zone, CalendarText.service("a", "DTSTART;TZID=Europe/Lisbon:20270514T093000")))
                .extracting(Booking::start)
                .containsExactly(Instant.parse("2027-05-14T08:30:00Z"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "DTSTART:20270601T093000\nDTEND:20270601T083000",
                "DTSTART:20270601T093000\nDTEND:20270601T103000\nDURATION:PT1H",
                "DTSTART:20270601T093000\nDURATION:-PT1H",
                "DTSTART:20270601T093000\nDURATION:one hour",
                "DTSTART:20270513T093000\nDURATION:one hour",
                "DTSTART;TZID=Salon Time:20270601T093000",
                "DTSTART;VALUE=DATE:20270601",
                "DTSTART:20270601T093000\nRRULE:FREQ=SECONDLY",
                "DTSTART:20270601T093000\nRRULE:FREQ=DAILY;BYMONTH=13",
                "DTSTART:20270503T093000\nRRULE:FREQ=WEEKLY\nDURATION:one hour",
                "DTSTART:20270503T093000\nRRULE:FREQ=WEEKLY\nDTEND:20270503T083000",
                "DTSTART:20270503T093000\nRRULE:FREQ=WEEKLY\nEXDATE;TZID=Salon Time:20270510T093000",
                "DTSTART:20270601T093000\nRECURRENCE-ID;TZID=Salon Time:20270601T093000",
            })
    void an_entry_on_another_day_never_refuses_the_day(String lines) {
        assertThat(read(CalendarText.service("a", lines), ON_THE_DAY))
                .extracting(Booking::bookingUid)
                .containsExactly("z");
    }

    @Test
    void an_id_that_another_day_has_as_well_does_not_refuse_the_day() {
        String other = CalendarText.service("z", "DTSTART:20270601T093000");
        assertThat(read(other, ON_THE_DAY)).hasSize(1);
        assertThat(read(ON_THE_DAY, other, other)).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "DTSTART:20270101T093000\nRRULE:FREQ=SECONDLY",
                "DTSTART:20270101T093000\nRRULE:FREQ=DAYLY",
                "DTSTART:20270101T093000\nRDATE:never",
                "DTSTART:20270601T093000\nRECURRENCE-ID:never",
                "DTSTART:tomorrow",
            })
    void an_entry_that_may_be_on_the_day_is_refused(String lines) {
        assertThat(refused(CalendarText.service("a", lines), ON_THE_DAY).place())
                .startsWith("line ");
    }

    private static String upTo(int last) {
        StringBuilder numbers = new StringBuilder("0");
        for (int i = 1; i <= last; i++) numbers.append(',').append(i);
        return numbers.toString();
    }

    private FileProblem refused(String... components) {
        return new TestFolder(temp)
                .withCalendar(CalendarText.calendar(components))
                .rejected(Optional.of(FRIDAY))
                .problems()
                .get(0);
    }

    private List<Booking> read(String... components) {
        return new TestFolder(temp)
                .withCalendar(CalendarText.calendar(components))
                .accepted(Optional.of(FRIDAY))
                .bookings();
    }
}
