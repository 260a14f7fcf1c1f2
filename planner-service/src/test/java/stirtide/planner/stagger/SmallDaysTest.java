package stirtide.planner.stagger;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stirtide.planner.stagger.check.CertificateCheck;
import stirtide.planner.stagger.check.PlanCheck;

class SmallDaysTest {
    private static final int TORN_DAYS = 35;

    /** Hands would be enough for a plan that nobody can carry out; with real people clients wait four minutes. */
    private static final long PEOPLE_DECIDE = 1011;

    static LongStream judgedBySolver() {
        return LongStream.concat(LongStream.range(0, 220), LongStream.of(PEOPLE_DECIDE));
    }

    @ParameterizedTest
    @MethodSource("judgedBySolver")
    void a_constraint_solver_finds_nothing_better_and_the_checker_confirms_what_is_claimed(long seed) {
        Problem problem = SmallDays.day(seed);

        judge(problem, SolverJudge.best(problem), seed);
    }

    @ParameterizedTest
    @MethodSource("judgedWithManyBreaks")
    void with_many_breaks_people_are_found_wherever_there_are_any(long seed) {
        Problem problem = SmallDays.tornDay(seed);

        judge(problem, SolverJudge.best(problem), seed);
    }

    static LongStream judgedWithManyBreaks() {
        return LongStream.range(0, TORN_DAYS);
    }

    @Test
    void a_proof_that_needs_the_people_is_refused_when_it_counts_hands_only() {
        Problem problem = SmallDays.day(PEOPLE_DECIDE);
        Plan plan = new StaggerEngine(problem, new SplittableRandom(1)).improve(rounds -> rounds < 100);

        Certificate waits = plan.certificates().get(0);
        Certificate.Swept root = (Certificate.Swept) waits.root();
        Certificate handsOnly = new Certificate(
                waits.claim(),
                new Certificate.Swept(root.delayWeight(), root.mixWeight(), root.ageWeight(), root.prices(), false));

        assertThat(plan.score().waitMinutes()).isEqualTo(4);
        assertThat(root.people()).isTrue();
        assertThat(CertificateCheck.refutes(problem, waits)).isTrue();
        assertThat(CertificateCheck.refutes(problem, handsOnly)).isFalse();
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
