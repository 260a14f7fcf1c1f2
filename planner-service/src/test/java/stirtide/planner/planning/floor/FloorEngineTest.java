package stirtide.planner.planning.floor;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stirtide.planner.check.floor.FloorPlanCheck;
import stirtide.planner.planning.floor.cli.FloorDayFile;

class FloorEngineTest {
    private static final Path DAYS = Path.of("src/test/resources/floor-bench");

    private static FloorDay day(String name) throws Exception {
        return FloorDayFile.read(DAYS.resolve(name + ".json")).orElseThrow().day();
    }

    private static FloorEngine planned(FloorDay day, long steps) {
        FloorEngine engine = new FloorEngine(day, new SplittableRandom(1));
        engine.improve(done -> done < steps);
        return engine;
    }

    /** Values a general solver proved best. */
    @ParameterizedTest
    @CsvSource({
        "F6A1-50-1, 5, 294, 24",
        "F6A1-50-2, 8, 292, 0",
        "F6A1-70-1, 0, 242, 46",
        "F6A1-90-2, 16, 300, 45",
        "F6A1-nat-1, 0, 250, 0",
        "F6A1-nat-2, 0, 286, 0",
        "F12A1-50-1, 3, 485, 16",
        "F12A1-nat-2, 4, 504, 0"
    })
    void attains_what_is_proven_best(String name, int lateness, int handling, int standing) throws Exception {
        FloorDay day = day(name);
        FloorEngine engine = planned(day, 12_000);

        FloorPlan plan = engine.plan().orElseThrow();
        assertThat(plan.score()).isEqualTo(new FloorScore(lateness, handling, standing));
        assertThat(FloorPlanCheck.faults(day, plan)).isEmpty();
        assertThat(engine.bounds()).isLessThanOrEqualTo(plan.score());
    }

    @Test
    void proves_a_day_without_contention_on_all_levels() throws Exception {
        assertThat(planned(day("F6A1-nat-1"), 1000).provenLevels()).isEqualTo(3);
    }

    @ParameterizedTest
    @CsvSource({"F6A1-50-1", "F6A1-50-2", "F6A1-70-1", "F6A1-90-2", "F12A1-50-1"})
    void proves_that_nothing_is_less_late(String name) throws Exception {
        FloorEngine engine = new FloorEngine(day(name), new SplittableRandom(1));
        engine.improve(done -> done < 30_000 && engine.provenLevels() == 0);

        assertThat(engine.provenLevels()).isGreaterThan(0);
    }

    @Test
    void gives_the_same_plan_for_the_same_steps() throws Exception {
        FloorDay day = day("F12A1-90-1");

        assertThat(planned(day, 2000).plan()).isEqualTo(planned(day, 2000).plan());
    }

    @Test
    void keeps_all_rules_on_random_days() {
        for (int seed = 0; seed < 24; seed++) {
            FloorDay day =
                    new RandomFloorDay(new SplittableRandom(seed)).day(4 + seed % 17, 1 + seed % 3, 20 + seed % 80);
            FloorEngine engine = planned(day, 100);

            engine.plan().ifPresent(plan -> {
                assertThat(FloorPlanCheck.faults(day, plan)).isEmpty();
                assertThat(engine.bounds().lateness())
                        .isLessThanOrEqualTo(plan.score().lateness());
                assertThat(engine.bounds().handling())
                        .isLessThanOrEqualTo(plan.score().handling());
            });
        }
    }

    @Test
    void has_no_plan_where_nobody_can_mix_in_time() throws Exception {
        FloorDay day = day("F6A1-nat-1");
        FloorDay nobody = new FloorDay(
                day.handOverMinutes(),
                day.washMinutes(),
                day.scales(),
                day.basins(),
                day.rinseMinutes(),
                day.stylistsRinse(),
                day.marginMinutes(),
                day.leastDecigrams(),
                java.util.List.of(new FloorAssistant(java.util.List.of(new DutySpan(0, 2)))),
                day.bowlSizes(),
                day.mixes(),
                day.services());

        assertThat(new FloorEngine(nobody, new SplittableRandom(1)).plan()).isEmpty();
    }
}
