package stirtide.planner.planning.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stirtide.events.plan.Plan;
import stirtide.events.plan.PlannedBowl;
import stirtide.planner.check.PlanChecker;
import stirtide.planner.planning.search.PlanQuestion.Assistant;
import stirtide.planner.planning.search.PlanQuestion.Minutes;

/** Who mixes carries the bowl to the chair and can do nothing else meanwhile: common practice, no source. */
class CarryingTest {
    /** One assistant, three roots at one time: mixing takes 5 minutes, the way 2. */
    private static SmallDay rush(int carryMinutes) {
        SmallDay day = new SmallDay().people("ida").scales(1);
        for (int chair = 1; chair <= 3; chair++) day.service(600, SmallDay.zone("roots", 20, 20));
        day.carryMinutes = carryMinutes;
        day.now = 598;
        return day;
    }

    @Test
    void mixes_of_one_assistant_lie_as_far_apart_as_mixing_and_carrying_take() {
        assertThat(starts(rush(0))).containsExactly(598, 603, 608);
        assertThat(starts(rush(SmallDay.CARRY))).containsExactly(598, 605, 612);
    }

    private static List<Integer> starts(SmallDay day) {
        PlanQuestion question = day.question();
        Plan plan = Planner.draw(question, 2);
        assertThat(PlanChecker.check(question, plan)).isEmpty();
        return plan.bowls().stream()
                .map(bowl -> SmallDay.minute(bowl.mixStart()))
                .toList();
    }

    @Test
    void nobody_begins_a_mix_that_is_not_at_the_chair_before_the_shift_ends() {
        SmallDay day = rush(SmallDay.CARRY);
        day.assistants.clear();
        day.assistants.add(SmallDay.person("ida", 480, 611));
        PlanQuestion question = day.question();
        Plan plan = Planner.draw(question, 2);
        assertThat(PlanChecker.check(question, plan)).isEmpty();
        assertThat(plan.bowls()).filteredOn(bowl -> bowl.personId().isPresent()).hasSize(1);
    }

    /** Ida puts her bowl down at 10:04; her scale is free two minutes before. */
    @Test
    void whoever_carries_now_mixes_afterwards_on_a_scale_that_is_free_before() {
        SmallDay day = new SmallDay().scales(1).service(600, SmallDay.zone("roots", 20, 20));
        day.carryMinutes = SmallDay.CARRY;
        day.now = 598;
        day.assistants.add(new Assistant("ida", "Ida", List.of(new Minutes(480, 1200)), 604, Optional.of("s1")));
        assertThat(starts(day)).containsExactly(604);
        day.people("tom");
        assertThat(starts(day)).containsExactly(602);
    }

    @Test
    void the_checker_finds_a_mix_that_is_begun_while_its_assistant_carries() {
        PlanQuestion free = rush(0).question();
        Plan plan = Planner.draw(free, 2);
        assertThat(PlanChecker.check(free.withCarryMinutes(SmallDay.CARRY), plan))
                .anyMatch(fault -> fault.contains("mixed or carried at one time by or on ida"));
        PlannedBowl last = plan.bowls().get(2);
        List<Assistant> leaving = List.of(SmallDay.person("ida", 480, SmallDay.minute(last.mixEnd()) + 1));
        assertThat(PlanChecker.check(free.withAssistants(leaving), plan)).isEmpty();
        assertThat(PlanChecker.check(free.withAssistants(leaving).withCarryMinutes(SmallDay.CARRY), plan))
                .anyMatch(fault -> fault.contains("is not on duty until it is mixed and carried"));
    }
}
