package stirtide.planner.day.bowl;

import static org.assertj.core.api.Assertions.assertThat;
import static stirtide.planner.day.Given.at;
import static stirtide.planner.day.Given.booking;
import static stirtide.planner.day.Given.onScale;
import static stirtide.planner.day.Given.planned;

import java.util.List;
import org.junit.jupiter.api.Test;
import stirtide.events.command.DayCommand.BeginBowl;
import stirtide.events.command.DayCommand.BinBowl;
import stirtide.events.command.DayCommand.CancelService;
import stirtide.events.command.DayCommand.ChangeShift;
import stirtide.events.command.DayCommand.OpenDay;
import stirtide.events.day.DayEvent.BowlBegun;
import stirtide.events.day.OverMixCause;
import stirtide.planner.day.Given;
import stirtide.planner.day.Scene;

class BowlBeginRulesTest {
    private final Scene scene = Scene.planned().at("09:54");

    @Test
    void a_bowl_is_begun_as_planned_and_lives_from_then_on() {
        scene.does(new BeginBowl("1a", "bo"));
        assertThat(scene.newest())
                .isEqualTo(new BowlBegun("1a", 1, 1, "bo", "bar-1", "M", Given.formula(), at("10:34")));
    }

    @Test
    void somebody_else_on_duty_may_mix_it() {
        scene.does(new BeginBowl("1a", "mika"));
        assertThat(scene.day.bowl("1a").orElseThrow().personId()).isEqualTo("mika");
    }

    @Test
    void a_bowl_outside_the_plan_is_refused_and_the_queue_named() {
        assertThat(scene.refused(new BeginBowl("3a", "bo"), "BOWL_NOT_PLANNED").sentence())
                .contains("1a, 2a");
        scene.refused(new BeginBowl("nonsense", "bo"), "BOWL_NOT_PLANNED");
    }

    @Test
    void nothing_is_begun_before_a_plan_is_drawn() {
        Scene.open(booking("one", "full", 1, "10:00")).refused(new BeginBowl("1a", "bo"), "BOWL_NOT_PLANNED");
    }

    @Test
    void a_bowl_is_begun_once_even_after_it_was_binned() {
        scene.does(new BeginBowl("1a", "bo"));
        scene.refused(new BeginBowl("1a", "mika"), "BOWL_ALREADY_BEGUN");
        scene.does(new BinBowl("1a", 0, OverMixCause.SPILLED));
        scene.refused(new BeginBowl("1a", "bo"), "BOWL_ALREADY_BEGUN");
        assertThat(scene.day.service(1).orElseThrow().nextBowl()).isEqualTo("1b");
    }

    @Test
    void the_first_bowl_of_a_service_comes_first() {
        scene.plans(planned("1b", 1, "10:00", "10:10"));
        scene.refused(new BeginBowl("1b", "bo"), "BOWL_OUT_OF_ORDER");
    }

    @Test
    void a_bowl_of_a_cancelled_service_is_refused() {
        scene.does(new CancelService(1, ""));
        scene.refused(new BeginBowl("1a", "bo"), "BOWL_NOT_PLANNED");
    }

    @Test
    void the_person_must_exist_be_on_duty_and_be_free() {
        scene.refused(new BeginBowl("1a", "nobody"), "PERSON_UNKNOWN");
        scene.does(new ChangeShift("bo", List.of(Given.span("10:00", "12:00"))));
        scene.refused(new BeginBowl("1a", "bo"), "PERSON_OFF_DUTY");
        scene.does(new BeginBowl("1a", "mika")).at("10:20");
        scene.refused(new BeginBowl("2a", "mika"), "PERSON_MIXING");
    }

    @Test
    void a_person_is_off_duty_at_the_last_instant_of_the_shift() {
        scene.does(new ChangeShift("bo", List.of(Given.span("08:00", "09:54"))));
        scene.refused(new BeginBowl("1a", "bo"), "PERSON_OFF_DUTY");
    }

    @Test
    void the_scale_of_the_plan_must_be_free_and_is_after_weighing() {
        scene.does(new BeginBowl("1a", "bo")).at("10:20");
        scene.refused(new BeginBowl("2a", "mika"), "SCALE_BUSY");
        scene.does(Scene.weigh("1a", 30_000, 60_000)).does(new BeginBowl("2a", "bo"));
        assertThat(scene.day.liveBowls()).hasSize(2);
    }

    @Test
    void a_bowl_of_the_size_must_be_there() {
        var small = new Scene()
                .does(new OpenDay(
                        Given.setup(2, 1),
                        List.of(booking("one", "full", 1, "10:00"), booking("two", "foils", 2, "10:30"))))
                .plans(planned("1a", 1, "09:54", "10:00"), onScale(planned("2a", 2, "10:24", "10:30"), "bar-2"))
                .at("09:54")
                .does(new BeginBowl("1a", "bo"))
                .at("10:20");
        small.refused(new BeginBowl("2a", "mika"), "NO_BOWL_FREE");
        small.does(new BinBowl("1a", 0, OverMixCause.SPILLED)).does(new BeginBowl("2a", "mika"));
    }

    @Test
    void a_bowl_that_would_be_dead_at_its_first_use_is_refused() {
        scene.at("09:20").refused(new BeginBowl("1a", "bo"), "BOWL_TOO_EARLY");
        scene.at("09:20:01").does(new BeginBowl("1a", "bo"));
    }
}
