package stirtide.planner.planning.search;

import static org.assertj.core.api.Assertions.assertThat;
import static stirtide.planner.planning.search.Altered.at;
import static stirtide.planner.planning.search.Altered.with;
import static stirtide.planner.planning.search.SmallDay.minute;
import static stirtide.planner.planning.search.SmallDay.zone;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stirtide.events.plan.Plan;
import stirtide.events.plan.Plan.PlanNote;
import stirtide.events.plan.PlannedService.PlannedZone;
import stirtide.planner.check.PlanChecker;
import stirtide.planner.planning.search.PlanQuestion.Assistant;
import stirtide.planner.planning.search.PlanQuestion.LiveSupply;
import stirtide.planner.planning.search.PlanQuestion.Minutes;
import stirtide.planner.planning.search.PlanQuestion.ZoneTask;

/** No zone is applied after its longest processing time while anything else is possible: the client waits before it. */
class ProcessingTimeTest {
    private static Plan valid(PlanQuestion question) {
        Plan plan = Planner.draw(question, 20);
        assertThat(PlanChecker.check(question, plan)).isEmpty();
        return plan;
    }

    private static SmallDay from(int onDutyFrom) {
        SmallDay day = new SmallDay().scales(1);
        day.assistants.add(new Assistant("ida", "Ida", List.of(new Minutes(onDutyFrom, 1200)), 0, Optional.empty()));
        return day;
    }

    /** A live bowl feeds crown and two minutes of sides; the next can be at the chair at 10:47 only. */
    private static SmallDay shortOfBowls() {
        SmallDay day = from(640);
        day.now = 600;
        day.rules = List.of(new PlanRules().foilFor(40));
        return day.service(
                600, List.of(new LiveSupply("1a", 600, 640, 12_000)), zone("crown", 10, 10), zone("sides", 20, 20));
    }

    @Test
    void a_zone_starts_late_rather_than_process_too_long() {
        Plan plan = valid(shortOfBowls().question());
        PlannedZone sides = plan.services().get(0).zones().get(1);
        // The second bowl feeds the last 18 minutes from 647 on; 665 - 40 = 625.
        assertThat(minute(sides.applyStart())).isEqualTo(625);
        assertThat(minute(sides.applyEnd())).isEqualTo(665);
        assertThat(sides.applyEnd()).isBeforeOrEqualTo(sides.rinseBy());
        assertThat(plan.services().get(0).waitMinutes()).isEqualTo(35);
        assertThat(plan.notes()).extracting(PlanNote::kind).doesNotContain("PROCESSING_OVER");
        assertThat(plan.waits())
                .anySatisfy(reason -> assertThat(reason.sentence())
                        .isEqualTo(
                                "Service 1 waits 15 minutes before sides: begun earlier it would not be applied within its"
                                        + " longest processing time, for want of bowls."));
    }

    @Test
    void the_checker_refuses_a_zone_that_processes_too_long_by_choice() {
        SmallDay day = shortOfBowls();
        PlanQuestion easier = day.question();
        day.rules = List.of(new PlanRules().foilFor(120));
        Plan early = valid(day.question());
        Plan noted = with(early, "notes", List.of(new PlanNote("PROCESSING_OVER", 1, "sides")));
        assertThat(PlanChecker.check(easier, noted))
                .anySatisfy(found -> assertThat(found).contains("before application does, and need not"));
    }

    @Test
    void a_zone_that_has_begun_and_processes_too_long_is_a_fact_with_a_note() {
        SmallDay day = from(640);
        day.now = 600;
        day.rules = List.of(new PlanRules().foilFor(40));
        ZoneTask begun = with(zone("sides", 20, 20), "begunMinute", Optional.of(590));
        day.service(590, List.of(), begun);
        assertThat(valid(day.question()).notes()).extracting(PlanNote::kind).contains("PROCESSING_OVER");
    }

    @Test
    void a_stylist_alone_mixes_ahead_when_the_zone_could_not_end_in_time_else() {
        SmallDay day = new SmallDay().scales(2);
        day.life = 60;
        day.rules = List.of(new PlanRules().foilFor(44));
        day.service(600, zone("crown", 40, 200));
        Plan plan = valid(day.question());
        // Two bowls of 118 g at most: the second one mixed in a pause of 7 minutes would end the zone after 47.
        assertThat(plan.bowls()).hasSize(2);
        assertThat(minute(plan.bowls().get(1).mixEnd()))
                .isLessThanOrEqualTo(minute(plan.services().get(0).start()));
        assertThat(plan.notes()).extracting(PlanNote::kind).doesNotContain("PROCESSING_OVER");
    }

    @Test
    void a_zone_that_no_bowls_can_feed_in_time_gets_none_and_the_reason() {
        SmallDay day = new SmallDay().scales(1);
        day.life = 12;
        day.rules = List.of(new PlanRules().foilFor(45));
        day.service(600, zone("crown", 40, 40));
        Plan plan = valid(day.question());
        assertThat(plan.bowls()).isEmpty();
        assertThat(plan.notes()).extracting(PlanNote::kind).doesNotContain("PROCESSING_OVER");
        assertThat(plan.notes()).first().satisfies(note -> {
            assertThat(note.kind()).isEqualTo("NO_FORMULA");
            assertThat(note.sentence()).contains("longest processing time of 45 minutes", "What helps");
        });
    }

    @Test
    void a_stylist_is_not_at_two_mixes_at_one_time() {
        SmallDay day = new SmallDay().scales(2);
        day.life = 60;
        day.rules = List.of(new PlanRules().foilFor(44));
        day.service(600, zone("crown", 40, 200));
        Plan plan = valid(day.question());
        var first = plan.bowls().get(0);
        var second = with(plan.bowls().get(1), "mixStart", first.mixStart());
        assertThat(PlanChecker.check(
                        day.question(),
                        with(plan, "bowls", at(plan.bowls(), 1, with(second, "mixEnd", first.mixEnd())))))
                .anySatisfy(found -> assertThat(found).contains("while still applying or mixing"));
    }
}
