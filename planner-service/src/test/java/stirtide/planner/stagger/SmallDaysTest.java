package stirtide.planner.stagger;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stirtide.planner.stagger.check.CertificateCheck;
import stirtide.planner.stagger.check.PlanCheck;

class SmallDaysTest {
    static LongStream judgedBySolver() {
        return LongStream.range(0, 220);
    }

    @ParameterizedTest
    @MethodSource("judgedBySolver")
    void a_constraint_solver_finds_nothing_better_and_the_checker_confirms_what_is_claimed(long seed) {
        Problem problem = SmallDays.day(seed);

        judge(problem, SolverJudge.best(problem), seed);
    }

    private static void judge(Problem problem, Optional<Score> best, long seed) {
        Plan plan = new StaggerEngine(problem, new SplittableRandom(seed)).improve(rounds -> rounds < 100);

        assertThat(PlanCheck.faults(problem, plan)).isEmpty();
        if (best.isPresent()) {
            assertThat(plan.score()).isEqualTo(best.get());
        } else {
            assertThat(plan.score().lastResorts()).isPositive();
        }
        assertThat(CertificateCheck.provenLevels(problem, plan)).isEqualTo(plan.provenLevels());
        assertThat(plan.certificates()).allMatch(certificate -> CertificateCheck.refutes(problem, certificate));
    }
}
