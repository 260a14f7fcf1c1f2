package stirtide.planner.planning.stagger;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stirtide.planner.check.stagger.CertificateCheck;
import stirtide.planner.check.stagger.StaggerPlanCheck;
import stirtide.planner.planning.stagger.cli.DayFile;

/** Days whose optimum a general-purpose constraint solver proved; the figures stand in the files as "reference". */
class BenchDaysTest {
    /** Enough for the slowest of these days; work ends as soon as all is proven. */
    private static final int ROUNDS = 4000;

    private static final Path DAYS = Path.of("src/test/resources/stagger-bench");

    @ParameterizedTest
    @ValueSource(
            strings = {
                "S20A1-40-1",
                "S20A1-40-2",
                "S20A1-40-3",
                "S20A1-70-1",
                "S20A1-70-2",
                "S20A1-70-3",
                "S20A1-nat-1",
                "S20A1-nat-2",
                "S20A1-nat-3",
                "S40A2-40-1",
                "S40A2-40-2",
                "S40A2-40-3",
                "S40A2-70-1",
                "S40A2-70-3",
                "S40A2-nat-1",
                "S40A2-nat-2",
                "S40A2-nat-3",
                "S80A3-40-1",
                "S80A3-40-2",
                "S80A3-40-3",
                "S80A3-70-3",
                "S80A3-nat-1",
                "S80A3-nat-2",
                "S80A3-nat-3",
                "S8A1-40-1",
                "S8A1-40-2",
                "S8A1-40-3",
                "S8A1-70-1",
                "S8A1-70-2",
                "S8A1-70-3",
                "S8A1-90-1",
                "S8A1-90-2",
                "S8A1-nat-1",
                "S8A1-nat-2",
                "S8A1-nat-3"
            })
    void finds_the_proven_optimum_and_proves_it_again(String name) throws Exception {
        Path file = DAYS.resolve(name + ".json");
        StaggerProblem problem = DayFile.read(file).problem();
        JsonNode reference = new ObjectMapper().readTree(file.toFile()).get("reference");

        StaggerPlan plan = new StaggerEngine(problem, new SplittableRandom(1)).improve(rounds -> rounds < ROUNDS);

        assertThat(StaggerPlanCheck.faults(problem, plan)).isEmpty();
        assertThat(plan.score())
                .isEqualTo(new StaggerScore(
                        0,
                        reference.get("waitMinutes").asLong(),
                        reference.get("bowls").asLong(),
                        reference.get("ageMinutes").asLong()));
        assertThat(CertificateCheck.provenLevels(problem, plan)).isEqualTo(3);
        assertThat(plan.provenLevels()).isEqualTo(3);
    }

    @ParameterizedTest
    @ValueSource(strings = {"S8A1-90-2", "S20A1-70-1", "S40A2-70-2"})
    void same_numbers_and_rounds_give_the_same_plan(String name) throws Exception {
        StaggerProblem problem = DayFile.read(DAYS.resolve(name + ".json")).problem();

        StaggerPlan first = new StaggerEngine(problem, new SplittableRandom(7)).improve(rounds -> rounds < 20);
        StaggerPlan second = new StaggerEngine(problem, new SplittableRandom(7)).improve(rounds -> rounds < 20);

        assertThat(second.mixes()).isEqualTo(first.mixes());
        assertThat(second.score()).isEqualTo(first.score());
        assertThat(second.bound()).isEqualTo(first.bound());
    }
}
