package stirtide.demo.folder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stirtide.demo.PlanCommand;
import stirtide.demo.exit.CommandFailure;
import stirtide.demo.print.PrepSheet;
import stirtide.demo.print.PrepSheetDay;
import stirtide.events.plan.PlannedBowl;
import stirtide.planner.salonfiles.FolderResult;

class FolderPlannerTest {
    private static final Path SALON = Path.of("salon");
    private static FolderResult.Read salon;
    private static PrepSheetDay day;

    @BeforeAll
    static void plan_the_demo_day() {
        salon = FolderPlanner.read(SALON, Optional.empty());
        day = FolderPlanner.plan(salon);
    }

    @Test
    void the_demo_salon_has_sixteen_services_on_five_chairs_and_two_assistants() {
        assertThat(day.bookings()).hasSize(16);
        assertThat(salon.setup().salon().chairs()).isEqualTo(5);
        assertThat(salon.notes()).anyMatch(note -> note.contains("cancelled"));
    }

    @Test
    void every_zone_of_every_service_is_fed_by_a_bowl_of_the_plan() {
        var fed = day.plan().bowls().stream()
                .flatMap(bowl -> bowl.zones().stream().map(zone -> bowl.service() + " " + zone))
                .collect(Collectors.toSet());
        day.plan()
                .services()
                .forEach(service -> service.zones()
                        .forEach(zone -> assertThat(fed).contains(service.service() + " " + zone.zone())));
    }

    @Test
    void no_bowl_of_the_prep_sheet_is_used_after_its_life() {
        assertThat(day.plan().bowls())
                .isNotEmpty()
                .allSatisfy(bowl -> assertThat(bowl.neededTo()).isBeforeOrEqualTo(bowl.lifeEnds()));
    }

    @Test
    void the_prep_sheet_is_the_same_every_time_and_never_wider_than_a_page() {
        String sheet = PrepSheet.of(day, salon.notes());
        assertThat(PrepSheet.of(FolderPlanner.plan(salon), salon.notes())).isEqualTo(sheet);
        assertThat(sheet.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
    }

    @Test
    void the_prep_sheet_names_every_bowl_client_and_product_in_use() {
        String sheet = PrepSheet.of(day, salon.notes());
        assertThat(day.plan().bowls().stream().map(PlannedBowl::bowl))
                .allSatisfy(bowl -> assertThat(sheet).contains("  " + bowl + " "));
        assertThat(sheet).contains("Tarrowick powder", "20 vol (6 %)", "halfway check", "at latest", "Patch test");
    }

    @Test
    void a_date_without_bookings_is_refused_as_bad_input() {
        assertThatExceptionOfType(CommandFailure.class)
                .isThrownBy(() -> FolderPlanner.read(SALON, Optional.of(LocalDate.of(2027, 6, 13))))
                .satisfies(exit -> assertThat(exit.code()).isEqualTo(CommandFailure.BAD_INPUT));
    }

    @Test
    void arguments_in_any_order_are_understood() {
        PlanCommand command = PlanCommand.of(List.of("--json", "--date", "2027-06-11", "salon"));
        assertThat(command)
                .isEqualTo(
                        new PlanCommand(SALON, Optional.of(LocalDate.of(2027, 6, 11)), true, false, Optional.empty()));
    }

    @Test
    void the_prep_sheet_tells_missing_tests_and_what_was_mixed_before() {
        String sheet = PrepSheet.of(day, salon.notes());
        assertThat(sheet)
                .contains("TESTS", "No strand test is recorded", "is too late", "licensed professional to judge")
                .contains("Last visit 2027-04-16, planned again as far as it is allowed:")
                .contains("! ends: sandrel-clay is not on the shelf any more");
        var retouch = day.plan().bowls().stream()
                .filter(bowl -> bowl.service() == 7)
                .findFirst()
                .orElseThrow();
        assertThat(retouch.formula().wantedRatioThousandths()).isEqualTo(2480);
    }

    @Test
    void the_last_two_visits_of_a_client_are_printed_side_by_side() {
        String page = PlanCommand.of(List.of("--visits", "HV", "salon")).run();
        assertThat(page).contains("2027-02-19", "2027-04-30", "1:2.01", "1:1.96", "* differs");
        assertThat(page.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
        assertThat(PlanCommand.of(List.of("--visits", "FU", "salon")).run()).contains("One visit is remembered.");
        assertThatExceptionOfType(CommandFailure.class)
                .isThrownBy(
                        () -> PlanCommand.of(List.of("--visits", "XX", "salon")).run())
                .withMessageContaining("accepted: FU, GL, HV");
    }

    @ParameterizedTest
    @CsvSource({"--json salon, plan.json", "--visits HV salon, visits-of-HV.txt"})
    void what_the_command_prints_is_the_same_byte_for_byte(String words, String file) throws IOException {
        assertThat(PlanCommand.of(List.of(words.split(" "))).run()).isEqualTo(golden(file));
    }

    /** As version 0.1.0 printed it. */
    private static String golden(String file) throws IOException {
        return Files.readString(Path.of("src/test/resources/golden", file));
    }

    @Test
    void moves_are_printed_best_first_and_the_same_every_time() throws IOException {
        PlanCommand command = PlanCommand.of(List.of("--moves", "salon"));
        String page = command.run();
        assertThat(page).isEqualTo(golden("moves.txt"));
        assertThat(page).contains("As booked: ", "One move, best first:", "Two moves that do more together");
        assertThat(command.run()).isEqualTo(page);
        assertThatExceptionOfType(CommandFailure.class)
                .isThrownBy(() -> PlanCommand.of(List.of("--moves", "--json", "salon")))
                .withMessageContaining("exclude each other");
    }
}
