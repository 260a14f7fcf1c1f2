package stirtide.planner.planning.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stirtide.events.plan.Plan;
import stirtide.planner.check.PlanChecker;

class ReplanTest {
    static IntStream days() {
        return IntStream.range(0, 60);
    }

    /** Time passes, clients are late or leave, an assistant leaves, weights are wrong, mixes are forgotten. */
    @ParameterizedTest
    @MethodSource("days")
    void whatever_happens_on_a_day_the_next_plan_is_there_and_valid(int seed) {
        LivedDay day = new LivedDay(seed, RandomQuestion.of(seed, 5 + seed % 30));
        for (int step = 0; step < 12; step++) {
            Plan plan = Planner.draw(day.question(), step % 3 == 0 ? 1 : 0);
            assertThat(PlanChecker.check(day.question(), plan))
                    .as("seed %d, step %d", seed, step)
                    .isEmpty();
            day.pass(plan, step == 0 ? 45 : 5 + seed % 40);
        }
    }

    @ParameterizedTest
    @MethodSource("days")
    void the_same_question_gives_the_same_plan(int seed) {
        LivedDay day = new LivedDay(seed, RandomQuestion.of(seed, 5 + seed % 10));
        day.pass(Planner.draw(day.question(), 1), 60);
        assertThat(Planner.draw(day.question(), 5)).isEqualTo(Planner.draw(day.question(), 5));
    }
}
