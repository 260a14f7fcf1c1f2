package stirtide.planner.salonfiles;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Calendars that cannot be read, or say something that cannot be. Every event begins on line 4. */
class BrokenCalendarTest {
    private static final String NINE = "DTSTART:20270514T090000";

    @TempDir
    Path temp;

    static Stream<BrokenFolder> structures() {
        return Stream.of(
                broken("garbage", "xx\u0007\u0000yy", "line 1", "xx", "such as SUMMARY:text"),
                broken(
                        "an event without calendar",
                        CalendarText.service("a", NINE),
                        "line 1",
                        "BEGIN:VEVENT",
                        "BEGIN:VCALENDAR first"),
                broken("a property before the calendar", "UID:a\n", "line 1", "UID:a", "BEGIN:VCALENDAR first"),
                broken(
                        "an empty calendar",
                        CalendarText.calendar(),
                        "",
                        "a calendar without events",
                        "at least one VEVENT"),
                broken(
                        "truncated",
                        "BEGIN:VCALENDAR\nVERSION:2.0\nBEGIN:VEVENT\nUID:a\nDTST",
                        "line 5",
                        "DTST",
                        "such as SUMMARY:text"),
                broken(
                        "truncated between lines",
                        "BEGIN:VCALENDAR\nVERSION:2.0\nBEGIN:VEVENT\nUID:a\n",
                        "line 5",
                        "(the file ends here)",
                        "END:VEVENT first"),
                broken(
                        "events inside each other",
                        "BEGIN:VCALENDAR\nBEGIN:VEVENT\nBEGIN:VEVENT\n",
                        "line 3",
                        "BEGIN:VEVENT",
                        "END:VEVENT first"),
                broken(
                        "ends crossed",
                        "BEGIN:VCALENDAR\nBEGIN:VEVENT\nEND:VCALENDAR\n",
                        "line 3",
                        "END:VCALENDAR",
                        "END:VEVENT first"),
                broken(
                        "a line without colon",
                        CalendarText.calendar(CalendarText.event("a", NINE, "no colon here")),
                        "line 8",
                        "no colon here",
                        "such as SUMMARY:text"),
                broken(
                        "a message that cancels",
                        CalendarText.calendar("METHOD:CANCEL\n", CalendarText.service("a", NINE)),
                        "METHOD",
                        "CANCEL",
                        "PUBLISH or REQUEST"));
    }

    static Stream<BrokenFolder> events() {
        return Stream.of(
                service("no start", "SUMMARY:x", "line 4 DTSTART", "(no DTSTART)", "DTSTART:20270514T093000"),
                service(
                        "a start that is none",
                        "DTSTART:tomorrow",
                        "line 7 DTSTART",
                        "DTSTART:tomorrow",
                        "20270514T093000"),
                service(
                        "a day no calendar has",
                        "DTSTART:20270230T090000",
                        "line 7 DTSTART",
                        "20270230T090000",
                        "a date and time of the calendar"),
                service(
                        "an hour no clock has",
                        "DTSTART:20270514T250000",
                        "line 7 DTSTART",
                        "20270514T250000",
                        "a date and time of the calendar"),
                service("seconds", "DTSTART:20270514T090030", "line 7 DTSTART", "09:00:30", "whole minute"),
                service(
                        "a whole day",
                        "DTSTART;VALUE=DATE:20270514",
                        "line 7 DTSTART",
                        "(the whole day)",
                        "a start with a time"),
                service(
                        "a zone nobody knows",
                        "DTSTART;TZID=Salon Time:20270514T090000",
                        "line 7 DTSTART",
                        "TZID=Salon Time",
                        "an IANA zone such as Europe/Lisbon, or a zone that a VTIMEZONE"),
                service(
                        "an end before the start",
                        NINE + "\nDTEND:20270514T083000",
                        "line 8 DTEND",
                        "08:30",
                        "an end after the start"),
                service(
                        "an end that is none",
                        NINE + "\nDTEND:20270514",
                        "line 8 DTEND",
                        "2027-05-14T00:00",
                        "an end after the start"),
                service(
                        "an end and a duration",
                        NINE + "\nDTEND:20270514T093000\nDURATION:PT1H",
                        "line 9 DURATION",
                        "DTEND and DURATION",
                        "only one of the two"),
                service(
                        "a duration that is none",
                        NINE + "\nDURATION:one hour",
                        "line 8 DURATION",
                        "DURATION:one hour",
                        "PT1H30M"),
                service(
                        "a duration backwards",
                        NINE + "\nDURATION:-PT1H",
                        "line 8 DURATION",
                        "-PT1H",
                        "more than no time"),
                service(
                        "a rule without frequency",
                        NINE + "\nRRULE:COUNT=2",
                        "line 8 RRULE",
                        "FREQ=",
                        "FREQ=DAILY, WEEKLY, MONTHLY or YEARLY"),
                service(
                        "a rule every second",
                        NINE + "\nRRULE:FREQ=SECONDLY",
                        "line 8 RRULE",
                        "SECONDLY",
                        "FREQ=DAILY, WEEKLY, MONTHLY or YEARLY"),
                service(
                        "a frequency nobody knows",
                        NINE + "\nRRULE:FREQ=DAYLY",
                        "line 8 RRULE",
                        "FREQ=DAYLY",
                        "FREQ=WEEKLY;BYDAY=FR"),
                service(
                        "two rules",
                        NINE + "\nRRULE:FREQ=DAILY\nRRULE:FREQ=WEEKLY",
                        "line 8 RRULE",
                        "more than one rule",
                        "one RRULE"),
                service(
                        "an exception that is none",
                        NINE + "\nRRULE:FREQ=DAILY\nEXDATE:never",
                        "line 9 EXDATE",
                        "EXDATE:never",
                        "20270514T093000"));
    }

    static Stream<BrokenFolder> fields() {
        return Stream.of(
                event(
                        "no id",
                        "BEGIN:VEVENT\n" + NINE + "\nEND:VEVENT\n",
                        "line 4 UID",
                        "(no UID)",
                        "1 to 200 characters"),
                event(
                        "an id twice",
                        CalendarText.service("a", NINE) + CalendarText.service("a", NINE),
                        "line 13 UID",
                        "a a second time",
                        "no other event"),
                field(
                        "no category",
                        "LOCATION:1\nDESCRIPTION:length: long\\ndensity: thick",
                        "line 4 CATEGORIES",
                        "(no category)",
                        "half-foils, clay-sweep"),
                field(
                        "a category nobody knows",
                        "CATEGORIES:Lunch\nLOCATION:1\nDESCRIPTION:length: long\\ndensity: thick",
                        "line 8 CATEGORIES",
                        "Lunch",
                        "otherCategories in menu.json"),
                field(
                        "two services at once",
                        "CATEGORIES:half-foils,clay-sweep\nLOCATION:1\nDESCRIPTION:length: long\\ndensity: thick",
                        "line 8 CATEGORIES",
                        "half-foils,clay-sweep",
                        "one category of"),
                field(
                        "no chair",
                        "CATEGORIES:half-foils\nDESCRIPTION:length: long\\ndensity: thick",
                        "line 4 LOCATION",
                        "(no location)",
                        "Chair 3"),
                field(
                        "a chair without number",
                        "CATEGORIES:half-foils\nLOCATION:by the window\nDESCRIPTION:length: long\\ndensity: thick",
                        "line 9 LOCATION",
                        "by the window",
                        "Chair 3"),
                field(
                        "a chair too many",
                        "CATEGORIES:half-foils\nLOCATION:Chair 7\nDESCRIPTION:length: long\\ndensity: thick",
                        "line 9 LOCATION",
                        "chair 7",
                        "from 1 to 4"),
                field(
                        "no density",
                        "CATEGORIES:half-foils\nLOCATION:1\nDESCRIPTION:length: long",
                        "line 10 DESCRIPTION",
                        "(no line \"density: ...\")",
                        "fine, medium, thick"),
                field(
                        "a length nobody knows",
                        "CATEGORIES:half-foils\nLOCATION:1\nDESCRIPTION:length: endless\\ndensity: thick",
                        "line 10 DESCRIPTION",
                        "length: endless",
                        "long, medium, short"),
                field(
                        "a length twice",
                        "CATEGORIES:half-foils\nLOCATION:1\nDESCRIPTION:length: long\\ndensity: thick\\nlength: short",
                        "line 10 DESCRIPTION",
                        "\"length:\" a second time",
                        "each of these lines once"),
                field(
                        "a full name",
                        "CATEGORIES:half-foils\nLOCATION:1\nDESCRIPTION:length: long\\ndensity: thick\\nclient: Katharina Ohneland",
                        "line 10 DESCRIPTION",
                        "Katharina",
                        "initials or a number"),
                field(
                        "minutes that are none",
                        "CATEGORIES:half-foils\nLOCATION:1\nDESCRIPTION:length: long\\ndensity: thick\\nlater: a bit",
                        "line 10 DESCRIPTION",
                        "later: a bit",
                        "whole minutes from 0 to 240"),
                field(
                        "a stylist nobody knows",
                        "CATEGORIES:half-foils\nLOCATION:1\nDESCRIPTION:length: long\\ndensity: thick\\nstylist: nobody",
                        "line 10 DESCRIPTION",
                        "nobody",
                        "ilka, tomas, greta"));
    }

    @ParameterizedTest
    @MethodSource({"structures", "events", "fields"})
    void a_calendar_that_cannot_be_is_refused_with_its_line_and_what_would_be_accepted(BrokenFolder broken) {
        broken.check(temp, Optional.of(LocalDate.of(2027, 5, 14)));
    }

    @Test
    void a_repeating_booking_needs_a_date() {
        FolderResult.Rejected rejected = new TestFolder(temp)
                .withCalendar(CalendarText.calendar(CalendarText.service("a", NINE, "RRULE:FREQ=DAILY")))
                .rejected(Optional.empty());
        assertThat(rejected.problems().get(0).place()).isEqualTo("line 8 RRULE");
        assertThat(rejected.problems().get(0).accepted()).startsWith("a date to be named");
    }

    private static BrokenFolder service(String name, String lines, String place, String value, String accepted) {
        return broken(name, CalendarText.calendar(CalendarText.service("a", lines)), place, value, accepted);
    }

    private static BrokenFolder field(String name, String lines, String place, String value, String accepted) {
        return broken(name, CalendarText.calendar(CalendarText.event("a", NINE, lines)), place, value, accepted);
    }

    private static BrokenFolder event(String name, String events, String place, String value, String accepted) {
        return broken(name, CalendarText.calendar(events), place, value, accepted);
    }

    private static BrokenFolder broken(String name, String calendar, String place, String value, String accepted) {
        return new BrokenFolder(name, folder -> folder.withCalendar(calendar), "bookings.ics", place, value, accepted);
    }
}
