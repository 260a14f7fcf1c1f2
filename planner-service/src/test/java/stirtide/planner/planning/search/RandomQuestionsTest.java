package stirtide.planner.planning.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stirtide.planner.check.PlanChecker;

class RandomQuestionsTest {
    static IntStream hundreds() {
        return IntStream.range(0, 10);
    }

    /** A thousand invented days of 5 to 80 services in all, each tenth drawn with rounds, the rest at once; on every other day who mixes carries. */
    @ParameterizedTest
    @MethodSource("hundreds")
    void no_plan_of_a_hundred_random_days_breaks_a_hard_rule(int hundred) {
        for (int i = 0; i < 100; i++) {
            int seed = 100 * hundred + i;
            PlanQuestion day = RandomQuestion.of(seed, 5 + seed * 37 % 76);
            PlanQuestion question = seed % 2 == 0 ? day : day.withCarryMinutes(day.handOverMinutes());
            assertThat(PlanChecker.check(question, Planner.draw(question, seed % 10 == 9 ? 2 : 0)))
                    .as("seed %d", seed)
                    .isEmpty();
        }
    }
}
