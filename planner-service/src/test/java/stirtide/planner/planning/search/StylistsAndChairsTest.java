package stirtide.planner.planning.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stirtide.events.plan.Plan;
import stirtide.events.plan.PlannedService;
import stirtide.planner.check.PlanChecker;
import stirtide.planner.planning.search.PlanQuestion.Minutes;
import stirtide.planner.planning.search.PlanQuestion.ServiceTask;
import stirtide.planner.planning.search.PlanQuestion.Stylist;

/** One head at a time for each stylist, one client at a time on each chair, in the order booked: common practice, no source. */
class StylistsAndChairsTest {
    static IntStream seeds() {
        return IntStream.range(0, 60);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void no_stylist_is_at_two_heads_and_no_chair_seats_two_clients(int seed) {
        int services = 6 + seed % 15;
        PlanQuestion day = RandomQuestion.shared(seed, services, 3 + seed % 5, 4 + seed % 4);
        PlanQuestion question = seed % 3 == 0 ? day : day.withStylists(hours(day, seed));
        assertThat(PlanChecker.check(question, Planner.draw(question, seed % 2)))
                .isEmpty();
        assertThat(PlanChecker.check(question, Planner.atOnce(question).plan())).isEmpty();
    }

    /** Everybody has a break, one day in two somebody leaves early, one in three somebody is not there. */
    private static List<Stylist> hours(PlanQuestion day, int seed) {
        return day.services().stream()
                .flatMap(task -> task.stylistId().stream())
                .distinct()
                .map(id -> {
                    int place = Math.floorMod(id.hashCode() + seed, 6);
                    Minutes morning = new Minutes(480, 600 + 20 * place);
                    Minutes rest = new Minutes(630 + 20 * place, place % 2 == 0 ? 900 : 1200);
                    return new Stylist(id, place == 5 ? List.of() : List.of(morning, rest));
                })
                .toList();
    }

    @Test
    void a_service_waits_for_the_hours_of_its_stylist() {
        PlanQuestion day = pair(Optional.of("ines"), Optional.of("otto"), 1, 2)
                .withStylists(List.of(
                        new Stylist("ines", List.of(new Minutes(480, 620), new Minutes(650, 1080))),
                        new Stylist("otto", List.of(new Minutes(480, 1080)))));
        Plan plan = Planner.draw(day, 2);
        assertThat(PlanChecker.check(day, plan)).isEmpty();
        assertThat(plan.services().get(0).start()).isEqualTo(day.instantOf(650));
        assertThat(plan.services().get(0).waitMinutes()).isEqualTo(50);
        assertThat(plan.services().get(1).waitMinutes()).isZero();
        assertThat(plan.notes()).isEmpty();
        assertThat(plan.waits())
                .singleElement()
                .satisfies(wait -> assertThat(wait.sentence())
                        .isEqualTo("Service 1 waits 50 minutes for its stylist, whose hours hold all of its application"
                                + " only from 10:50 on."));
    }

    @Test
    void a_service_that_fits_no_hours_is_planned_as_booked_and_told() {
        PlanQuestion day = pair(Optional.of("ines"), Optional.of("otto"), 1, 2)
                .withStylists(List.of(new Stylist("ines", List.of(new Minutes(480, 610)))));
        Plan plan = Planner.draw(day, 2);
        assertThat(PlanChecker.check(day, plan)).isEmpty();
        assertThat(plan.services().get(0).start()).isEqualTo(day.instantOf(600));
        assertThat(plan.bowls()).allMatch(bowl -> bowl.personId().isPresent());
        assertThat(plan.notes())
                .singleElement()
                .satisfies(note -> assertThat(note.sentence())
                        .startsWith("Service 1 has no place as booked: its stylist is not on duty for all of its"
                                + " application until 10:30."));
        assertThat(PlanChecker.check(day, plan.withNotes(List.of())))
                .singleElement()
                .satisfies(fault -> assertThat(fault).contains("is not on duty for all of it"));
    }

    /** Two roots of 30 minutes by one stylist, booked ten minutes apart: the second waits the other twenty, and is told for whom. */
    @Test
    void a_second_head_of_a_stylist_begins_when_the_first_is_done_and_says_so() {
        PlanQuestion question = pair(Optional.of("ines"), Optional.of("ines"), 1, 2);
        Plan plan = Planner.draw(question, 2);
        assertThat(PlanChecker.check(question, plan)).isEmpty();
        PlannedService first = plan.services().get(0);
        PlannedService second = plan.services().get(1);
        assertThat(second.start()).isEqualTo(first.zones().get(0).applyEnd());
        assertThat(second.waitMinutes()).isEqualTo(20);
        assertThat(plan.waits())
                .singleElement()
                .satisfies(wait -> assertThat(wait.sentence())
                        .isEqualTo(
                                "Service 2 waits 20 minutes for its stylist, who applies on service 1 until 10:30."));
    }

    @Test
    void two_stylists_begin_as_booked() {
        Plan plan = Planner.draw(pair(Optional.of("ines"), Optional.of("otto"), 1, 2), 2);
        assertThat(plan.services())
                .allSatisfy(service -> assertThat(service.waitMinutes()).isZero());
    }

    @Test
    void a_client_whose_chair_is_taken_waits_until_the_other_is_rinsed() {
        PlanQuestion question = pair(Optional.of("ines"), Optional.of("otto"), 3, 3);
        Plan plan = Planner.draw(question, 2);
        assertThat(PlanChecker.check(question, plan)).isEmpty();
        assertThat(plan.services().get(1).start())
                .isEqualTo(plan.services().get(0).end());
        assertThat(plan.waits())
                .singleElement()
                .satisfies(wait -> assertThat(wait.sentence())
                        .startsWith("Service 2 waits ")
                        .contains(" for chair 3, where service 1 sits until its rinse at "));
    }

    @Test
    void the_checker_finds_a_head_in_two_places_and_a_chair_with_two_clients() {
        Plan free = Planner.draw(pair(Optional.of("ines"), Optional.of("otto"), 1, 2), 0);
        assertThat(PlanChecker.check(pair(Optional.of("ines"), Optional.of("ines"), 1, 2), free))
                .anyMatch(fault -> fault.contains("its stylist applies on service 1"));
        List<PlannedService> oneChair = new ArrayList<>(free.services());
        PlannedService second = oneChair.get(1);
        oneChair.set(
                1,
                new PlannedService(
                        second.service(), 1, second.start(), second.end(), second.waitMinutes(), second.zones()));
        assertThat(PlanChecker.check(pair(Optional.of("ines"), Optional.of("otto"), 1, 1), free.withServices(oneChair)))
                .anyMatch(fault -> fault.contains("sits in its chair"));
    }

    @Test
    void a_note_that_a_service_has_no_place_must_be_true() {
        PlanQuestion question = pair(Optional.of("ines"), Optional.of("otto"), 1, 2);
        Plan plan = Planner.draw(question, 0);
        List<Plan.PlanNote> notes = List.of(new Plan.PlanNote("NOT_AS_BOOKED", 2, "invented"));
        assertThat(PlanChecker.check(question, plan.withNotes(notes)))
                .anyMatch(fault -> fault.contains("says wrongly"));
    }

    /** A service under way is let be: its stylist goes on with it, and the next booking waits. */
    @Test
    void a_service_under_way_comes_before_those_that_were_booked_earlier() {
        PlanQuestion question = pair(Optional.of("ines"), Optional.of("ines"), 1, 2);
        List<ServiceTask> tasks = question.services();
        ServiceTask late = tasks.get(0);
        ServiceTask early = tasks.get(1);
        PlanQuestion swapped = question.withServices(List.of(
                late,
                new ServiceTask(
                        early.service(),
                        early.chair(),
                        early.stylistId(),
                        true,
                        early.startMinute(),
                        early.bowlsUsed(),
                        early.runs(),
                        early.processing())));
        Plan plan = Planner.draw(swapped, 2);
        assertThat(PlanChecker.check(swapped, plan)).isEmpty();
        Instant applied = plan.services().get(1).zones().get(0).applyEnd();
        assertThat(plan.services().get(0).start()).isEqualTo(applied);
    }

    private static PlanQuestion pair(Optional<String> one, Optional<String> other, int chair, int otherChair) {
        PlanQuestion day = new SmallDay()
                .people("ida", "tom")
                .scales(2)
                .service(600, SmallDay.zone("roots", 30, 30))
                .service(610, SmallDay.zone("roots", 30, 30))
                .question();
        List<ServiceTask> tasks = day.services();
        return day.withServices(List.of(at(tasks.get(0), one, chair), at(tasks.get(1), other, otherChair)));
    }

    private static ServiceTask at(ServiceTask task, Optional<String> stylistId, int chair) {
        return new ServiceTask(
                task.service(),
                chair,
                stylistId,
                task.started(),
                task.startMinute(),
                task.bowlsUsed(),
                task.runs(),
                task.processing());
    }
}
