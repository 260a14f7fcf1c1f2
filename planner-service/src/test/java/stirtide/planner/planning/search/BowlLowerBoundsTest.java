package stirtide.planner.planning.search;

import static org.assertj.core.api.Assertions.assertThat;
import static stirtide.planner.planning.search.SmallDay.zone;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stirtide.events.plan.BowlReason;
import stirtide.events.plan.Plan;
import stirtide.planner.check.PlanChecker;
import stirtide.planner.check.ProofCheck;
import stirtide.planner.planning.bounds.BoundedPlanner;
import stirtide.planner.planning.search.PlanQuestion.Assistant;
import stirtide.planner.planning.search.PlanQuestion.Minutes;

/** Which stretch of time forces more than one bowl, in words, and only where the checker agrees. */
class BowlLowerBoundsTest {
    private static Plan plan(SmallDay day) {
        Plan plan = BoundedPlanner.draw(day.question(), 30);
        assertThat(PlanChecker.check(day.question(), plan)).isEmpty();
        assertThat(plan.totals().waitMinutes()).isZero();
        return plan;
    }

    private static BowlReason only(Plan plan) {
        assertThat(plan.totals().bowlReasons()).hasSize(1);
        return plan.totals().bowlReasons().get(0);
    }

    private static boolean forces(SmallDay day, BowlReason reason, int from, int to) {
        return new ProofCheck(day.question(), Planner.draw(day.question(), 30), 0).forces(reason, from, to);
    }

    private static BowlReason like(BowlReason reason, String cause, int least) {
        return new BowlReason(
                cause,
                reason.from(),
                reason.to(),
                reason.services(),
                reason.zones(),
                least,
                reason.neededMinutes(),
                reason.availableMinutes(),
                reason.sentence());
    }

    @Test
    void a_bowl_does_not_live_as_long_as_applying_lasts() {
        SmallDay day = new SmallDay().people("ida").scales(1).service(600, zone("crown", 50, 50));
        BowlReason reason = only(plan(day));
        assertThat(reason.sentence())
                .isEqualTo(
                        "Service 1, crown, takes 2 bowls: applying lasts from 10:00 to 10:50, a bowl lives 40 minutes,"
                                + " and 7 minutes of them are over when it is at the chair.");
        assertThat(reason.cause()).isEqualTo("WORKING_LIFE");
        assertThat(forces(day, reason, 600, 650)).isTrue();
        assertThat(forces(day, like(reason, "WORKING_LIFE", 3), 600, 650)).isFalse();
        assertThat(forces(day, like(reason, "BOWL_SIZE", 2), 600, 650)).isFalse();
    }

    @Test
    void no_bowl_holds_enough() {
        SmallDay day = new SmallDay().people("ida").scales(1).service(600, zone("crown", 20, 200));
        BowlReason reason = only(plan(day));
        assertThat(reason.sentence())
                .isEqualTo(
                        "Service 1, crown, takes 2 bowls: 200.0 g are needed from 10:00 to 10:20, no bowl has room for"
                                + " more than 118.0 g.");
        assertThat(forces(day, like(reason, "WORKING_LIFE", 2), 600, 620)).isFalse();
    }

    @Test
    void nobody_is_free_for_the_bowl_that_would_save_another() {
        SmallDay day = new SmallDay().scales(1).service(600, zone("crown", 30, 30));
        // One bowl for all of it must be begun from 9:50 on, to live until 10:30, and be mixed by 9:58, to be there at
        // 10:00.
        day.assistants.add(new Assistant("ben", "Ben", List.of(new Minutes(480, 585)), 0, Optional.empty()));
        day.assistants.add(new Assistant("ida", "Ida", List.of(new Minutes(480, 1200)), 596, Optional.empty()));
        BowlReason reason = only(plan(day));
        assertThat(reason.sentence())
                .isEqualTo(
                        "Service 1, crown, takes 2 bowls where 1 would do: one would have to be mixed from 09:50 to 09:58,"
                                + " and Ida is at another bowl until 09:56 and nobody else is on duty long enough then.");
        assertThat(reason.leastBowls()).isEqualTo(2);
        assertThat(forces(day, reason, 590, 598)).isTrue();
        assertThat(forces(day, reason, 590, 592)).isFalse();
        assertThat(forces(day, like(reason, "NOBODY_FREE", 3), 590, 598)).isFalse();
    }

    @Test
    void two_services_at_once_need_more_mixing_than_one_person_can_give() {
        SmallDay day = new SmallDay().people("ida").scales(1);
        day.service(600, zone("crown", 30, 30)).service(600, zone("nape", 30, 30));
        Plan plan = plan(day);
        BowlReason reason = only(plan);
        int gets = plan.bowls().stream().filter(bowl -> bowl.service() == 1).count() == 2 ? 1 : 2;
        assertThat(reason.sentence())
                .isEqualTo(
                        "09:50 to 09:58 would need 10 minutes of mixing if services 1 and 2 got no bowl more than each needs"
                                + " alone; Ida can give 8. So one more bowl cannot be saved without a wait; service "
                                + gets + ", "
                                + (gets == 1 ? "crown" : "nape") + ", gets one.");
        assertThat(reason.leastBowls()).isEqualTo(3);
        assertThat(forces(day, reason, 590, 598)).isTrue();
        assertThat(forces(day, reason, 591, 598)).isTrue();
        assertThat(forces(day, reason, 570, 598)).isFalse();
        assertThat(forces(day, like(reason, "TOO_MUCH_AT_ONCE", 4), 590, 598)).isFalse();
    }

    @Test
    void an_extra_bowl_that_need_not_be_gets_no_reason() {
        SmallDay day = new SmallDay().people("ida", "ben").scales(2);
        day.service(600, zone("crown", 30, 30)).service(600, zone("nape", 30, 30));
        Plan plan = plan(day);
        assertThat(plan.totals().bowlReasons()).isEmpty();
        BowlReason boast = new BowlReason(
                "TOO_MUCH_AT_ONCE", plan.asOf(), plan.asOf(), List.of(1, 2), List.of(), 3, 10, 8, "boast");
        assertThat(forces(day, boast, 590, 598)).isFalse();
    }

    /** The bowls one by one need fewer, no stretch has too few minutes, and still it cannot be. */
    @Test
    void where_no_order_of_mixing_does_the_services_in_each_others_way_are_named() {
        PlanQuestion question = RandomQuestion.loaded(64, 12, 70);
        Plan plan = BoundedPlanner.draw(question, 100);
        BowlReason reason = plan.totals().bowlReasons().stream()
                .filter(each -> each.cause().equals("NO_ORDER_FITS"))
                .findFirst()
                .orElseThrow();
        assertThat(reason.sentence())
                .startsWith(
                        "From 09:03 to 12:31 there is no order of mixing in which Ida and Tom could give services 1, 2,"
                                + " 4, 6 and 12 no bowl more than each needs alone: in every one a bowl would be too old or too late.");
        assertThat(BoundedPlanner.draw(question, 0).totals().bowlReasons())
                .as("a plan at once has no time to look for it")
                .noneMatch(each -> each.cause().equals("NO_ORDER_FITS"));
        Plan alone = Planner.draw(only(question, reason.services()), 300);
        assertThat(alone.totals().waitMinutes() > plan.totals().waitMinutes()
                        || alone.bowls().size() >= reason.leastBowls())
                .isTrue();
    }

    private static PlanQuestion only(PlanQuestion question, List<Integer> services) {
        return question.withServices(question.services().stream()
                .filter(each -> services.contains(each.service()))
                .toList());
    }
}
