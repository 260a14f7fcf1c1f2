package stirtide.planner.planning.search;

import static org.assertj.core.api.Assertions.assertThat;
import static stirtide.planner.planning.search.Altered.at;
import static stirtide.planner.planning.search.Altered.with;
import static stirtide.planner.planning.search.SmallDay.minute;
import static stirtide.planner.planning.search.SmallDay.zone;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stirtide.events.plan.Plan;
import stirtide.events.plan.Plan.PlanNote;
import stirtide.events.plan.PlannedBowl;
import stirtide.planner.check.PlanChecker;
import stirtide.planner.planning.bounds.BoundedPlanner;
import stirtide.planner.planning.search.PlanQuestion.LiveSupply;
import stirtide.planner.planning.search.PlanQuestion.ZoneTask;

/** Little left in bowls and on the shelf, and times and names as the salon knows them. */
class LittleLeftTest {
    private static Plan valid(PlanQuestion question) {
        Plan plan = BoundedPlanner.draw(question, 20);
        assertThat(PlanChecker.check(question, plan)).isEmpty();
        return plan;
    }

    private static SmallDay begun(int minutesLeft, int lifeEnd, int leftMilligrams) {
        SmallDay day = new SmallDay().people("ida").scales(1);
        day.now = 600;
        ZoneTask zone = with(zone("crown", minutesLeft, 2 * minutesLeft), "begunMinute", Optional.of(580));
        return day.service(580, List.of(new LiveSupply("1a", 580, lifeEnd, leftMilligrams)), zone);
    }

    /** Two grams are used a minute; 20 g are needed in the 10 minutes from 10:00 on. */
    @ParameterizedTest
    @CsvSource({
        "620, 20000, 0",
        "620, 18000, 0", // one minute's grams short: an estimate
        "620, 17999, 1", // more than that
        "609, 20000, 0", // lives until the last minute: what it needs is applied before
        "608, 20000, 1", // two minutes beyond its life: never
    })
    void no_bowl_is_planned_for_one_minute_of_an_estimate(int lifeEnd, int leftMilligrams, int bowls) {
        Plan plan = valid(begun(10, lifeEnd, leftMilligrams).question());
        assertThat(plan.bowls()).hasSize(bowls);
        assertThat(plan.totals().bowlBound().orElse(bowls)).isLessThanOrEqualTo(bowls);
    }

    @Test
    void a_bowl_that_is_needed_anyway_also_feeds_the_minute_that_lacks_grams() {
        SmallDay day = new SmallDay().people("ida").scales(1);
        day.now = 600;
        day.service(600, List.of(new LiveSupply("1a", 600, 640, 17_000)), zone("crown", 10, 20), zone("sides", 10, 20));
        assertThat(valid(day.question()).bowls())
                .singleElement()
                .satisfies(bowl -> assertThat(minute(bowl.neededFrom())).isEqualTo(608));
    }

    @Test
    void a_counted_product_that_does_not_last_is_told_with_bowl_and_time() {
        SmallDay day = new SmallDay().people("ida").scales(1);
        day.service(600, zone("crown", 20, 34)).service(660, zone("ends", 20, 34));
        PlanQuestion plenty = day.question();
        PlanQuestion scarce = with(
                plenty,
                "directions",
                at(plenty.directions(), 0, with(plenty.directions().get(0), "countedMilligrams", Optional.of(15_000))));
        assertThat(valid(plenty).notes()).isEmpty();
        Plan plan = valid(scarce);
        assertThat(plan.notes())
                .containsExactly(new PlanNote(
                        "STOCK_SHORT",
                        2,
                        "Invented dune runs out at 10:53, with bowl 2a: 15.0 g are left by the count and 9.0 g more"
                                + " are needed today."));
        assertThat(PlanChecker.check(scarce, with(plan, "notes", List.of())))
                .anySatisfy(found -> assertThat(found).contains("the notes say otherwise"));
    }

    @Test
    void times_are_told_as_the_clock_of_the_salon_shows_them_after_its_change() {
        SmallDay day = new SmallDay().people("ida").scales(1);
        day.zone = ZoneId.of("Europe/Berlin");
        day.dayStart = LocalDate.of(2027, 3, 28).atStartOfDay(day.zone).toInstant();
        day.now = 598;
        day.service(600, zone("crown", 20, 20));
        // 598 minutes after midnight the clock shows 10:58: it was put an hour ahead at two.
        assertThat(valid(day.question()).waits())
                .singleElement()
                .satisfies(reason -> assertThat(reason.sentence()).contains("nothing can start before 10:58"));
    }

    @Test
    void people_are_told_by_name_and_a_changed_hand_has_its_reason() {
        SmallDay day = new SmallDay().people("ida", "tom").scales(1).service(600, zone("crown", 20, 20));
        day.onShow = Optional.of(valid(day.question()));
        PlannedBowl shown = day.onShow.get().bowls().get(0);
        day.assistants.set(0, with(with(day.assistants.get(0), "name", "Ida Blum"), "onDuty", List.of()));
        day.assistants.set(1, with(day.assistants.get(1), "name", "Tom Ost"));
        assertThat(shown.personId()).contains("ida");
        assertThat(valid(day.question()).changes())
                .containsExactly("Bowl 1a for chair 1 goes from Ida Blum to Tom Ost: Ida Blum is not on duty from"
                        + " 09:53 to 09:58.");
    }

    @Test
    void a_new_and_a_dropped_bowl_are_told_with_their_reason() {
        SmallDay day = new SmallDay().people("ida").scales(1).service(600, zone("crown", 50, 50));
        day.onShow = Optional.of(valid(day.question()));
        Instant second = day.onShow.get().bowls().get(1).mixStart();
        day.services.clear();
        day.service(600, zone("crown", 30, 30)).service(700, zone("ends", 10, 10));
        assertThat(minute(second)).isGreaterThan(593);
        assertThat(valid(day.question()).changes())
                .contains(
                        "Bowl 1b is not needed any more: the other bowls suffice.",
                        "New: Ida mixes bowl 2a for chair 2 at 11:33: service 2 is new, first for ends.");
    }
}
