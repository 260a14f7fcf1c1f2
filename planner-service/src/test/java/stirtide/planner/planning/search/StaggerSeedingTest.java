package stirtide.planner.planning.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stirtide.events.plan.Plan;
import stirtide.events.plan.PlannedBowl;
import stirtide.planner.check.PlanChecker;
import stirtide.planner.planning.stagger.SearchRounds;

/** The engine's plan as a start of the planner. */
class StaggerSeedingTest {
    private static PlanDraft seeded(PlanQuestion question) {
        List<ServiceTimeline> timelines = ServiceTimelines.of(question);
        ShownPlan shown = new ShownPlan(question);
        PlanDraft draft = new PlanDraft(question, timelines, new ServiceInserter(question, shown));
        List<Integer> all = IntStream.range(0, timelines.size()).boxed().toList();
        new StaggerSeeding(question, timelines, draft).place(all, SearchRounds.of(20), question.nowMinute(), 3);
        return draft;
    }

    private static Plan written(PlanQuestion question, PlanDraft draft) {
        return new PlanWriter(question, new ShownPlan(question), draft).write(0);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 40, 70, 90})
    void what_is_taken_over_breaks_no_rule(int load) {
        for (int seed = 0; seed < 4; seed++) {
            PlanQuestion question = RandomQuestion.loaded(seed, 30, load);
            assertThat(PlanChecker.check(question, written(question, seeded(question))))
                    .as("seed %d", seed)
                    .isEmpty();
        }
    }

    @Test
    void on_days_of_moderate_load_it_is_often_better_than_services_put_in_one_by_one() {
        int better = 0;
        for (int seed = 0; seed < 8; seed++) {
            PlanQuestion question = RandomQuestion.loaded(seed, 30, 40);
            PlanDraft byStart = new PlanSearch(question, ServiceTimelines.of(question), new ShownPlan(question))
                    .run(SearchRounds.of(0));
            if (seeded(question).score().compareTo(byStart.score()) < 0) better++;
        }
        assertThat(better).isGreaterThanOrEqualTo(5);
    }

    /** Two zones with a pause: no mix outlives it, and nobody is on duty before it for a second one. */
    @Test
    void a_bowl_for_after_a_gap_is_mixed_in_the_gap() {
        SmallDay day = new SmallDay().scales(1);
        day.life = 25;
        day.assistants.add(new PlanQuestion.Assistant(
                "ida",
                "Ida",
                List.of(new PlanQuestion.Minutes(590, 600), new PlanQuestion.Minutes(612, 640)),
                0,
                java.util.Optional.empty()));
        day.service(600, SmallDay.zone("crown", 10, 10), SmallDay.zone("sides", "foil", 12, 10, 10, 1));
        PlanQuestion question = day.question();
        Plan plan = written(question, seeded(question));
        assertThat(PlanChecker.check(question, plan)).isEmpty();
        assertThat(plan.totals().waitMinutes()).isZero();
        assertThat(plan.bowls())
                .extracting(PlannedBowl::mixStart)
                .containsExactly(question.instantOf(593), question.instantOf(615));
    }

    @Test
    void the_same_question_and_rounds_give_the_same_plan() {
        PlanQuestion question = RandomQuestion.loaded(5, 40, 70);
        assertThat(Planner.draw(question, 30)).isEqualTo(Planner.draw(question, 30));
    }
}
