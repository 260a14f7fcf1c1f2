package stirtide.planner.planning.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stirtide.events.plan.Plan;
import stirtide.planner.check.PlanChecker;
import stirtide.planner.planning.search.PlanQuestion.Minutes;

/** Two equal people have about half of the mixing each: common practice, no source. */
class WorkSharesTest {
    static IntStream seeds() {
        return IntStream.range(0, 10);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void two_people_with_the_same_hours_share_a_day_within_sixty_to_forty(int seed) {
        PlanQuestion day = RandomQuestion.loaded(seed, 20, seed % 2 == 0 ? 0 : 70);
        List<Minutes> hours = List.of(new Minutes(480, 1200));
        PlanQuestion question = day.withAssistants(day.assistants().stream()
                .map(each -> new PlanQuestion.Assistant(each.personId(), each.name(), hours, 0, Optional.empty()))
                .toList());
        assertThat(question.assistants()).hasSize(2);
        Plan plan = Planner.draw(question, 2);
        assertThat(PlanChecker.check(question, plan)).isEmpty();
        long all = mixingMinutes(plan, "");
        for (var each : question.assistants())
            assertThat(100 * mixingMinutes(plan, each.personId()))
                    .as(each.name())
                    .isBetween(40 * all, 60 * all);
    }

    private static long mixingMinutes(Plan plan, String personId) {
        return plan.bowls().stream()
                .filter(bowl ->
                        bowl.personId().filter(id -> id.startsWith(personId)).isPresent())
                .mapToLong(bowl -> SmallDay.minute(bowl.mixEnd()) - SmallDay.minute(bowl.mixStart()))
                .sum();
    }

    /** At light load too: one after the other, never all by one. */
    @Test
    void mixes_far_apart_go_to_one_and_the_other() {
        SmallDay day = new SmallDay().people("ida", "tom").scales(2);
        for (int hour = 0; hour < 4; hour++) day.service(600 + 60 * hour, SmallDay.zone("roots", 20, 20));
        Plan plan = Planner.draw(day.question(), 2);
        assertThat(plan.bowls())
                .extracting(bowl -> bowl.personId().orElseThrow())
                .containsExactly("ida", "tom", "ida", "tom");
    }

    @Test
    void a_plan_on_show_keeps_its_people() {
        SmallDay day = new SmallDay().people("ida", "tom").scales(2);
        for (int hour = 0; hour < 4; hour++) day.service(600 + 60 * hour, SmallDay.zone("roots", 20, 20));
        Plan plan = Planner.draw(day.question(), 2);
        day.assistants.remove(0);
        day.onShow = Optional.of(plan);
        Plan alone = Planner.draw(day.question(), 2);
        assertThat(alone.bowls()).allMatch(bowl -> bowl.personId().equals(Optional.of("tom")));
        day.people("ida");
        day.onShow = Optional.of(alone);
        assertThat(Planner.draw(day.question(), 2).bowls())
                .allMatch(bowl -> bowl.personId().equals(Optional.of("tom")));
    }
}
