package stirtide.planner.planning.stagger;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stirtide.planner.check.stagger.CertificateCheck;
import stirtide.planner.check.stagger.StaggerPlanCheck;

class SmallStaggerDaysTest {
    private static final int TORN_DAYS = 20;

    /** Hands would be enough for a plan that nobody can carry out; with real people clients wait four minutes. */
    private static final long PEOPLE_DECIDE = 1011;

    static LongStream judgedBySolver() {
        return LongStream.concat(LongStream.range(0, 220), LongStream.of(PEOPLE_DECIDE));
    }

    @ParameterizedTest
    @MethodSource("judgedBySolver")
    void a_constraint_solver_finds_nothing_better_and_the_checker_confirms_what_is_claimed(long seed) {
        StaggerProblem problem = SmallStaggerDays.day(seed);

        judge(problem, SolverJudge.best(problem), seed);
    }

    @ParameterizedTest
    @MethodSource("judgedWithManyBreaks")
    void with_many_breaks_people_are_found_wherever_there_are_any(long seed) {
        StaggerProblem problem = SmallStaggerDays.tornDay(seed);

        judge(problem, SolverJudge.best(problem), seed);
    }

    static LongStream judgedWithManyBreaks() {
        return LongStream.range(0, TORN_DAYS);
    }

    @Test
    void proofs_that_need_the_people_are_refused_when_they_count_hands_only() {
        int needed = 0;
        for (long seed = 0; seed < TORN_DAYS; seed++) {
            StaggerProblem problem = SmallStaggerDays.tornDay(seed);
            StaggerPlan plan = new StaggerEngine(problem, new SplittableRandom(seed)).improve(rounds -> rounds < 100);
            for (Certificate certificate : plan.certificates()) {
                if (certificate.root() instanceof Certificate.Swept swept && swept.people()) {
                    Certificate.Swept hands = new Certificate.Swept(
                            swept.delayWeight(), swept.mixWeight(), swept.ageWeight(), swept.prices(), false);
                    assertThat(CertificateCheck.refutes(problem, certificate)).isTrue();
                    needed += CertificateCheck.refutes(problem, new Certificate(certificate.claim(), hands)) ? 0 : 1;
                }
            }
        }
        assertThat(needed).isPositive();
    }

    private static void judge(StaggerProblem problem, Optional<StaggerScore> best, long seed) {
        StaggerPlan plan = new StaggerEngine(problem, new SplittableRandom(seed)).improve(rounds -> rounds < 100);

        assertThat(StaggerPlanCheck.faults(problem, plan)).isEmpty();
        if (best.isPresent()) {
            assertThat(plan.score()).isEqualTo(best.get());
        } else {
            assertThat(plan.score().lastResorts()).isPositive();
        }
        assertThat(CertificateCheck.provenLevels(problem, plan)).isEqualTo(plan.provenLevels());
        assertThat(plan.certificates()).allMatch(certificate -> CertificateCheck.refutes(problem, certificate));
    }
}
