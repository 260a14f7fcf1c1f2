package stirtide.demo.folder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import stirtide.demo.print.PrepSheet;
import stirtide.demo.print.PrepSheetDay;
import stirtide.events.plan.PlannedBowl;
import stirtide.planner.cli.CommandException;
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
        assertThatExceptionOfType(CommandException.class)
                .isThrownBy(() -> FolderPlanner.read(SALON, Optional.of(LocalDate.of(2027, 6, 13))))
                .satisfies(exit -> assertThat(exit.exitCode()).isEqualTo(CommandException.BAD_INPUT));
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
}
