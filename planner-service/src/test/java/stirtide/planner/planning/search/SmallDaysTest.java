package stirtide.planner.planning.search;

import static org.assertj.core.api.Assertions.assertThat;
import static stirtide.planner.planning.search.SmallDay.minute;
import static stirtide.planner.planning.search.SmallDay.zone;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stirtide.events.plan.Plan;
import stirtide.events.plan.Plan.PlanNote;
import stirtide.events.plan.PlannedBowl;
import stirtide.events.setup.BowlSize;
import stirtide.planner.check.PlanChecker;
import stirtide.planner.planning.bounds.BoundedPlanner;
import stirtide.planner.planning.search.PlanQuestion.Assistant;
import stirtide.planner.planning.search.PlanQuestion.LiveSupply;
import stirtide.planner.planning.search.PlanQuestion.Minutes;

/** Days small enough to be planned by hand. */
class SmallDaysTest {
    private static Plan plan(SmallDay day) {
        PlanQuestion question = day.question();
        Plan plan = BoundedPlanner.draw(question, 200);
        assertThat(PlanChecker.check(question, plan)).isEmpty();
        assertThat(BoundedPlanner.draw(question, 200)).isEqualTo(plan);
        return plan;
    }

    private static List<Integer> starts(Plan plan) {
        return plan.bowls().stream().map(bowl -> minute(bowl.mixStart())).toList();
    }

    @Test
    void one_bowl_suffices_and_is_mixed_as_late_as_possible() {
        Plan plan = plan(new SmallDay().people("ida").scales(1).service(600, zone("crown", 30, 30)));
        assertThat(starts(plan)).containsExactly(593);
        assertThat(plan.totals().ageMinutes()).isEqualTo(7);
        assertThat(plan.totals().waitMinutes()).isZero();
        assertThat(plan.totals().bowlBound()).contains(1);
        PlannedBowl bowl = plan.bowls().get(0);
        assertThat(bowl.bowl()).isEqualTo("1a");
        assertThat(bowl.neededMilligrams()).isEqualTo(30_000);
        assertThat(bowl.formula().totalMilligrams()).isEqualTo(32_000);
    }

    @Test
    void two_bowls_because_a_mix_does_not_live_so_long() {
        Plan plan = plan(new SmallDay().people("ida").scales(1).service(600, zone("crown", 50, 50)));
        assertThat(plan.bowls()).hasSize(2);
        assertThat(plan.totals().waitMinutes()).isZero();
        assertThat(plan.totals().bowlBound()).contains(2);
        assertThat(plan.totals().ageMinutes()).isEqualTo(14);
    }

    @Test
    void two_bowls_because_one_does_not_hold_the_grams() {
        Plan plan = plan(new SmallDay().people("ida").scales(1).service(600, zone("crown", 20, 150)));
        assertThat(plan.bowls()).hasSize(2);
        assertThat(plan.bowls().stream().mapToInt(PlannedBowl::neededMilligrams).sum())
                .isEqualTo(150_000);
        assertThat(plan.totals().bowlBound()).contains(2);
    }

    @Test
    void a_bowl_goes_on_over_a_gap_while_it_lives() {
        Plan plan = plan(new SmallDay()
                .people("ida")
                .scales(1)
                .service(600, zone("crown", 10, 10), zone("sides", "foil", 8, 10, 10, 1)));
        assertThat(plan.bowls()).singleElement().satisfies(bowl -> {
            assertThat(bowl.zones()).containsExactly("crown", "sides");
            assertThat(minute(bowl.neededTo())).isEqualTo(628);
        });
    }

    @Test
    void more_clients_at_one_time_than_one_assistant_can_mix_for_wait_and_are_told_why() {
        SmallDay day = new SmallDay().people("ida").scales(1);
        day.life = 20;
        for (int i = 0; i < 4; i++) day.service(600, zone("crown", 1, 11));
        Plan plan = plan(day);
        // Used until 601 and living 20 minutes, nothing may start before 581; to be in time all four must be mixed by
        // 598.
        assertThat(starts(plan)).containsExactly(581, 586, 591, 596);
        assertThat(plan.totals().waitMinutes()).isEqualTo(3);
        assertThat(plan.waits()).singleElement().satisfies(reason -> {
            assertThat(reason.neededMinutes()).isEqualTo(20);
            assertThat(reason.availableMinutes()).isEqualTo(17);
            assertThat(reason.sentence()).isEqualTo("09:41 to 09:58 needs 20 minutes of mixing, Ida can give 17.");
        });
    }

    @Test
    void nobody_mixes_in_a_break() {
        SmallDay day = new SmallDay().scales(1).service(600, zone("crown", 20, 20));
        day.assistants.add(new Assistant(
                "ida", "Ida", List.of(new Minutes(480, 590), new Minutes(605, 1200)), 0, Optional.empty()));
        Plan plan = plan(day);
        assertThat(starts(plan)).containsExactly(585);
        assertThat(plan.totals().waitMinutes()).isZero();
    }

    @Test
    void one_scale_makes_two_assistants_mix_one_after_the_other() {
        SmallDay day = new SmallDay().people("ida", "tom").scales(1);
        day.service(600, zone("crown", 20, 20)).service(600, zone("crown", 20, 20));
        assertThat(starts(plan(day))).containsExactly(588, 593);
    }

    @Test
    void two_scales_do_not_help_one_assistant() {
        SmallDay day = new SmallDay().people("ida").scales(2);
        day.service(600, zone("crown", 20, 20)).service(600, zone("crown", 20, 20));
        assertThat(starts(plan(day))).containsExactly(588, 593);
    }

    @Test
    void two_assistants_with_two_scales_mix_at_one_time() {
        SmallDay day = new SmallDay().people("ida", "tom").scales(2);
        day.service(600, zone("crown", 20, 20)).service(600, zone("crown", 20, 20));
        assertThat(starts(plan(day))).containsExactly(593, 593);
    }

    @Test
    void the_only_bowl_is_washed_before_it_is_used_again() {
        SmallDay day = new SmallDay().people("ida").scales(1);
        day.bowl = new BowlSize("tub", 120_000, 2_000, 1);
        day.service(600, zone("crown", 20, 20)).service(625, zone("crown", 20, 20));
        Plan plan = plan(day);
        // Empty at 620, clean at 630, mixed by 635, at the chair at 637: the second client waits 12 minutes.
        assertThat(starts(plan)).containsExactly(593, 630);
        assertThat(plan.totals().waitMinutes()).isEqualTo(12);
        assertThat(plan.waits())
                .singleElement()
                .satisfies(reason -> assertThat(reason.sentence()).contains("in use or being washed"));
    }

    @Test
    void a_client_waits_for_what_can_start_only_now() {
        SmallDay day = new SmallDay().people("ida").scales(1).service(600, zone("crown", 20, 20));
        day.now = 598;
        Plan plan = plan(day);
        assertThat(plan.totals().waitMinutes()).isEqualTo(5);
        assertThat(plan.totals().waitBound()).contains(5);
        assertThat(plan.waits().get(0).sentence()).contains("nothing can start before 09:58");
    }

    @Test
    void a_live_bowl_feeds_first_and_the_next_follows_it() {
        SmallDay day = new SmallDay().people("ida").scales(1);
        day.now = 600;
        day.service(600, List.of(new LiveSupply("1a", 600, 630, 12_000)), zone("crown", 30, 30));
        Plan plan = plan(day);
        assertThat(plan.bowls()).singleElement().satisfies(bowl -> {
            assertThat(bowl.bowl()).isEqualTo("1b");
            assertThat(minute(bowl.neededFrom())).isEqualTo(612);
            assertThat(bowl.neededMilligrams()).isEqualTo(18_000);
        });
    }

    @Test
    void without_assistants_the_stylist_mixes_and_the_plan_says_so() {
        Plan plan = plan(new SmallDay().scales(1).service(600, zone("crown", 20, 20)));
        assertThat(plan.bowls())
                .singleElement()
                .satisfies(bowl -> assertThat(bowl.personId()).isEmpty());
        assertThat(plan.totals().waitMinutes()).isEqualTo(7);
        assertThat(plan.notes()).extracting(PlanNote::kind).containsExactly("STYLIST_MIXES");
        assertThat(plan.notes().get(0).sentence()).contains("no assistant works today");
    }

    @Test
    void what_the_directions_forbid_gets_no_bowl_but_a_reason() {
        SmallDay day = new SmallDay().people("ida").scales(1);
        day.rules = List.of(new PlanRules().foil(), new PlanRules().scalpUpTo(300));
        day.service(600, zone("roots", "scalp", 0, 10, 10, 1), zone("crown", "foil", 0, 10, 10, 1));
        Plan plan = plan(day);
        assertThat(plan.notes()).extracting(PlanNote::kind).containsExactly("RUN_SPLIT", "NO_FORMULA");
        assertThat(plan.bowls())
                .singleElement()
                .satisfies(bowl -> assertThat(bowl.zones()).containsExactly("crown"));
    }

    @Test
    void zones_of_several_techniques_share_a_bowl_inside_the_narrower_window() {
        SmallDay day = new SmallDay().people("ida").scales(1);
        day.service(600, zone("roots", "scalp", 0, 10, 10, 1), zone("crown", "foil", 0, 10, 10, 1));
        assertThat(plan(day).bowls()).singleElement().satisfies(bowl -> {
            assertThat(bowl.formula().lowestRatioThousandths()).isEqualTo(1500);
            assertThat(bowl.formula().highestRatioThousandths()).isEqualTo(2000);
        });
    }

    @Test
    void a_zone_is_rinsed_before_it_processes_too_long() {
        SmallDay day = new SmallDay().people("ida").scales(1);
        day.rules = List.of(new PlanRules().foilFor(45));
        day.service(600, zone("crown", 15, 15), zone("sides", "foil", 5, 15, 15, 1));
        Plan plan = plan(day);
        assertThat(plan.notes()).extracting(PlanNote::kind).containsExactly("RINSE_EARLY");
        assertThat(minute(plan.services().get(0).zones().get(0).rinseAt())).isEqualTo(645);
    }

    @Test
    void a_frozen_mix_stays_where_it_is_shown() {
        SmallDay day = new SmallDay().people("ida", "tom").scales(2).service(500, zone("crown", 20, 20));
        day.onShow = Optional.of(plan(day));
        day.now = 490;
        day.services.clear();
        day.service(504, zone("crown", 20, 20));
        Plan plan = plan(day);
        assertThat(starts(plan)).containsExactly(493);
        assertThat(plan.changes()).isEmpty();
    }

    @Test
    void a_moved_bowl_is_told_with_its_reason() {
        SmallDay day = new SmallDay().people("ida").scales(1).service(600, zone("crown", 20, 20));
        day.onShow = Optional.of(plan(day));
        day.services.clear();
        day.service(606, zone("crown", 20, 20));
        assertThat(plan(day).changes())
                .containsExactly(
                        "Bowl 1a for chair 1 is mixed at 09:59, not at 09:53: the chair needs it 6 minutes later.");
    }
}
