package stirtide.planner.planning.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static stirtide.planner.planning.search.SmallDay.zone;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stirtide.events.day.DayEvent;
import stirtide.events.day.DayEvent.PlanDrawn;
import stirtide.events.day.DayEvent.PlanKept;
import stirtide.events.plan.BowlReason;
import stirtide.events.plan.Plan;
import stirtide.planner.check.PlanChecker;
import stirtide.planner.planning.bounds.BoundedPlanner;
import stirtide.planner.planning.bounds.TwoStepPlanner;
import stirtide.planner.planning.stagger.SearchRounds;

/** A first plan at once and a better one after it. */
class TwoStepPlannerTest {
    private static final int ROUNDS = 10;
    private static final BooleanSupplier ALWAYS_WANTED = () -> false;

    @ParameterizedTest
    @ValueSource(ints = {0, 40, 90})
    void both_plans_of_an_eventful_day_are_valid_and_the_second_is_never_worse(int load) {
        EventfulDay day = new EventfulDay(5, RandomQuestion.loaded(5, 10, load));
        Plan plan = Planner.draw(day.question(), ROUNDS);
        int seconds = 0;
        for (int event = 0; event < 8; event++) {
            String where = "load " + load + ", event " + event + " " + day.next(plan, 10);
            PlanQuestion question = day.question();
            plan = TwoStepPlanner.first(question, ROUNDS);
            assertThat(PlanChecker.check(question, plan)).as(where).isEmpty();
            assertThat(TwoStepPlanner.first(question, ROUNDS)).as(where).isEqualTo(plan);
            if (plan.roundsToCome().isEmpty()) continue;
            assertThat(plan.roundsToCome()).contains(ROUNDS);
            plan = second(question, plan, where);
            assertThat(PlanChecker.check(question, plan)).as(where).isEmpty();
            seconds++;
        }
        assertThat(seconds).isPositive();
    }

    private static Plan second(PlanQuestion question, Plan first, String where) {
        if (TwoStepPlanner.second(question, first, ALWAYS_WANTED) instanceof PlanDrawn drawn) {
            Plan better = drawn.plan();
            assertThat(better.sameWork(first)
                            && better.totals()
                                    .bowlReasons()
                                    .equals(first.totals().bowlReasons()))
                    .as(where)
                    .isFalse();
            assertThat(better.roundsToCome()).isEmpty();
            assertThat(better.rounds()).isEqualTo(ROUNDS);
            assertThat(better.basedOnRevision()).isEqualTo(first.basedOnRevision());
            if (stylists(better) == stylists(first))
                assertThat(better.totals().waitMinutes())
                        .as(where)
                        .isLessThanOrEqualTo(first.totals().waitMinutes());
            return better;
        }
        return kept((PlanKept) TwoStepPlanner.second(question, first, ALWAYS_WANTED), first, where);
    }

    private static long stylists(Plan plan) {
        return plan.bowls().stream().filter(bowl -> bowl.personId().isEmpty()).count();
    }

    private static Plan kept(PlanKept kept, Plan first, String where) {
        assertThat(kept.basedOnRevision()).isEqualTo(first.basedOnRevision());
        assertThat(kept.waitBound().orElse(-1))
                .as(where)
                .isGreaterThanOrEqualTo(first.totals().waitBound().orElse(-1));
        assertThat(kept.bowlBound().orElse(-1))
                .as(where)
                .isGreaterThanOrEqualTo(first.totals().bowlBound().orElse(-1));
        Plan plan = first.kept(kept.rounds(), kept.waitBound(), kept.bowlBound(), kept.proof());
        assertThat(plan.sameWork(first)).isTrue();
        return plan;
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 70})
    void where_nothing_has_happened_the_first_plan_is_the_one_on_show(int load) {
        PlanQuestion question = RandomQuestion.loaded(2, 14, load);
        Plan shown = Planner.draw(question, ROUNDS);
        Plan first = TwoStepPlanner.first(question.withOnShow(Optional.of(shown)), ROUNDS);
        assertThat(first.sameWork(shown)).isTrue();
        assertThat(first.changes()).isEmpty();
    }

    @Test
    void no_better_plan_is_looked_for_where_there_can_be_none() {
        PlanQuestion question = new SmallDay()
                .people("ida")
                .scales(1)
                .service(600, zone("crown", 20, 20))
                .question();
        Plan plan = TwoStepPlanner.first(question, ROUNDS);
        assertThat(plan.roundsToCome()).isEmpty();
        assertThat(plan.totals().bowlBound()).contains(1);
    }

    @Test
    void without_rounds_the_first_plan_is_the_last() {
        PlanQuestion question = RandomQuestion.loaded(2, 14, 90);
        assertThat(TwoStepPlanner.first(question, ROUNDS).roundsToCome()).contains(ROUNDS);
        assertThat(TwoStepPlanner.first(question, 0).roundsToCome()).isEmpty();
        assertThat(TwoStepPlanner.first(question, 0).first(ROUNDS)).isEqualTo(TwoStepPlanner.first(question, ROUNDS));
    }

    @Test
    void a_second_step_ends_at_whatever_moment_it_is_not_wanted_any_more_and_gives_nothing() {
        PlanQuestion question = RandomQuestion.loaded(2, 14, 90);
        Plan first = TwoStepPlanner.first(question, ROUNDS);
        AtomicInteger asked = new AtomicInteger();
        DayEvent whole = TwoStepPlanner.second(question, first, () -> asked.incrementAndGet() < 0);
        int often = asked.get();
        assertThat(often).isGreaterThan(3 * ROUNDS);
        for (int wanted = 0; wanted < often; wanted += 7) {
            AtomicInteger left = new AtomicInteger(wanted);
            assertThatThrownBy(() -> TwoStepPlanner.second(question, first, () -> left.getAndDecrement() == 0))
                    .as("wanted %d times of %d", wanted, often)
                    .isInstanceOf(SearchRounds.BrokenOff.class);
            assertThat(left).as("asked once more and no more").hasValue(-1);
        }
        assertThat(TwoStepPlanner.second(question, first, ALWAYS_WANTED)).isEqualTo(whole);
    }

    @Test
    void a_reason_that_takes_time_to_find_comes_with_the_second_step() {
        PlanQuestion asked = RandomQuestion.loaded(64, 12, 70);
        // On show is what more rounds found, so that those of the second step find no better plan.
        PlanQuestion question = asked.withOnShow(Optional.of(BoundedPlanner.draw(asked, 150)));
        Plan first = TwoStepPlanner.first(question, 100);
        assertThat(first.totals().bowlReasons()).noneMatch(TwoStepPlannerTest::ofOrder);
        PlanDrawn second = (PlanDrawn) TwoStepPlanner.second(question, first, ALWAYS_WANTED);
        assertThat(second.plan().sameWork(first)).isTrue();
        assertThat(second.plan().totals().bowlReasons()).anyMatch(TwoStepPlannerTest::ofOrder);
    }

    private static boolean ofOrder(BowlReason reason) {
        return reason.cause().equals("NO_ORDER_FITS");
    }
}
