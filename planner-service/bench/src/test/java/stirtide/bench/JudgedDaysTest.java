package stirtide.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stirtide.planner.stagger.Plan;
import stirtide.planner.stagger.Problem;
import stirtide.planner.stagger.Score;
import stirtide.planner.stagger.StaggerEngine;
import stirtide.planner.stagger.check.CertificateCheck;
import stirtide.planner.stagger.check.PlanCheck;

/** A general-purpose solver of the CP-SAT class judges small random days: the same optimum on every one. */
class JudgedDaysTest {
    private static final int DAYS = 240;

    @BeforeAll
    static void load() {
        Reference.load();
    }

    static LongStream days() {
        return LongStream.range(0, DAYS);
    }

    @ParameterizedTest
    @MethodSource("days")
    void the_solver_finds_the_same_optimum(long seed) {
        Problem problem = InventedDays.small(seed);

        Reference.Outcome judge = Reference.optimum(problem);
        Plan plan = new StaggerEngine(problem, new SplittableRandom(seed)).improve(rounds -> rounds < 200);

        assertThat(PlanCheck.faults(problem, plan)).isEmpty();
        assertThat(CertificateCheck.provenLevels(problem, plan)).isLessThanOrEqualTo(plan.provenLevels());
        if (judge.figures()[0] < 0) {
            assertThat(plan.score().lastResorts()).isPositive();
            return;
        }
        assertThat(judge.provenLevels()).isEqualTo(3);
        assertThat(plan.score()).isEqualTo(new Score(0, judge.figures()[0], judge.figures()[1], judge.figures()[2]));
    }
}
