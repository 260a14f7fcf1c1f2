package stirtide.planner.day.bowl;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import stirtide.events.command.DayCommand.BinBowl;
import stirtide.events.command.DayCommand.CancelService;
import stirtide.events.command.DayCommand.FinishBowl;
import stirtide.events.command.DayCommand.HandOverBowl;
import stirtide.events.command.DayCommand.StartService;
import stirtide.events.day.DayEvent.BowlBinned;
import stirtide.events.day.DayEvent.BowlFinished;
import stirtide.events.day.DayEvent.BowlHandedOver;
import stirtide.events.day.OverMixCause;
import stirtide.planner.day.Scene;

class BowlRulesTest {
    @Test
    void a_weighed_bowl_inside_the_directions_and_alive_is_handed_over() {
        var scene = Scene.begun().does(Scene.weigh("1a", 30_000, 60_000)).at("10:33:59");
        scene.does(new HandOverBowl("1a"));
        assertThat(scene.newest()).isEqualTo(new BowlHandedOver("1a"));
        scene.refused(new HandOverBowl("1a"), "BOWL_AT_CHAIR");
    }

    @Test
    void a_bowl_past_its_life_is_never_handed_over() {
        var scene = Scene.begun().does(Scene.weigh("1a", 30_000, 60_000)).at("10:34");
        var refusal = scene.refused(new HandOverBowl("1a"), "PAST_LIFE");
        assertThat(refusal.sentence()).contains("10:34").contains("Bin it");
    }

    @Test
    void a_clock_set_back_does_not_bring_a_bowl_back_to_life() {
        var scene = Scene.begun()
                .does(Scene.weigh("1a", 30_000, 60_000))
                .at("10:34")
                .ticks();
        scene.at("10:00").refused(new HandOverBowl("1a"), "PAST_LIFE");
    }

    @Test
    void a_bowl_outside_the_directions_is_never_handed_over() {
        var scene = Scene.begun().does(Scene.weigh("1a", 30_000, 30_000));
        assertThat(scene.refused(new HandOverBowl("1a"), "OUTSIDE_DIRECTIONS").sentence())
                .contains("too little developer: at least 1:1.5")
                .endsWith("Correct: add 30 g Developer 9, no tare in between, until the scale shows 60 g. "
                        + "The bowl is then 1:2, between 1:1.89 and 1:2.11 on this scale.");
        scene.does(Scene.weigh("1a", 30_000, 60_000)).does(new HandOverBowl("1a"));
    }

    @Test
    void a_bowl_nobody_weighed_is_not_handed_over() {
        Scene.begun().refused(new HandOverBowl("1a"), "NOT_WEIGHED");
    }

    @Test
    void a_bowl_of_a_client_who_left_is_not_handed_over() {
        var scene = Scene.begun().does(Scene.weigh("1a", 30_000, 60_000)).does(new CancelService(1, "left"));
        assertThat(scene.refused(new HandOverBowl("1a"), "SERVICE_CANCELLED").sentence())
                .contains("another client");
    }

    @Test
    void a_bowl_that_is_not_in_use_is_named_as_such() {
        var scene = Scene.begun();
        scene.refused(new HandOverBowl("9z"), "BOWL_UNKNOWN");
        scene.refused(new FinishBowl("9z"), "BOWL_UNKNOWN");
        scene.refused(new BinBowl("9z", 0, OverMixCause.SPILLED), "BOWL_UNKNOWN");
        scene.does(new BinBowl("1a", 0, OverMixCause.SPILLED));
        scene.refused(new HandOverBowl("1a"), "BOWL_CLOSED");
        scene.refused(new FinishBowl("1a"), "BOWL_CLOSED");
        scene.refused(new BinBowl("1a", 0, OverMixCause.SPILLED), "BOWL_CLOSED");
    }

    @Test
    void a_bowl_at_its_chair_is_finished_even_if_that_is_said_after_its_life() {
        Scene.begun().refused(new FinishBowl("1a"), "NOT_AT_CHAIR");
        var scene = Scene.atChair().at("10:40").does(new FinishBowl("1a"));
        assertThat(scene.newest()).isEqualTo(new BowlFinished("1a"));
    }

    @Test
    void no_more_is_left_than_was_mixed() {
        var scene = Scene.atChair();
        scene.refused(new BinBowl("1a", 90_001, OverMixCause.LEFT_OVER), "LEFT_TOO_MUCH");
        scene.refused(new BinBowl("1a", -1, OverMixCause.LEFT_OVER), "LEFT_TOO_MUCH");
        scene.does(new BinBowl("1a", 90_000, OverMixCause.LEFT_OVER));
        assertThat(scene.newest()).isEqualTo(new BowlBinned("1a", 90_000, OverMixCause.LEFT_OVER));
    }

    @Test
    void a_bowl_that_never_left_the_bar_goes_whole() {
        var scene = Scene.begun().does(Scene.weigh("1a", 30_000, 61_000));
        scene.does(new BinBowl("1a", 5_000, OverMixCause.SPILLED));
        assertThat(scene.newest()).isEqualTo(new BowlBinned("1a", 91_000, OverMixCause.SPILLED));
    }

    @Test
    void the_cause_must_fit() {
        var scene = Scene.atChair();
        scene.refused(new BinBowl("1a", 1, OverMixCause.PAST_LIFE), "CAUSE_DOES_NOT_FIT");
        scene.refused(new BinBowl("1a", 1, OverMixCause.WRONG_RATIO), "CAUSE_DOES_NOT_FIT");
        scene.refused(new BinBowl("1a", 1, OverMixCause.CLIENT_GONE), "CAUSE_DOES_NOT_FIT");
        scene.at("10:34").does(new BinBowl("1a", 1, OverMixCause.PAST_LIFE));
    }

    @Test
    void a_client_who_never_came_or_left_is_a_cause() {
        Scene.begun().does(new BinBowl("1a", 0, OverMixCause.CLIENT_GONE));
        var scene = Scene.begun().does(new StartService(1));
        scene.refused(new BinBowl("1a", 0, OverMixCause.CLIENT_GONE), "CAUSE_DOES_NOT_FIT");
        scene.does(new CancelService(1, "left")).does(new BinBowl("1a", 0, OverMixCause.CLIENT_GONE));
    }

    @Test
    void wrong_weights_are_a_cause_before_and_after_weighing() {
        Scene.begun().does(new BinBowl("1a", 0, OverMixCause.WRONG_RATIO));
        Scene.begun().does(Scene.weigh("1a", 30_000, 20_000)).does(new BinBowl("1a", 0, OverMixCause.WRONG_RATIO));
    }
}
