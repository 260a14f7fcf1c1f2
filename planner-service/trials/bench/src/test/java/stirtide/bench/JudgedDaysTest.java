package stirtide.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stirtide.planner.check.stagger.CertificateCheck;
import stirtide.planner.check.stagger.StaggerPlanCheck;
import stirtide.planner.planning.stagger.StaggerEngine;
import stirtide.planner.planning.stagger.StaggerPlan;
import stirtide.planner.planning.stagger.StaggerProblem;
import stirtide.planner.planning.stagger.StaggerScore;

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
        StaggerProblem problem = InventedDays.small(seed);

        Reference.Outcome judge = Reference.optimum(problem);
        StaggerPlan plan = new StaggerEngine(problem, new SplittableRandom(seed)).improve(rounds -> rounds < 200);

        assertThat(StaggerPlanCheck.faults(problem, plan)).isEmpty();
        assertThat(CertificateCheck.provenLevels(problem, plan)).isLessThanOrEqualTo(plan.provenLevels());
        if (judge.figures()[0] < 0) {
            assertThat(plan.score().lastResorts()).isPositive();
            return;
        }
        assertThat(judge.provenLevels()).isEqualTo(3);
        assertThat(plan.score()).isEqualTo(new StaggerScore(0, judge.figures()[0], judge.figures()[1], judge.figures()[2]));
    }
}
