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
import stirtide.events.day.Booking;

/** Calendars that are read. */
class CalendarTest {
    private static final LocalDate FRIDAY = LocalDate.of(2027, 5, 14);

    @TempDir
    Path temp;

    @ParameterizedTest
    @CsvSource({
        "DTSTART:20270514T093000, 2027-05-14T08:30:00Z",
        "DTSTART:20270514T093000Z, 2027-05-14T09:30:00Z",
        "DTSTART;TZID=Europe/Paris:20270514T093000, 2027-05-14T07:30:00Z",
        "DTSTART;TZID=\"Europe/Paris\":20270514T093000, 2027-05-14T07:30:00Z",
        "DTSTART;TZID=/Asia/Kathmandu:20270514T184500, 2027-05-14T13:00:00Z",
        "dtstart;tzid=America/Sao_Paulo;value=DATE-TIME:20270514T093000, 2027-05-14T12:30:00Z",
    })
    void a_start_is_read_in_utc_in_a_named_zone_or_in_the_salon(String start, Instant expected) {
        assertThat(starts(CalendarText.service("a", start))).containsExactly(expected);
    }

    @ParameterizedTest
    @CsvSource({
        "RRULE:FREQ=WEEKLY, 1",
        "RRULE:FREQ=WEEKLY;COUNT=3, 1",
        "RRULE:FREQ=WEEKLY;COUNT=2, 0",
        "RRULE:FREQ=WEEKLY;INTERVAL=2, 1",
        "RRULE:FREQ=WEEKLY;INTERVAL=3, 0",
        "RRULE:FREQ=WEEKLY;UNTIL=20270514T083000Z, 1",
        "RRULE:FREQ=WEEKLY;UNTIL=20270514T082959Z, 0",
        "RRULE:FREQ=WEEKLY;UNTIL=20270514, 1",
        "RRULE:FREQ=DAILY;UNTIL=20270513, 0",
        "RRULE:FREQ=MONTHLY;BYDAY=2FR, 1",
        "RRULE:FREQ=MONTHLY;BYDAY=-1FR, 0",
        "RRULE:FREQ=YEARLY;BYMONTH=5;BYMONTHDAY=14, 1",
        "RDATE;TZID=Europe/Lisbon:20270514T093000, 1",
        "RDATE:20270514T083000Z, 1",
        "RDATE;VALUE=PERIOD:20270514T083000Z/PT2H, 1",
        "RDATE:20270521T093000, 0",
    })
    void a_repeating_booking_takes_place_on_the_day_if_its_rule_says_so(String rule, int times) {
        String weekly = CalendarText.service("w", "DTSTART;TZID=Europe/Lisbon:20270430T093000", rule);
        String always = CalendarText.service("z", "DTSTART:20270514T170000").replace("Chair 1", "Chair 4");
        List<Booking> read = read(weekly, always);
        assertThat(read).hasSize(times + 1);
        if (times == 1) {
            assertThat(read.get(0).bookingUid()).isEqualTo("w#20270514T0930");
            assertThat(read.get(0).start()).isEqualTo("2027-05-14T08:30:00Z");
        }
    }

    @ParameterizedTest
    @CsvSource({
        "EXDATE;TZID=Europe/Lisbon:20270514T093000, 1",
        "'EXDATE:20270507T083000Z,20270514T083000Z', 1",
        "EXDATE;VALUE=DATE:20270514, 1",
        "EXDATE;TZID=Europe/Lisbon:20270507T093000, 2",
        "EXDATE;TZID=Europe/Lisbon:20270514T100000, 2",
    })
    void an_exception_takes_a_repetition_off_the_day(String exception, int bookings) {
        String weekly =
                CalendarText.service("w", "DTSTART;TZID=Europe/Lisbon:20270430T093000", "RRULE:FREQ=WEEKLY", exception);
        assertThat(read(weekly, CalendarText.service("z", "DTSTART:20270514T170000")))
                .hasSize(bookings);
    }

    @Test
    void a_repetition_keeps_its_time_of_day_over_a_clock_change() {
        assertThat(starts(CalendarText.service("w", "DTSTART;TZID=Europe/Lisbon:20270101T093000", "RRULE:FREQ=WEEKLY")))
                .containsExactly(Instant.parse("2027-05-14T08:30:00Z"));
    }

    @Test
    void a_single_repetition_may_be_moved() {
        String weekly = CalendarText.service("w", "DTSTART;TZID=Europe/Lisbon:20270430T093000", "RRULE:FREQ=WEEKLY");
        String moved = CalendarText.service(
                "w", "DTSTART;TZID=Europe/Lisbon:20270514T140000", "RECURRENCE-ID;TZID=Europe/Lisbon:20270514T093000");
        assertThat(read(weekly, moved))
                .extracting(Booking::start)
                .containsExactly(Instant.parse("2027-05-14T13:00:00Z"));
    }

    @Test
    void a_single_repetition_may_be_cancelled() {
        String weekly = CalendarText.service("w", "DTSTART;TZID=Europe/Lisbon:20270430T093000", "RRULE:FREQ=WEEKLY");
        String off = CalendarText.service(
                "w", "DTSTART:20270514T083000Z", "RECURRENCE-ID:20270514T083000Z", "STATUS:CANCELLED");
        FolderResult.Read read = new TestFolder(temp)
                .withCalendar(CalendarText.calendar(weekly, off, CalendarText.service("z", "DTSTART:20270514T170000")))
                .accepted(Optional.of(FRIDAY));
        assertThat(read.bookings()).extracting(Booking::bookingUid).containsExactly("z");
        assertThat(read.notes()).contains("1 cancelled booking left out");
    }

    @Test
    void the_example_of_rfc_5545_is_read() {
        // RFC 5545, section 3.6.1, first example, with the fields of a service added and its category listed as a
        // service
        String event = CalendarText.event(
                "19970901T130000Z-123401@example.com",
                "DTSTART:19970903T163000Z",
                "DTEND:19970903T190000Z",
                "SUMMARY:Annual Employee Review",
                "CLASS:PRIVATE",
                "CATEGORIES:BUSINESS,HUMAN RESOURCES,half-foils",
                "LOCATION:1",
                "DESCRIPTION:length: long\\ndensity: thick");
        TestFolder folder = new TestFolder(temp).withCalendar(CalendarText.calendar(event));
        FolderResult.Read read = folder.accepted(Optional.empty());
        assertThat(read.setup().date()).isEqualTo("1997-09-03");
        assertThat(read.bookings()).extracting(Booking::start).containsExactly(Instant.parse("1997-09-03T16:30:00Z"));
        assertThat(read.bookings().get(0).bookingUid()).isEqualTo("19970901T130000Z-123401@example.com");
    }

    @Test
    void examples_of_rfc_5545_without_a_service_are_left_out_by_their_category() {
        // RFC 5545, section 3.4 (Bastille Day Party, here with a category) and section 3.6.1, fourth example
        String party = CalendarText.event(
                "19970610T172345Z-AF23B2@example.com",
                "DTSTART:19970714T170000Z",
                "DTEND:19970715T040000Z",
                "SUMMARY:Bastille Day Party",
                "CATEGORIES:Haircut");
        String festival = CalendarText.event(
                "20070423T123432Z-541111@example.com",
                "DTSTART;VALUE=DATE:20070628",
                "DTEND;VALUE=DATE:20070709",
                "CATEGORIES:Haircut");
        FolderResult.Read read = new TestFolder(temp)
                .withCalendar(
                        CalendarText.calendar(party, festival, CalendarText.service("a", "DTSTART:20270514T090000")))
                .accepted(Optional.empty());
        assertThat(read.bookings()).hasSize(1);
        assertThat(read.notes()).containsExactly("2 appointments that are not for the color bar left out");
    }

    @ParameterizedTest
    @CsvSource({"P15DT5H0M20S", "P7W", "PT1H"})
    void durations_of_rfc_5545_are_read(String duration) {
        // RFC 5545, section 3.3.6: P15DT5H0M20S and P7W
        assertThat(starts(CalendarText.service("a", "DTSTART:20270514T090000", "DURATION:" + duration)))
                .hasSize(1);
    }

    @Test
    void lines_may_be_folded_and_end_in_any_way() {
        String calendar =
                CalendarText.calendar(CalendarText.service("a", "DTSTART;TZID=Europe/\n Lisbon:20270514T0\n\t93000"));
        for (String end : List.of("\n", "\r\n")) {
            FolderResult.Read read = new TestFolder(temp)
                    .withCalendar(calendar.replace("\n", end))
                    .accepted(Optional.empty());
            assertThat(read.bookings())
                    .extracting(Booking::start)
                    .containsExactly(Instant.parse("2027-05-14T08:30:00Z"));
        }
    }

    @Test
    void bookings_on_other_dates_are_left_out_and_counted() {
        FolderResult.Read read = new TestFolder(temp)
                .withCalendar(CalendarText.calendar(
                        CalendarText.service("a", "DTSTART:20270514T090000"),
                        CalendarText.service("b", "DTSTART:20270515T090000"),
                        CalendarText.service("c", "DTSTART:20270328T013000")))
                .accepted(Optional.of(FRIDAY));
        assertThat(read.bookings()).extracting(Booking::bookingUid).containsExactly("a");
        assertThat(read.notes()).containsExactly("2 bookings on other dates left out");
    }

    private List<Instant> starts(String... events) {
        return read(events).stream().map(Booking::start).toList();
    }

    private List<Booking> read(String... events) {
        return new TestFolder(temp)
                .withCalendar(CalendarText.calendar(events))
                .accepted(Optional.of(FRIDAY))
                .bookings();
    }
}
