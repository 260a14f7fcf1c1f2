package stirtide.planner.salonfiles;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stirtide.events.day.Booking;
import stirtide.planner.salonfiles.source.FileProblem;

/** Local times that never come or come twice, in zones of the IANA time zone database. */
class ClockChangeTest {
    private static final String EVERY_DAY = "\"mon\", \"tue\", \"wed\", \"thu\", \"fri\", \"sat\", \"sun\"";
    private static final String OUTLOOK_ZONE = "BEGIN:VTIMEZONE\nTZID:Salon Time\n"
            + "BEGIN:STANDARD\nDTSTART:16010101T030000\nTZOFFSETFROM:+0200\nTZOFFSETTO:+0100\n"
            + "RRULE:FREQ=YEARLY;BYMONTH=10;BYDAY=-1SU\nEND:STANDARD\n"
            + "BEGIN:DAYLIGHT\nDTSTART:16010101T020000\nTZOFFSETFROM:+0100\nTZOFFSETTO:+0200\n"
            + "RRULE:FREQ=YEARLY;BYMONTH=3;BYDAY=-1SU\nEND:DAYLIGHT\nEND:VTIMEZONE\n";

    @TempDir
    Path temp;

    @ParameterizedTest
    @CsvSource({
        "Europe/Paris, 2027-03-28T02:30, 2027-03-28T03:00",
        "Australia/Lord_Howe, 2027-10-03T02:15, 2027-10-03T02:30",
        "America/Sao_Paulo, 2018-11-04T00:30, 2018-11-04T01:00",
        "Pacific/Apia, 2011-12-30T10:00, 2011-12-31T00:00",
        "Asia/Kathmandu, 1986-01-01T00:10, 1986-01-01T00:15",
    })
    void a_skipped_time_is_refused_with_the_next_one(String zone, String start, String next) {
        FileProblem problem = problem(zone, start);
        assertThat(problem.file()).isEqualTo("bookings.json");
        assertThat(problem.place()).isEqualTo("/bookings/0/start line 1:80");
        assertThat(problem.value()).isEqualTo("\"" + start + "\"");
        assertThat(problem.accepted()).contains("never comes").endsWith("the next time is " + next);
    }

    @ParameterizedTest
    @CsvSource({
        "Europe/Paris, 2027-10-31T02:30, 2027-10-31T02:30+02:00 or 2027-10-31T02:30+01:00",
        "Australia/Lord_Howe, 2027-04-04T01:45, 2027-04-04T01:45+11:00 or 2027-04-04T01:45+10:30",
        "America/Sao_Paulo, 2018-02-17T23:30, 2018-02-17T23:30-02:00 or 2018-02-17T23:30-03:00",
    })
    void a_repeated_time_is_refused_with_both_offsets(String zone, String start, String both) {
        FileProblem problem = problem(zone, start);
        assertThat(problem.place()).isEqualTo("/bookings/0/start line 1:80");
        assertThat(problem.accepted()).contains("comes twice").endsWith("one of " + both);
    }

    @ParameterizedTest
    @CsvSource({
        "Europe/Paris, 2027-10-31T02:30+01:00, 2027-10-31T01:30:00Z",
        "Australia/Lord_Howe, 2027-10-03T02:30, 2027-10-02T15:30:00Z",
        "America/Sao_Paulo, 2018-11-04T01:00, 2018-11-04T03:00:00Z",
        "Pacific/Apia, 2011-12-31T00:30, 2011-12-30T10:30:00Z",
        "Asia/Kathmandu, 2027-05-14T09:30, 2027-05-14T03:45:00Z",
    })
    void a_time_that_occurs_once_is_read(String zone, String start, Instant expected) {
        assertThat(folder(zone, start).accepted(Optional.empty()).bookings())
                .extracting(Booking::start)
                .containsExactly(expected);
    }

    @Test
    void a_calendar_may_not_use_a_skipped_time() {
        FileProblem problem = calendarProblem("2027-03-28", "DTSTART;TZID=Europe/Lisbon:20270328T013000");
        assertThat(problem.place()).isEqualTo("line 7 DTSTART");
        assertThat(problem.value()).isEqualTo("2027-03-28T01:30");
        assertThat(problem.accepted()).contains("never comes").endsWith("the next time is 2027-03-28T02:00");
    }

    @Test
    void a_calendar_may_not_use_a_repeated_time() {
        FileProblem problem = calendarProblem("2027-10-31", "DTSTART:20271031T013000");
        assertThat(problem.place()).isEqualTo("line 7 DTSTART");
        assertThat(problem.accepted()).contains("comes twice").endsWith("one of 20271031T003000Z or 20271031T013000Z");
    }

    @Test
    void a_repetition_that_falls_on_a_skipped_time_is_refused() {
        FileProblem problem = calendarProblem("2027-03-28", "DTSTART:20270321T013000\nRRULE:FREQ=WEEKLY");
        assertThat(problem.value()).isEqualTo("2027-03-28T01:30");
    }

    @Test
    void a_shift_may_not_end_at_a_skipped_time() {
        TestFolder folder = folder("Europe/Paris", "2027-03-28T10:00")
                .with("salon.json", "\"from\": \"08:30\"", "\"from\": \"02:30\"");
        FileProblem problem = folder.rejected(Optional.empty()).problems().get(0);
        assertThat(problem.place()).startsWith("/people/0/shifts/0/from line");
        assertThat(problem.accepted()).endsWith("the next such time is 2027-03-28T03:00");
    }

    @ParameterizedTest
    @CsvSource({
        "20270514T093000, 2027-05-14T07:30:00Z",
        "20271214T093000, 2027-12-14T08:30:00Z",
        "20270327T093000, 2027-03-27T08:30:00Z",
        "20270328T093000, 2027-03-28T07:30:00Z",
    })
    void a_zone_the_calendar_describes_itself_is_followed(String local, Instant expected) {
        TestFolder folder = everyDay("Europe/Lisbon")
                .withCalendar(CalendarText.calendar(
                        OUTLOOK_ZONE, CalendarText.service("a", "DTSTART;TZID=Salon Time:" + local)));
        assertThat(folder.accepted(Optional.empty()).bookings())
                .extracting(Booking::start)
                .containsExactly(expected);
    }

    @Test
    void a_zone_the_calendar_describes_itself_has_skipped_times_too() {
        TestFolder folder = everyDay("Europe/Lisbon")
                .withCalendar(CalendarText.calendar(
                        OUTLOOK_ZONE, CalendarText.service("a", "DTSTART;TZID=Salon Time:20270328T023000")));
        FileProblem problem = folder.rejected(Optional.empty()).problems().get(0);
        assertThat(problem.place()).isEqualTo("line 22 DTSTART");
        assertThat(problem.accepted()).endsWith("the next time is 2027-03-28T03:00");
    }

    @Test
    void a_described_zone_without_offsets_is_refused() {
        String zone = OUTLOOK_ZONE.replace("TZOFFSETTO:+0100\n", "").replace("TZOFFSETTO:+0200\n", "");
        TestFolder folder = everyDay("Europe/Lisbon")
                .withCalendar(CalendarText.calendar(
                        zone, CalendarText.service("a", "DTSTART;TZID=Salon Time:20270514T093000")));
        FileProblem problem = folder.rejected(Optional.empty()).problems().get(0);
        assertThat(problem.value()).isEqualTo("TZID=Salon Time");
        assertThat(problem.accepted()).startsWith("a VTIMEZONE with offsets");
    }

    private FileProblem calendarProblem(String date, String lines) {
        return everyDay("Europe/Lisbon")
                .withCalendar(CalendarText.calendar(CalendarText.service("a", lines)))
                .rejected(Optional.of(LocalDate.parse(date)))
                .problems()
                .get(0);
    }

    private FileProblem problem(String zone, String start) {
        return folder(zone, start).rejected(Optional.empty()).problems().get(0);
    }

    private TestFolder folder(String zone, String start) {
        return everyDay(zone)
                .write(
                        "bookings.json",
                        "{\"bookings\": [{\"bookingUid\": \"a\", \"menuId\": \"half-foils\", \"chair\": 1, "
                                + "\"start\": \"" + start + "\", \"length\": \"long\", \"density\": \"fine\"}]}");
    }

    private TestFolder everyDay(String zone) {
        return new TestFolder(temp)
                .with("salon.json", "Europe/Lisbon", zone)
                .with("salon.json", "\"tue\", \"wed\", \"thu\", \"fri\"", EVERY_DAY);
    }
}
