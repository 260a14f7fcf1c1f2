package stirtide.planner.planning.search;

import static org.assertj.core.api.Assertions.assertThat;
import static stirtide.planner.planning.search.Altered.with;
import static stirtide.planner.planning.search.SmallDay.minute;
import static stirtide.planner.planning.search.SmallDay.zone;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stirtide.events.plan.Plan;
import stirtide.events.plan.PlannedBatch;
import stirtide.events.setup.BowlSize;
import stirtide.planner.check.PlanChecker;
import stirtide.planner.planning.bounds.BoundedPlanner;

/** Mixing takes 5 minutes, dividing 1, the way to the chair 2, a mix lives 40; a bowl holds 120 g and loses 2 g. */
class BatchPairingTest {
    private static SmallDay bar() {
        return new SmallDay().people("ida").scales(1);
    }

    private static PlanQuestion wanted(SmallDay day) {
        return with(day.question(), "oneMixTwoBowls", true);
    }

    private static Plan drawn(PlanQuestion question) {
        Plan plan = Planner.draw(question, 5);
        assertThat(PlanChecker.check(question, plan)).isEmpty();
        return plan;
    }

    private static SmallDay two() {
        return bar().service(600, zone("crown", 20, 30)).service(605, zone("sides", 20, 21));
    }

    @Test
    void two_clients_with_one_formula_get_one_mix_for_two_bowls() {
        Plan plan = drawn(wanted(two()));
        PlannedBatch batch = plan.batches().get(0);
        assertThat(plan.batches()).hasSize(1);
        assertThat(batch.bowlIds()).containsExactly("1a", "2a");
        // 10:00 less 2 to carry, 1 to divide, 5 to mix
        assertThat(minute(batch.mixStart())).isEqualTo(592);
        assertThat(minute(batch.mixEnd())).isEqualTo(598);
        assertThat(minute(batch.lifeEnds())).isEqualTo(632);
        assertThat(batch.savedMinutes()).isEqualTo(4);
        // 30 g and 21 g are needed and 2 g stay in each bowl; 55 g at 1:2 on a scale of tenths of a gram
        assertThat(batch.formula().totalMilligrams()).isBetween(55_000, 55_100);
        assertThat(batch.shares().get(1).milligrams()).isEqualTo(23_000);
        assertThat(batch.shares().get(0).milligrams()).isBetween(32_000, 32_100);
    }

    @Test
    void nothing_else_in_the_plan_changes_and_no_more_is_mixed() {
        Plan without = drawn(two().question());
        Plan plan = drawn(wanted(two()));
        assertThat(without.batches()).isEmpty();
        assertThat(plan.withBatches(List.of())).isEqualTo(without);
        int apart = without.totals().mixedMilligrams();
        assertThat(plan.batches().get(0).formula().totalMilligrams()).isLessThanOrEqualTo(apart);
        assertThat(plan.batches().get(0).savedMilligrams())
                .isEqualTo(apart - plan.batches().get(0).formula().totalMilligrams());
    }

    @Test
    void where_two_bowls_may_be_one_mix_proofs_count_each_person_and_scale_twice() {
        Plan proven = BoundedPlanner.draw(wanted(two()), 5);
        assertThat(proven.batches()).hasSize(1);
        assertThat(proven.totals().bowlBound()).contains(2);
        SmallDay late = new SmallDay().people("ida").scales(1);
        late.now = 600;
        for (int i = 0; i < 3; i++) late.service(600, zone("crown", 10, 20));
        // At the chair at 607, 612 and 617 one after the other; no sooner than 607, 607 and 612 if two may be one mix.
        assertThat(BoundedPlanner.draw(late.question(), 30).totals().waitBound())
                .contains(36);
        assertThat(BoundedPlanner.draw(wanted(late), 30).totals().waitBound().orElseThrow())
                .isBetween(22, 26);
    }

    @Test
    void first_uses_more_than_ten_minutes_apart_are_no_pair() {
        assertThat(drawn(wanted(bar().service(600, zone("crown", 15, 30)).service(610, zone("sides", 15, 21))))
                        .batches())
                .hasSize(1);
        assertThat(drawn(wanted(bar().service(600, zone("crown", 15, 30)).service(611, zone("sides", 15, 21))))
                        .batches())
                .isEmpty();
    }

    @Test
    void a_mix_must_live_until_the_last_use_of_both() {
        // begun at 592 it lives until 632: application from 605 may last 27 minutes, not 28
        assertThat(drawn(wanted(bar().service(600, zone("crown", 20, 20)).service(605, zone("sides", 27, 27))))
                        .batches())
                .hasSize(1);
        assertThat(drawn(wanted(bar().service(600, zone("crown", 20, 20)).service(605, zone("sides", 28, 28))))
                        .batches())
                .isEmpty();
    }

    @Test
    void a_mix_must_fit_into_one_of_the_bowls() {
        // 58 g and 58 g with 2 g each that stay make 120 g
        assertThat(drawn(wanted(bar().service(600, zone("crown", 20, 58)).service(605, zone("sides", 20, 58))))
                        .batches())
                .hasSize(1);
        assertThat(drawn(wanted(bar().service(600, zone("crown", 20, 58)).service(605, zone("sides", 20, 59))))
                        .batches())
                .isEmpty();
    }

    @Test
    void a_larger_bowl_is_taken_for_the_mix_where_no_more_grams_are_lost() {
        SmallDay day = bar().service(600, zone("crown", 20, 90)).service(605, zone("sides", 20, 60));
        PlanQuestion question = with(
                wanted(day),
                "bowlSizes",
                List.of(new BowlSize("tub", 120_000, 2_000, 4), new BowlSize("vat", 200_000, 2_000, 1)));
        Plan plan = drawn(question);
        assertThat(plan.batches()).hasSize(1);
        assertThat(plan.batches().get(0).shares().get(0).bowlSizeId()).isEqualTo("vat");
        assertThat(plan.batches().get(0).shares().get(1).bowlSizeId()).isEqualTo("tub");
        PlanQuestion greedy = with(
                wanted(day),
                "bowlSizes",
                List.of(new BowlSize("tub", 120_000, 2_000, 4), new BowlSize("vat", 200_000, 6_000, 1)));
        assertThat(drawn(greedy).batches()).isEmpty();
    }

    @Test
    void clients_who_want_other_mixes_are_no_pair() {
        SmallDay day = two();
        var second = day.services.get(1);
        var run = second.runs().get(0);
        for (var other : List.of(with(run, "ratioThousandths", 1900), with(run, "strengthHundredths", 599))) {
            day.services.set(1, with(second, "runs", List.of(other)));
            assertThat(Planner.draw(wanted(day), 5).batches()).isEmpty();
        }
        day.services.set(1, second);
        assertThat(Planner.draw(wanted(day), 5).batches()).hasSize(1);
    }

    @Test
    void of_two_techniques_the_narrower_window_holds() {
        Plan plan = drawn(
                wanted(bar().service(600, zone("crown", 20, 30)).service(605, zone("roots", "scalp", 0, 20, 21, 1))));
        var formula = plan.batches().get(0).formula();
        // foil 1:1.5 to 1:2.5, scalp 1:1 to 1:2
        assertThat(formula.lowestRatioThousandths()).isEqualTo(1500);
        assertThat(formula.highestRatioThousandths()).isEqualTo(2000);
        assertThat(formula.worstHighRatioThousandths()).isLessThanOrEqualTo(2000);
    }

    @Test
    void a_pair_needs_somebody_for_the_whole_mix_beside_all_other_mixes() {
        // the third client's bowl is mixed from 586 to 591 at the latest, the pair takes 592 to 598
        SmallDay day = bar().service(600, zone("crown", 20, 30)).service(607, zone("sides", 20, 21));
        assertThat(minute(drawn(wanted(day)).batches().get(0).mixStart())).isEqualTo(592);
        var ida = SmallDay.person("ida", 480, 597);
        assertThat(drawn(with(wanted(day), "assistants", List.of(ida, SmallDay.person("tom", 599, 1200))))
                        .batches())
                .allSatisfy(batch -> assertThat(minute(batch.mixEnd())).isLessThanOrEqualTo(597));
    }

    @Test
    void a_pair_on_show_comes_first_and_keeps_its_start_when_a_closer_client_comes() {
        SmallDay day = new SmallDay().people("ida", "tom").scales(2);
        day.service(600, zone("crown", 20, 30)).service(605, zone("sides", 20, 21));
        Plan shown = drawn(wanted(day));
        day.service(600, zone("ends", 20, 20));
        Plan fresh = drawn(wanted(day));
        assertThat(fresh.batches().get(0).bowlIds()).containsExactlyInAnyOrder("1a", "3a");
        Plan kept = drawn(with(wanted(day), "onShow", Optional.of(shown)));
        assertThat(kept.batches().get(0).bowlIds()).containsExactlyInAnyOrder("1a", "2a");
        assertThat(kept.batches().get(0).mixStart())
                .isEqualTo(shown.batches().get(0).mixStart());
    }

    @Test
    void a_bowl_about_to_be_mixed_alone_is_not_joined_any_more() {
        SmallDay day = two();
        Plan alone = drawn(day.question());
        day.now = 589;
        var question = with(wanted(day), "onShow", Optional.of(alone));
        assertThat(minute(alone.bowls().get(0).mixStart())).isEqualTo(593);
        assertThat(drawn(question).batches()).isEmpty();
        day.now = 588;
        assertThat(drawn(with(wanted(day), "onShow", Optional.of(alone))).batches())
                .hasSize(1);
    }

    @Test
    void changes_say_which_bowls_are_one_mix_now_and_which_are_two_again() {
        SmallDay day = two();
        Plan alone = drawn(day.question());
        Plan joined = drawn(with(wanted(day), "onShow", Optional.of(alone)));
        assertThat(joined.changes())
                .containsExactly("Bowls 1a and 2a are one mix for two bowls now: Ida begins it at 09:52.");
        assertThat(drawn(with(day.question(), "onShow", Optional.of(joined))).changes())
                .containsExactly("Bowls 1a and 2a are two mixes again.");
        assertThat(drawn(with(wanted(day), "onShow", Optional.of(joined))).changes())
                .isEmpty();
    }
}
