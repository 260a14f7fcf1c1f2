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
import stirtide.planner.salonfiles.source.FileProblem;

/** Files that are JSON but say something that cannot be. */
class BrokenValueTest {
    private static final String DUNE = "directions/dune-powder.json";

    private static final String CLAY_AGAIN =
            "{\"menuId\": \"clay-sweep\", \"name\": \"Clay\", \"zones\": [{\"zone\": \"all\","
                    + "\"technique\": \"freehand\", \"lightenerId\": \"reef-clay\", \"strengthPercent\": 3, \"ratio\": \"1:1\","
                    + "\"baseGrams\": 20, \"applyMinutes\": 9, \"processMinutes\": 9, \"section\": 1}]}";

    @TempDir
    Path temp;

    static Stream<BrokenFolder> salons() {
        return Stream.of(
                salon(
                        "wrong type",
                        "\"chairs\": 4",
                        "\"chairs\": \"four\"",
                        "/chairs line 6:13",
                        "\"four\"",
                        "whole number of chairs"),
                salon(
                        "a null",
                        "\"chairs\": 4",
                        "\"chairs\": null",
                        "/chairs line 6:13",
                        "null",
                        "whole number of chairs"),
                salon("half a chair", "\"chairs\": 4", "\"chairs\": 4.5", "/chairs line 6:13", "4.5", "from 1 to 100"),
                salon(
                        "unknown key",
                        "\"chairs\": 4",
                        "\"chairs\": 4, \"stools\": 2",
                        "/stools line 6:",
                        "\"stools\"",
                        "one of the keys salonId, name, zone"),
                salon("missing key", "\"currency\": \"EUR\",", "", "/currency line 1:1", "(missing)", "ISO 4217"),
                salon(
                        "missing zone",
                        "\"zone\": \"Europe/Lisbon\",",
                        "",
                        "/zone line 1:1",
                        "(missing)",
                        "IANA time zone"),
                salon(
                        "unknown zone",
                        "Europe/Lisbon",
                        "Europe/Lisboa",
                        "/zone line 4:11",
                        "\"Europe/Lisboa\"",
                        "IANA time zone"),
                salon("unknown currency", "\"EUR\"", "\"EUX\"", "/currency line 5:15", "\"EUX\"", "ISO 4217"),
                salon("unknown role", "\"colorist\"", "\"dyer\"", "/people/3/role line", "\"dyer\"", "\"colorist\""),
                salon(
                        "person twice",
                        "\"milo\"",
                        "\"greta\"",
                        "/people/3/personId line",
                        "\"greta\" a second time",
                        "first stands in salon.json /people/2/personId"),
                salon(
                        "unknown weekday",
                        "[\"mon\"]",
                        "[\"mo\"]",
                        "/people/3/shifts/0/days/0 line",
                        "\"mo\"",
                        "\"mon\""),
                salon(
                        "shift that ends before it starts",
                        "\"08:30\"",
                        "\"17:30\"",
                        "/people/0/shifts/0/to line",
                        "\"17:00\"",
                        "after \"17:30\""),
                salon(
                        "time that is none",
                        "\"08:30\"",
                        "\"8:30\"",
                        "/people/0/shifts/0/from line",
                        "\"8:30\"",
                        "local time"),
                salon(
                        "break outside its shift",
                        "\"12:30\"",
                        "\"08:00\"",
                        "/people/0/shifts/0/breaks/0 line",
                        "08:00",
                        "inside its shift, \"08:30\" to \"17:00\""),
                salon(
                        "break that ends before it starts",
                        "\"14:30\"",
                        "\"13:30\"",
                        "/people/1/shifts/0/breaks/0/to line",
                        "\"13:30\"",
                        "after \"14:00\""),
                salon(
                        "shifts that overlap",
                        "\"13:00\" },\n        {",
                        "\"15:00\" },\n        {",
                        "/people/2/shifts/1/from line",
                        "\"14:00\"",
                        "after the other shift"),
                salon(
                        "d above e",
                        "\"divisionGrams\": 0.01",
                        "\"divisionGrams\": 0.2",
                        "/scales/0/ranges/0/divisionGrams line",
                        "0.2",
                        "at most the verification interval of 0.1 g"),
                salon(
                        "d of no scale",
                        "\"divisionGrams\": 0.01",
                        "\"divisionGrams\": 0.03",
                        "/scales/0/ranges/0/divisionGrams line",
                        "0.03",
                        "1, 2 or 5 times a power of ten"),
                salon(
                        "more intervals than class II has",
                        "\"maximumGrams\": 600",
                        "\"maximumGrams\": 10000.1",
                        "/scales/0/ranges/0/maximumGrams line",
                        "10000.1",
                        "at most 100000 verification intervals"),
                salon(
                        "minimum above maximum",
                        "\"minimumGrams\": 0.5",
                        "\"minimumGrams\": 600",
                        "/scales/0/ranges/0/maximumGrams line",
                        "600",
                        "more than the minimum load"),
                salon(
                        "negative grams",
                        "\"usableGrams\": 90",
                        "\"usableGrams\": -90",
                        "/bowls/0/usableGrams line",
                        "-90",
                        "grams: more than 0"),
                salon(
                        "grams finer than a milligram",
                        "\"usableGrams\": 90",
                        "\"usableGrams\": 90.0001",
                        "/bowls/0/usableGrams line",
                        "90.0001",
                        "at most three decimals"),
                salon(
                        "residue as large as the bowl",
                        "\"residueGrams\": 3",
                        "\"residueGrams\": 90",
                        "/bowls/0/residueGrams line",
                        "90",
                        "less than the usable 90 g"));
    }

    static Stream<BrokenFolder> products() {
        return Stream.of(
                at(
                        "developers.json",
                        "developer twice",
                        "foam-30",
                        "foam-20",
                        "/developers/2/developerId line 5:",
                        "\"foam-20\" a second time",
                        "/developers/1/developerId"),
                at(
                        "developers.json",
                        "volumes against per cent",
                        "\"volumes\": 20",
                        "\"volumes\": 30",
                        "/developers/1/volumes line 4:",
                        "30",
                        "20, because 6 % is 20 vol (6 %)"),
                at(
                        "developers.json",
                        "above the legal ceiling",
                        "\"strengthPercent\": 9",
                        "\"strengthPercent\": 12.01",
                        "/developers/2/strengthPercent line 5:",
                        "12.01",
                        "at most 12 (40 vol)"),
                at(
                        "developers.json",
                        "finer than a hundredth",
                        "\"strengthPercent\": 9",
                        "\"strengthPercent\": 9.001",
                        "/developers/2/strengthPercent line 5:",
                        "9.001",
                        "at most two decimals"),
                at(
                        "developers.json",
                        "price as a number",
                        "\"8.9\"",
                        "8.9",
                        "/developers/2/packPrice line 5:",
                        "8.9",
                        "a price as text"),
                at(
                        "developers.json",
                        "price finer than a cent",
                        "\"8.9\"",
                        "\"8.905\"",
                        "/developers/2/packPrice line 5:",
                        "\"8.905\"",
                        "at most 2 decimals, as EUR has"),
                at(
                        DUNE,
                        "reversed window",
                        "\"1:1.5\"",
                        "\"1:3.5\"",
                        "/techniques/0/lowestRatio line 13:",
                        "\"1:3.5\"",
                        "at most the highest ratio, \"1:3\""),
                at(
                        DUNE,
                        "developer first",
                        "\"1:1.5\"",
                        "\"1.5:1\"",
                        "/techniques/0/lowestRatio line 13:",
                        "\"1.5:1\"",
                        "lightener first"),
                at(
                        DUNE,
                        "no developer",
                        "\"1:1.5\"",
                        "\"1:0\"",
                        "/techniques/0/lowestRatio line 13:",
                        "\"1:0\"",
                        "more developer than none"),
                at(
                        DUNE,
                        "ratio by volume",
                        "\"ratioBy\": \"weight\"",
                        "\"ratioBy\": \"volume\"",
                        "/ratioBy line 5:",
                        "\"volume\"",
                        "no dependable density"),
                at(
                        DUNE,
                        "ratio in milliliters",
                        "\"1:1.5\"",
                        "\"1:1.5 ml\"",
                        "/techniques/0/lowestRatio line 13:",
                        "\"1:1.5 ml\"",
                        "no unit"),
                at(
                        DUNE,
                        "technique twice",
                        "\"scalp\"",
                        "\"foil\"",
                        "/techniques/1/technique line 20:",
                        "\"foil\" a second time",
                        "no other technique"),
                at(
                        DUNE,
                        "zero minutes",
                        "\"mixMinutes\": 4",
                        "\"mixMinutes\": 0",
                        "/mixMinutes line 7:",
                        "0",
                        "from 1 to 30"),
                at(
                        DUNE,
                        "life shorter than the mixing",
                        "\"workingLifeMinutes\": 45",
                        "\"workingLifeMinutes\": 6",
                        "/workingLifeMinutes line 6:",
                        "6",
                        "more than the 6 minutes"),
                at(
                        DUNE,
                        "strength ceiling above the law",
                        "\"highestStrengthPercent\": 9",
                        "\"highestStrengthPercent\": 13",
                        "/techniques/0/highestStrengthPercent line 15:",
                        "13",
                        "at most 12 (40 vol)"),
                at(
                        "directions/reef-clay.json",
                        "lightener twice",
                        "reef-clay",
                        "dune-powder",
                        "/lightenerId line 2:",
                        "\"dune-powder\" a second time",
                        "first stands in directions/dune-powder.json"));
    }

    static Stream<BrokenFolder> menus() {
        return Stream.of(
                menu(
                        "menu id twice",
                        "\"entries\": [",
                        "\"entries\": [" + CLAY_AGAIN + ",",
                        "/entries/2/menuId line",
                        "\"clay-sweep\" a second time",
                        "no other menu"),
                menu(
                        "zone twice",
                        "\"sides\"",
                        "\"back\"",
                        "/entries/0/zones/1/zone line",
                        "\"back\" a second time",
                        "no other zone"),
                menu(
                        "unknown lightener",
                        "\"reef-clay\"",
                        "\"reef\"",
                        "/entries/1/zones/0/lightenerId line",
                        "\"reef\"",
                        "dune-powder, reef-clay"),
                menu(
                        "unknown technique",
                        "\"freehand\"",
                        "\"painted\"",
                        "/entries/1/zones/0/technique line",
                        "\"painted\"",
                        "directions of reef-clay: freehand"),
                menu(
                        "ratio outside the window",
                        "\"1:1.25\"",
                        "\"1:2.001\"",
                        "/entries/1/zones/0/ratio line",
                        "\"1:2.001\"",
                        "from 1:1 to 1:2"),
                menu(
                        "strength above the ceiling",
                        "6,\n          \"volumes\": 20",
                        "9.01,\n          \"volumes\": 30",
                        "/entries/0/zones/0/strengthPercent line",
                        "9.01",
                        "at most 30 vol (9 %)"),
                menu(
                        "strength above the shelf",
                        "4.5",
                        "9.5",
                        "/entries/1/zones/0/strengthPercent line",
                        "9.5",
                        "blended from the shelf, 0 vol (0 %) to 30 vol (9 %)"),
                menu(
                        "negative grams",
                        "32.5",
                        "-32.5",
                        "/entries/0/zones/0/baseGrams line 17:24",
                        "-32.5",
                        "grams: more than 0"),
                menu("no grams", "32.5", "0", "/entries/0/zones/0/baseGrams line 17:24", "0", "grams: more than 0"),
                menu(
                        "zero minutes",
                        "\"applyMinutes\": 18",
                        "\"applyMinutes\": 0",
                        "/entries/0/zones/1/applyMinutes line",
                        "0",
                        "from 1 to 240"),
                menu(
                        "longer than the longest processing time",
                        "\"processMinutes\": 25",
                        "\"processMinutes\": 31",
                        "/entries/1/zones/0/processMinutes line",
                        "31 (51 minutes from first application to rinse)",
                        "within 50"),
                menu(
                        "rinsed together too late",
                        "\"section\": 2",
                        "\"section\": 1",
                        "/entries/0/zones/0/processMinutes line",
                        "30 (70 minutes",
                        "rinse in more sections"),
                menu(
                        "other category that is a service",
                        "[\"Haircut\"]",
                        "[\"half-foils\"]",
                        "/otherCategories/0 line",
                        "\"half-foils\"",
                        "no menu id"),
                menu(
                        "factor with a capital",
                        "\"short\"",
                        "\"Short\"",
                        "/lengthFactors/Short line",
                        "\"Short\"",
                        "small letters"));
    }

    static Stream<BrokenFolder> bookings() {
        return Stream.of(
                booking(
                        "unknown menu entry",
                        "\"clay-sweep\"",
                        "\"mud-sweep\"",
                        "/bookings/0/menuId line 5:",
                        "mud-sweep",
                        "half-foils, clay-sweep"),
                booking(
                        "unknown chair",
                        "\"chair\": 2",
                        "\"chair\": 9",
                        "/bookings/0/chair line 6:",
                        "chair 9",
                        "from 1 to 4"),
                booking(
                        "unknown length",
                        "\"long\"",
                        "\"endless\"",
                        "/bookings/1/length line",
                        "endless",
                        "long, medium, short"),
                booking(
                        "unknown density",
                        "\"thick\"",
                        "\"woolly\"",
                        "/bookings/1/density line",
                        "woolly",
                        "fine, medium, thick"),
                booking(
                        "stylist who is not at work",
                        "\"greta\"",
                        "\"milo\"",
                        "/bookings/1/stylistId line",
                        "milo",
                        "ilka, tomas, greta"),
                booking(
                        "booking twice",
                        "\"b-3\"",
                        "\"b-1\"",
                        "/bookings/1/bookingUid line",
                        "\"b-1\" a second time",
                        "/bookings/0/bookingUid"),
                booking(
                        "a name instead of initials",
                        "\"K.O.\"",
                        "\"Katharina Ohneland\"",
                        "/bookings/1/clientRef line",
                        "Katharina",
                        "at most 12 characters"),
                booking(
                        "a day no calendar has",
                        "05-14T09:30",
                        "02-30T09:30",
                        "/bookings/1/start line",
                        "2027-02-30T09:30",
                        "a date and time of the calendar"),
                booking(
                        "bookings on two dates",
                        "05-14T09:30",
                        "05-15T09:30",
                        "",
                        "bookings on 2 dates",
                        "2027-05-14, 2027-05-15"),
                new BrokenFolder(
                        "one chair twice at a time",
                        f -> f.with("bookings.json", "\"chair\": 2", "\"chair\": 1")
                                .with("bookings.json", "T10:15+01:00", "T08:30Z"),
                        "bookings.json",
                        "/bookings/1/chair line",
                        "chair 1 a second time",
                        "first stands in bookings.json /bookings/0"),
                new BrokenFolder(
                        "nobody takes place",
                        f -> f.write(
                                "bookings.json",
                                f.text("bookings.json")
                                        .replace("\"chair\"", "\"status\": \"cancelled\", \"chair\"")
                                        .replace(",\n      \"status\": \"cancelled\"\n", "\n")),
                        "bookings.json",
                        "",
                        "no booking that takes place",
                        "not cancelled"),
                new BrokenFolder(
                        "an empty list",
                        f -> f.write("bookings.json", "{\"bookings\": []}"),
                        "bookings.json",
                        "/bookings line 1:",
                        "a list of 0",
                        "one to 2000 bookings"));
    }

    @ParameterizedTest
    @MethodSource({"salons", "products", "menus", "bookings"})
    void a_value_that_cannot_be_is_refused_with_its_place_and_what_would_be_accepted(BrokenFolder broken) {
        broken.check(temp, Optional.empty());
    }

    @Test
    void a_date_without_bookings_is_refused_with_the_dates_that_have_some() {
        FolderResult.Rejected rejected = new TestFolder(temp).rejected(Optional.of(LocalDate.of(2027, 5, 21)));
        assertThat(rejected.lines())
                .containsExactly("bookings.json: no booking on 2027-05-21 is not accepted; "
                        + "accepted: a date with bookings: 2027-05-14");
    }

    @Test
    void a_day_on_which_nobody_mixes_is_refused() {
        TestFolder folder = new TestFolder(temp)
                .with("salon.json", "\"wed\", \"thu\", \"fri\"", "\"wed\"")
                .with("salon.json", "\"fri\", \"sat\"", "\"sat\"");
        assertThat(folder.rejected(Optional.empty()).lines())
                .hasSize(1)
                .first()
                .asString()
                .startsWith("salon.json /people line 9:13: no person who mixes on 2027-05-14");
    }

    @Test
    void problems_of_all_files_are_told_together_in_the_order_of_the_files() {
        TestFolder folder = new TestFolder(temp)
                .with("salon.json", "\"chairs\": 4", "\"chairs\": 0")
                .with("menu.json", "32.5", "-1")
                .with("developers.json", "\"8.9\"", "8")
                .with("bookings.json", "\"chair\": 1", "\"chair\": -1");
        assertThat(folder.rejected(Optional.empty()).problems())
                .extracting(FileProblem::file)
                .containsExactly("salon.json", "developers.json", "menu.json", "bookings.json");
    }

    @Test
    void more_than_twenty_problems_are_counted() {
        TestFolder folder = new TestFolder(temp);
        folder.write("bookings.json", "{\"bookings\": [" + "{},".repeat(9) + "{}]}");
        FolderResult.Rejected rejected = folder.rejected(Optional.empty());
        assertThat(rejected.problems()).hasSize(20);
        assertThat(rejected.lines()).hasSize(21).last().isEqualTo("and 40 more");
    }

    private static BrokenFolder salon(
            String name, String from, String to, String place, String value, String accepted) {
        return at("salon.json", name, from, to, place, value, accepted);
    }

    private static BrokenFolder menu(String name, String from, String to, String place, String value, String accepted) {
        return at("menu.json", name, from, to, place, value, accepted);
    }

    private static BrokenFolder booking(
            String name, String from, String to, String place, String value, String accepted) {
        return at("bookings.json", name, from, to, place, value, accepted);
    }

    private static BrokenFolder at(
            String file, String name, String from, String to, String place, String value, String accepted) {
        return new BrokenFolder(
                file + ": " + name, folder -> folder.with(file, from, to), file, place, value, accepted);
    }
}
