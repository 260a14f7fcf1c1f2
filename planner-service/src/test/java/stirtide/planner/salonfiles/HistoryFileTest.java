package stirtide.planner.salonfiles;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stirtide.events.day.Booking;
import stirtide.events.day.ClientTests;
import stirtide.events.setup.AllowancePolicy;
import stirtide.events.setup.MixStrip;
import stirtide.events.setup.PastVisit.PastZone;
import stirtide.events.setup.SwatchTest;
import stirtide.events.setup.UseHistory.AllowanceRule;
import stirtide.events.setup.UseHistory.PastUse;
import stirtide.planner.salonfiles.export.SetupFiles;

/** What a folder says about earlier visits, tests before a service and allowances. */
class HistoryFileTest {
    private static final String HISTORY = "history.json";

    @TempDir
    Path temp;

    private static TestFolder remembering(TestFolder folder) {
        return folder.write(HISTORY, TestFolder.resource("good/history.json"));
    }

    @Test
    void a_history_is_read_whole_and_teaches_grams_where_the_menu_knows_the_zone() {
        var history = remembering(new TestFolder(temp))
                .accepted(Optional.empty())
                .setup()
                .learned();
        var memory = history.remembered();
        assertThat(memory.visits()).singleElement().satisfies(visit -> {
            assertThat(visit.on()).isEqualTo("2027-03-12");
            assertThat(visit.zones())
                    .containsExactly(new PastZone(
                            "back",
                            "foil",
                            "dune-powder",
                            600,
                            2020,
                            62_000,
                            55_500,
                            22,
                            30,
                            Optional.of(34),
                            Optional.of(60),
                            Optional.of(85)));
        });
        assertThat(history.rules())
                .containsExactly(
                        new AllowanceRule("half-foils", "back", Optional.of(40_000), Optional.empty()),
                        new AllowanceRule(
                                "half-foils", "sides", Optional.empty(), Optional.of(LocalDate.of(2027, 1, 4))));
        assertThat(memory.fractionPermille()).contains(850);
        assertThat(history.uses())
                .containsExactly(new PastUse(
                        LocalDate.of(2027, 3, 12), "half-foils", "back", "K.O.", 32_500, 1350, 1200, 55_500, false));
        assertThat(memory.swatches())
                .containsExactly(new SwatchTest(LocalDate.of(2027, 2, 2), "dune-powder", 2000, 600, 30, 50, 75));
        assertThat(memory.strips())
                .containsExactly(new MixStrip(LocalDate.of(2027, 2, 2), "dune-powder", 2000, 600, 100, 5));
    }

    @Test
    void what_is_remembered_is_written_back_as_it_was_read() {
        var given = remembering(new TestFolder(temp)
                        .with(
                                "salon.json",
                                "\"washMinutes\": 8,",
                                "\"washMinutes\": 8, \"allowances\": {\"waitingMinutePrice\": \"0.85\"},"))
                .accepted(Optional.empty());
        var back = new TestFolder(temp);
        SetupFiles.of(given.setup(), given.bookings()).forEach(back::write);
        assertThat(back.accepted(Optional.empty()).setup()).isEqualTo(given.setup());
    }

    @Test
    void a_visit_without_length_and_density_is_remembered_and_teaches_no_grams() {
        var folder = remembering(new TestFolder(temp)).with(HISTORY, "\"length\": \"long\",", "");
        var history = folder.accepted(Optional.empty()).setup().learned();
        assertThat(history.remembered().visits()).hasSize(1);
        assertThat(history.uses()).isEmpty();
    }

    @Test
    void a_folder_without_a_history_remembers_nothing() {
        var setup = new TestFolder(temp).accepted(Optional.empty()).setup();
        assertThat(setup.history()).isEmpty();
        assertThat(setup.allowances()).isEmpty();
    }

    @Test
    void allowances_follow_the_salon_file() {
        var folder = new TestFolder(temp)
                .with(
                        "salon.json",
                        "\"washMinutes\": 8,",
                        "\"washMinutes\": 8, \"allowances\": {\"waitingMinutePrice\": \"0.85\", \"shortGrams\": 8},");
        assertThat(folder.accepted(Optional.empty()).setup().allowances())
                .contains(new AllowancePolicy(Optional.empty(), Optional.of(new BigDecimal("0.85")), 8_000, 365));
    }

    private static final String TESTS =
            "\"clientRef\": \"K.O.\", \"strandTest\": \"2027-05-13T09:00\", \"patchTest\": \"2027-05-12T08:30Z\","
                    + " \"asLastTime\": true,";

    @Test
    void tests_and_the_wish_for_the_last_formula_stand_with_the_booking_in_both_kinds_of_files() {
        var expected = new ClientTests(
                Optional.of(Instant.parse("2027-05-13T08:00:00Z")), Optional.of(Instant.parse("2027-05-12T08:30:00Z")));
        var folder = new TestFolder(temp).with("bookings.json", "\"clientRef\": \"K.O.\",", TESTS);
        var listed = folder.accepted(Optional.empty()).bookings().get(0);
        assertThat(listed.tests()).contains(expected);
        assertThat(listed.asLastTime()).contains(true);
        var calendar = TestFolder.resource("bookings.ics")
                .replace(
                        "DESCRIPTION:client: K.O.",
                        "DESCRIPTION:Strand test: 2027-05-13 09:00\\npatch test: 2027-05-12T09:30\\n\r\n"
                                + " formula: as last time\\nclient: K.O.");
        Booking same = folder.withCalendar(calendar)
                .accepted(Optional.of(LocalDate.of(2027, 5, 14)))
                .bookings()
                .get(0);
        assertThat(same.tests()).contains(expected);
        assertThat(same.asLastTime()).contains(true);
    }

    private static BrokenFolder history(
            String name, String from, String to, String place, String value, String accepted) {
        return new BrokenFolder(
                name, folder -> remembering(folder).with(HISTORY, from, to), HISTORY, place, value, accepted);
    }

    private static BrokenFolder list(String name, String to, String place, String value, String accepted) {
        return new BrokenFolder(
                name,
                folder -> folder.with("bookings.json", "\"clientRef\": \"K.O.\",", to),
                "bookings.json",
                place,
                value,
                accepted);
    }

    private static BrokenFolder calendar(String name, String line, String value, String accepted) {
        return new BrokenFolder(
                name,
                folder -> folder.withCalendar(TestFolder.resource("bookings.ics")
                        .replace("DESCRIPTION:client: K.O.", "DESCRIPTION:" + line + "\\nclient: K.O.")),
                "bookings.ics",
                "line ",
                value,
                accepted);
    }

    private static BrokenFolder salon(String name, String allowances, String place, String value, String accepted) {
        return new BrokenFolder(
                name,
                folder -> folder.with(
                        "salon.json",
                        "\"washMinutes\": 8,",
                        "\"washMinutes\": 8, \"allowances\": {" + allowances + "},"),
                "salon.json",
                place,
                value,
                accepted);
    }

    static Stream<BrokenFolder> broken() {
        return Stream.of(
                history(
                        "no such day",
                        "2027-03-12",
                        "2027-03-32",
                        "/visits/0/date",
                        "2027-03-32",
                        "date of the calendar"),
                history(
                        "more used than mixed",
                        "55.5",
                        "65.5",
                        "/visits/0/zones/0/usedGrams",
                        "65.5",
                        "at most the grams"),
                history(
                        "unknown length",
                        "\"long\"",
                        "\"endless\"",
                        "/visits/0/length",
                        "endless",
                        "one of long, medium"),
                history("no client", "\"K.O.\"", "\"\"", "/visits/0/clientRef", "\"\"", "initials or a number"),
                history("a level of 12", "8.5", "12", "/visits/0/zones/0/levelAfter", "12", "a level from 1 to 10"),
                history(
                        "a ratio of nothing",
                        "1:2.02",
                        "1:0",
                        "/visits/0/zones/0/ratio",
                        "1:0",
                        "more developer than none"),
                history("a pH of 15", "\"ph\": 10", "\"ph\": 15", "/strips/0/ph", "15", "from 0 to 14"),
                history(
                        "an unknown key",
                        "\"strips\"",
                        "\"stripes\"",
                        "/stripes",
                        "stripes",
                        "visits, swatches, strips"),
                history(
                        "a rule for no zone",
                        "\"zone\": \"sides\", \"learned",
                        "\"zone\": \"fringe\", \"learned",
                        "/allowances/1/zone",
                        "fringe",
                        "a zone of the menu entry half-foils"),
                history(
                        "two rules for a zone",
                        "\"zone\": \"sides\", \"learned",
                        "\"zone\": \"back\", \"learned",
                        "/allowances/1/zone",
                        "a second time",
                        "one rule for each zone"),
                history(
                        "a rule that says nothing",
                        ", \"pinnedGrams\": 40",
                        "",
                        "/allowances/0",
                        "an object of 2",
                        "pinnedGrams or learnedFrom"),
                history(
                        "learned from no day",
                        "2027-01-04",
                        "2027-02-30",
                        "/allowances/1/learnedFrom",
                        "2027-02-30",
                        "date of the calendar"),
                history("enough too seldom", "850", "400", "/enoughPermille", "400", "from 500 to 995"),
                list(
                        "a test after the start",
                        "\"patchTest\": \"2027-05-14T10:00\",",
                        "/bookings/1/patchTest",
                        "10:00",
                        "before the start"),
                list(
                        "a test on no day",
                        "\"strandTest\": \"2027-02-30T10:00\",",
                        "/bookings/1/strandTest",
                        "02-30",
                        "date and time of the calendar"),
                list("no flag", "\"asLastTime\": \"yes\",", "/bookings/1/asLastTime", "yes", "true for the formula"),
                calendar("a test in words", "patch test: on Monday", "on Monday", "a local date and time"),
                calendar("a late test", "strand test: 2027-05-14 12:00", "12:00", "before the start"),
                calendar("an unknown formula", "formula: stronger", "stronger", "as last time"),
                salon("too seldom", "\"enoughPermille\": 400", "/allowances/enoughPermille", "400", "from 500 to 995"),
                salon(
                        "waiting for nothing",
                        "\"waitingMinutePrice\": \"0.00\"",
                        "/allowances/waitingMinutePrice",
                        "0.00",
                        "a price above 0"));
    }

    @ParameterizedTest
    @MethodSource("broken")
    void what_cannot_be_is_refused_with_its_place(BrokenFolder broken) {
        broken.check(temp, Optional.of(LocalDate.of(2027, 5, 14)));
    }
}
