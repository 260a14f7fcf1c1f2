package stirtide.planner.salonfiles;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stirtide.events.day.Booking;
import stirtide.events.json.ContractJson;
import stirtide.events.setup.Directions.TechniqueRule;
import stirtide.events.setup.Menu.MenuZone;
import stirtide.events.setup.Person;
import stirtide.events.setup.Scale;
import stirtide.events.setup.Span;

class SalonFolderTest {
    private static final Booking FOILS = new Booking(
            "b-1",
            "half-foils",
            1,
            Instant.parse("2027-05-14T08:30:00Z"),
            "K.O.",
            "long",
            "thick",
            Optional.of("greta"),
            5,
            15,
            Optional.empty(),
            Optional.empty());
    private static final Booking CLAY = new Booking(
            "b-3",
            "clay-sweep",
            2,
            Instant.parse("2027-05-14T09:15:00Z"),
            "",
            "medium",
            "fine",
            Optional.empty(),
            0,
            0,
            Optional.empty(),
            Optional.empty());

    @TempDir
    Path temp;

    @Test
    void a_folder_with_json_bookings_is_read_whole() {
        FolderResult.Read read = new TestFolder(temp).accepted(Optional.empty());
        assertThat(read.setup().date()).isEqualTo("2027-05-14");
        assertThat(read.bookings()).containsExactly(FOILS, CLAY);
        assertThat(read.notes()).containsExactly("1 cancelled booking left out");
        assertThat(read.setup().developers()).extracting("strengthHundredths").containsExactly(300, 600, 900);
        assertThat(read.setup().developers().get(2).packPrice()).isEqualTo(new BigDecimal("8.90"));
        assertThat(read.setup().developers().get(1).countedMilligrams()).contains(2_750_000);
    }

    @Test
    void weights_ratios_and_strengths_become_integers_without_rounding() {
        FolderResult.Read read = new TestFolder(temp).accepted(Optional.empty());
        assertThat(read.setup().menu().entries().get(0).zones())
                .containsExactly(
                        new MenuZone("back", "foil", "dune-powder", 600, 2000, 32_500, 20, 0, 30, 1),
                        new MenuZone("sides", "foil", "dune-powder", 600, 2000, 28_000, 18, 2, 30, 2));
        assertThat(read.setup().menu().lengthPermille())
                .containsEntry("short", 700)
                .containsEntry("long", 1350);
        assertThat(read.setup().directions().get(0).techniques().get(0))
                .isEqualTo(new TechniqueRule("foil", false, 1500, 3000, 900, 60));
        assertThat(read.setup().directions().get(0).countedMilligrams()).contains(1_320_500);
        assertThat(read.setup().salon().scales())
                .containsExactly(new Scale(
                        "bar-left",
                        Scale.AccuracyClass.II,
                        true,
                        Scale.Weighing.TARE_BETWEEN,
                        500,
                        List.of(new Scale.Range(600_000, 10, 100))));
    }

    @Test
    void shifts_of_the_weekday_become_hours_without_breaks() {
        FolderResult.Read read = new TestFolder(temp).accepted(Optional.empty());
        assertThat(read.setup().salon().people())
                .extracting(Person::personId)
                .containsExactly("ilka", "tomas", "greta");
        assertThat(read.setup().salon().people().get(0).onDuty())
                .containsExactly(span("07:30", "11:30"), span("12:00", "16:00"));
        assertThat(read.setup().salon().people().get(2).onDuty())
                .containsExactly(span("08:00", "12:00"), span("13:00", "17:00"));
    }

    @Test
    void a_calendar_gives_the_same_day_as_the_list() {
        TestFolder folder = new TestFolder(temp);
        FolderResult.Read list = folder.accepted(Optional.empty());
        FolderResult.Read calendar = folder.withCalendar().accepted(Optional.of(LocalDate.of(2027, 5, 14)));
        assertThat(calendar.setup()).isEqualTo(list.setup());
        assertThat(calendar.bookings())
                .usingRecursiveFieldByFieldElementComparatorIgnoringFields("bookingUid")
                .containsExactly(FOILS, CLAY);
        assertThat(calendar.bookings())
                .extracting(Booking::bookingUid)
                .containsExactly("k1@kelp.example", "k2@kelp.example");
        assertThat(calendar.notes())
                .containsExactly(
                        "1 cancelled booking left out", "1 appointment that is not for the color bar left out");
    }

    @Test
    void reading_twice_gives_the_same_bytes() {
        TestFolder folder = new TestFolder(temp);
        String once = ContractJson.write(folder.accepted(Optional.empty()).setup());
        assertThat(ContractJson.write(folder.accepted(Optional.empty()).setup()))
                .isEqualTo(once);
    }

    private static Span span(String from, String to) {
        return new Span(Instant.parse("2027-05-14T" + from + ":00Z"), Instant.parse("2027-05-14T" + to + ":00Z"));
    }
}
