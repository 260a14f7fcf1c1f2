package stirtide.planner.check.floor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import stirtide.planner.planning.floor.BowlAssignment;
import stirtide.planner.planning.floor.DutySpan;
import stirtide.planner.planning.floor.FloorAssistant;
import stirtide.planner.planning.floor.FloorBowlSize;
import stirtide.planner.planning.floor.FloorDay;
import stirtide.planner.planning.floor.FloorMix;
import stirtide.planner.planning.floor.FloorPlan;
import stirtide.planner.planning.floor.FloorScore;
import stirtide.planner.planning.floor.FloorService;
import stirtide.planner.planning.floor.FloorZone;
import stirtide.planner.planning.floor.ServiceTimes;

/** A plan that keeps every rule, broken one rule at a time. */
class FloorPlanCheckTest {
    private int scales;
    private int basins;
    private int bowls;
    private boolean stylistsRinse;
    private int dutyEnd;
    private int secondStylist;
    private int secondChair;
    private int secondMix;
    private List<BowlAssignment> plannedBowls;
    private List<ServiceTimes> plannedServices;
    private FloorScore score;

    @BeforeEach
    void aPlanThatKeepsAllRules() {
        scales = 2;
        basins = 2;
        bowls = 4;
        dutyEnd = 100;
        secondStylist = 1;
        secondChair = 1;
        secondMix = 0;
        plannedBowls = new ArrayList<>(List.of(
                new BowlAssignment(1, 0, 4, 0, 6, 0),
                new BowlAssignment(1, 4, 10, 0, 10, 0),
                new BowlAssignment(2, 0, 10, 0, 6, 1)));
        plannedServices = new ArrayList<>(
                List.of(new ServiceTimes(1, minutes(10, 20), 25, 0), new ServiceTimes(2, minutes(10, 20), 25, 1)));
        score = new FloorScore(0, 10 + 40 + 60 + 10, 0);
    }

    private static List<Integer> minutes(int from, int to) {
        return IntStream.range(from, to).boxed().toList();
    }

    private FloorDay day() {
        FloorZone first = new FloorZone(0, 6, 300, 0, 5, 20);
        FloorZone second = new FloorZone(0, 4, 200, secondMix, 5, 20);
        List<Integer> breaks = List.of(2, 4, 6, 8);
        FloorAssistant assistant = new FloorAssistant(List.of(new DutySpan(0, dutyEnd)));
        return new FloorDay(
                1,
                3,
                scales,
                basins,
                4,
                stylistsRinse,
                1,
                200,
                List.of(assistant, assistant),
                List.of(new FloorBowlSize(600, 10, bowls)),
                List.of(new FloorMix(3, 18), new FloorMix(3, 18)),
                List.of(
                        new FloorService(1, 0, 0, 10, List.of(first, second), breaks),
                        new FloorService(2, secondStylist, secondChair, 10, List.of(first, second), breaks)));
    }

    private List<String> faults() {
        return FloorPlanCheck.faults(day(), new FloorPlan(plannedBowls, plannedServices, score));
    }

    private void breaks(String rule) {
        assertThat(faults()).isNotEmpty().allMatch(fault -> fault.startsWith(rule + ":"));
    }

    private void first(UnaryOperator<ServiceTimes> change) {
        plannedServices.set(0, change.apply(plannedServices.get(0)));
    }

    private void moveFirst(int by) {
        first(one -> new ServiceTimes(
                1, one.minutes().stream().map(m -> m + by).toList(), one.rinse() + by, one.rinseAssistant()));
    }

    @Test
    void the_plan_keeps_all_rules() {
        score = new FloorScore(
                0,
                FloorPlanCheck.score(day(), plannedBowls.subList(0, 2), plannedServices.get(0))
                                .handling()
                        + FloorPlanCheck.score(day(), plannedBowls.subList(2, 3), plannedServices.get(1))
                                .handling(),
                0);
        assertThat(score.handling()).isEqualTo(3 * 10 + 30);
        assertThat(faults()).isEmpty();
    }

    @Test
    void a_wrong_score_is_found() {
        breaks("value");
    }

    @Test
    void every_minute_is_fed_once() {
        plannedBowls.remove(1);
        breaks("cover");
    }

    @Test
    void bowls_change_at_breaks() {
        plannedBowls.set(0, new BowlAssignment(1, 0, 3, 0, 6, 0));
        plannedBowls.set(1, new BowlAssignment(1, 3, 10, 0, 10, 0));
        assertThat(faults()).anyMatch(fault -> fault.startsWith("breaks:"));
    }

    @Test
    void nobody_begins_before_the_booking() {
        moveFirst(-1);
        assertThat(faults()).anyMatch(fault -> fault.startsWith("booked:"));
    }

    @Test
    void the_clock_runs_forward() {
        List<Integer> twice = new ArrayList<>(minutes(10, 20));
        twice.set(5, 14);
        first(one -> new ServiceTimes(1, twice, 25, 0));
        assertThat(faults()).anyMatch(fault -> fault.startsWith("clock:"));
    }

    @Test
    void nobody_waits_inside_a_bowl() {
        List<Integer> late = new ArrayList<>(minutes(10, 15));
        late.addAll(minutes(16, 21));
        first(one -> new ServiceTimes(1, late, 26, 0));
        assertThat(faults()).anyMatch(fault -> fault.startsWith("waits:"));
    }

    @Test
    void a_rinse_waits_for_the_color() {
        first(one -> new ServiceTimes(1, one.minutes(), 24, 0));
        breaks("rinse early");
    }

    @Test
    void a_rinse_does_not_come_too_late() {
        first(one -> new ServiceTimes(1, one.minutes(), 31, 0));
        breaks("longest");
    }

    @Test
    void a_bowl_is_ready_when_it_is_needed() {
        plannedBowls.set(0, new BowlAssignment(1, 0, 4, 0, 7, 0));
        breaks("ready");
    }

    @Test
    void a_bowl_is_not_used_beyond_its_life() {
        plannedBowls.set(1, new BowlAssignment(1, 4, 10, 0, 1, 0));
        breaks("life");
    }

    @Test
    void a_bowl_does_not_overflow() {
        FloorDay day = day();
        FloorDay small = new FloorDay(
                1,
                3,
                2,
                2,
                4,
                false,
                1,
                200,
                day.assistants(),
                List.of(new FloorBowlSize(500, 10, 4)),
                day.mixes(),
                day.services());
        assertThat(FloorPlanCheck.faults(small, new FloorPlan(plannedBowls, plannedServices, score)))
                .isNotEmpty()
                .allMatch(fault -> fault.startsWith("fits:"));
    }

    private void breaksShared(String rule) {
        assertThat(faults()).anyMatch(fault -> fault.startsWith(rule + ":"));
    }

    @Test
    void an_assistant_does_one_thing_at_a_time() {
        plannedBowls.set(2, new BowlAssignment(2, 0, 10, 0, 6, 0));
        breaksShared("assistant");
    }

    @Test
    void nobody_works_off_duty() {
        dutyEnd = 27;
        breaksShared("duty");
    }

    @Test
    void scales_are_limited() {
        scales = 1;
        breaksShared("scales");
    }

    @Test
    void bowls_are_limited_until_washed() {
        bowls = 2;
        breaksShared("stock");
    }

    @Test
    void basins_are_limited() {
        basins = 1;
        breaksShared("basins");
    }

    @Test
    void a_stylist_has_one_pair_of_hands() {
        secondStylist = 0;
        breaksShared("stylist");
    }

    @Test
    void a_chair_has_one_seat() {
        secondChair = 0;
        breaksShared("chair");
    }

    @Test
    void where_stylists_rinse_no_assistant_is_named() {
        stylistsRinse = true;
        breaksShared("rinse assistant");
    }

    @Test
    void every_service_is_there_once() {
        plannedServices.remove(1);
        breaksShared("form");
    }

    @Test
    void a_bowl_feeds_one_mix() {
        secondMix = 1;
        assertThat(faults()).anyMatch(fault -> fault.startsWith("mixes:"));
    }

    @Test
    void nobody_waits_too_long_in_all() {
        moveFirst(91);
        assertThat(faults()).anyMatch(fault -> fault.startsWith("90 minutes:"));
    }

    @Test
    void a_stylist_begins_services_in_the_order_of_booking() {
        secondStylist = 0;
        moveFirst(1);
        plannedBowls.set(0, new BowlAssignment(1, 0, 4, 0, 7, 0));
        breaksShared("stylist order");
    }

    @Test
    void a_chair_seats_clients_in_the_order_of_booking() {
        secondChair = 0;
        moveFirst(1);
        breaksShared("chair order");
    }

    @Test
    void a_service_that_is_not_booked_is_found() {
        plannedServices.add(new ServiceTimes(3, minutes(10, 20), 25, 0));
        breaks("form");
    }

    @Test
    void a_size_or_an_assistant_that_is_not_there_is_found() {
        plannedBowls.set(0, new BowlAssignment(1, 0, 4, 1, 6, 0));
        breaks("form");
        plannedBowls.set(0, new BowlAssignment(1, 0, 4, 0, 6, 2));
        breaks("form");
    }

    @Test
    void bounds_above_what_can_be_confirmed_are_found() {
        FloorScore worth = new FloorScore(0, 3 * 10 + 30, 0);
        assertThat(FloorBoundCheck.faults(day(), worth, new FloorScore(0, 20, 0)))
                .isEmpty();
        assertThat(FloorBoundCheck.faults(day(), worth, new FloorScore(1, 20, 0)))
                .hasSize(1);
        assertThat(FloorBoundCheck.faults(day(), worth, new FloorScore(0, 21, 0)))
                .hasSize(1);
        assertThat(FloorBoundCheck.faults(day(), worth, new FloorScore(0, 20, 1)))
                .hasSize(1);
    }
}
