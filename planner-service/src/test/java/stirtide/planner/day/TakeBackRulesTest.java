package stirtide.planner.day;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import stirtide.events.command.DayCommand.BeginBowl;
import stirtide.events.command.DayCommand.BookService;
import stirtide.events.command.DayCommand.CancelService;
import stirtide.events.command.DayCommand.FinishBowl;
import stirtide.events.command.DayCommand.FinishZone;
import stirtide.events.command.DayCommand.HandOverBowl;
import stirtide.events.command.DayCommand.MoveService;
import stirtide.events.command.DayCommand.TakeBack;
import stirtide.events.day.DayEvent.ActionTakenBack;
import stirtide.events.day.StoredEvent;

class TakeBackRulesTest {
    @Test
    void the_day_is_what_it_would_be_without_the_action() {
        var scene = Scene.atChair();
        var before = scene.day;
        scene.does(new FinishBowl("1a")).does(new TakeBack(scene.day.revision()));
        assertThat(scene.newest()).isInstanceOf(ActionTakenBack.class);
        assertThat(scene.day.services()).isEqualTo(before.services());
        assertThat(scene.day.planSettled()).isFalse();
        scene.does(new FinishBowl("1a"));
    }

    @Test
    void a_bowl_taken_back_gives_its_letter_back() {
        var scene = Scene.begun().does(new TakeBack(5));
        assertThat(scene.day.bowl("1a")).isEmpty();
        assertThat(scene.day.service(1).orElseThrow().nextBowl()).isEqualTo("1a");
        scene.does(new BeginBowl("1a", "mika"));
    }

    @Test
    void an_action_in_the_middle_is_taken_back_when_nothing_builds_on_it() {
        var scene = Scene.begun().does(new MoveService(2, Given.at("10:40"), Optional.empty(), ""));
        long move = scene.day.revision();
        scene.does(Scene.weigh("1a", 30_000, 60_000)).does(new TakeBack(move));
        assertThat(scene.day.service(2).orElseThrow().booking().start()).isEqualTo(Given.at("10:30"));
        assertThat(scene.day.bowl("1a").orElseThrow().weighed()).isPresent();
    }

    @Test
    void what_a_later_action_builds_on_stays() {
        var scene = Scene.begun()
                .does(Scene.weigh("1a", 30_000, 60_000))
                .at("09:58")
                .as("mika");
        scene.does(new HandOverBowl("1a")).as("ilka");
        var refusal = scene.refused(new TakeBack(6), "BUILT_ON");
        assertThat(refusal.sentence())
                .contains("weighed bowl 1a (Ilka, 09:54)")
                .contains("handed over bowl 1a (Mika, 09:58)");
    }

    @Test
    void a_scale_or_person_taken_meanwhile_is_no_way_round_the_rules() {
        var scene = Scene.begun().does(Scene.weigh("1a", 30_000, 60_000));
        scene.does(new BeginBowl("2a", "bo"));
        scene.refused(new TakeBack(6), "BUILT_ON");
    }

    @Test
    void a_booking_followed_by_another_keeps_its_number() {
        var scene = Scene.planned()
                .does(new BookService(Given.booking("three", "foils", 3, "12:00")))
                .does(new BookService(Given.booking("four", "foils", 3, "13:00")));
        scene.refused(new TakeBack(5), "BUILT_ON");
        scene.does(new TakeBack(6)).does(new TakeBack(5));
        assertThat(scene.day.services()).hasSize(2);
    }

    @Test
    void a_life_that_ended_meanwhile_keeps_its_bowl() {
        var scene = Scene.planned()
                .at("09:54")
                .does(new BeginBowl("1a", "bo"))
                .at("10:34")
                .ticks();
        scene.at("10:03").refused(new TakeBack(5), "TOO_LONG_AGO");
    }

    @Test
    void ten_minutes_are_the_limit() {
        var scene = Scene.begun();
        scene.at("10:04:01").refused(new TakeBack(5), "TOO_LONG_AGO");
        scene.at("10:04").does(new TakeBack(5));
    }

    @Test
    void only_ones_own_action_is_taken_back() {
        var scene = Scene.begun().as("mika");
        assertThat(scene.refused(new TakeBack(5), "NOT_YOUR_ACTION").sentence())
                .contains("began bowl 1a (Ilka, 09:54)")
                .contains("only Ilka");
    }

    @Test
    void an_action_is_taken_back_once() {
        var scene = Scene.begun().does(new TakeBack(5));
        scene.refused(new TakeBack(5), "TAKEN_BACK_ALREADY");
        scene.refused(new TakeBack(6), "NOT_AN_ACTION");
    }

    @Test
    void what_is_no_action_of_a_person_stays() {
        var scene = Scene.planned();
        scene.refused(new TakeBack(1), "PART_OF_OPENING");
        scene.refused(new TakeBack(2), "PART_OF_OPENING");
        scene.refused(new TakeBack(4), "NOT_AN_ACTION");
        scene.refused(new TakeBack(5), "ACTION_UNKNOWN");
        scene.refused(new TakeBack(0), "ACTION_UNKNOWN");
        scene.refused(new TakeBack(-7), "ACTION_UNKNOWN");
    }

    @Test
    void the_list_offers_what_can_be_taken_back_newest_first() {
        var scene = Scene.atChair().does(new FinishZone(1, "crown")).as("mika").does(new CancelService(2, "ill"));
        assertThat(TakeBackRules.takeable(scene.day, scene.now, 8, Decider::decide))
                .extracting(StoredEvent::revision)
                .containsExactly(10L, 9L, 8L);
        assertThat(TakeBackRules.takeable(scene.day, Given.at("10:11"), 8, Decider::decide))
                .isEmpty();
    }

    @Test
    void a_replay_of_the_log_gives_the_same_day() {
        var scene = Scene.begun().does(new TakeBack(5)).does(new BeginBowl("1a", "mika"));
        assertThat(Evolver.replay(scene.log)).isEqualTo(scene.day);
    }
}
