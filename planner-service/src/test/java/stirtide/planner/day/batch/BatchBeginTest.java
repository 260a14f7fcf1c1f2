package stirtide.planner.day.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static stirtide.planner.day.BatchScene.begin;
import static stirtide.planner.day.BatchScene.bowl;

import java.util.List;
import org.junit.jupiter.api.Test;
import stirtide.events.command.DayCommand.BeginBatch;
import stirtide.events.command.DayCommand.BeginBowl;
import stirtide.events.command.DayCommand.CancelService;
import stirtide.events.command.DayCommand.OpenDay;
import stirtide.events.day.BatchShare;
import stirtide.events.day.DayEvent;
import stirtide.planner.day.BatchScene;
import stirtide.planner.day.Given;
import stirtide.planner.day.Scene;
import stirtide.planner.day.Ticker;
import stirtide.planner.day.question.PlanQuestions;
import stirtide.planner.day.state.BowlState;

class BatchBeginTest {
    private final Scene scene = BatchScene.planned().at("09:53");

    @Test
    void a_pair_of_the_plan_is_begun_as_one_mix_and_both_live_from_then_on() {
        scene.does(begin());
        assertThat(scene.newest())
                .isEqualTo(new DayEvent.BatchBegun(
                        List.of(new BatchShare("1a", 1, 1, "M", 66_000), new BatchShare("2a", 2, 1, "M", 54_000)),
                        "bo",
                        "bar-1",
                        BatchScene.WHOLE,
                        Given.at("10:33")));
        for (var id : List.of("1a", "2a")) {
            assertThat(bowl(scene, id).lifeEnds()).isEqualTo(Given.at("10:33"));
            assertThat(bowl(scene, id).begunAt()).isEqualTo(Given.at("09:53"));
            assertThat(bowl(scene, id).stage()).isEqualTo(BowlState.Stage.MIXING);
        }
        assertThat(bowl(scene, "1a").planned().totalMilligrams()).isEqualTo(66_000);
        assertThat(bowl(scene, "2a").planned().totalMilligrams()).isEqualTo(54_000);
        assertThat(bowl(scene, "1a").planned().lightenerMilligrams()
                        + bowl(scene, "2a").planned().lightenerMilligrams())
                .isEqualTo(40_000);
    }

    @Test
    void only_a_pair_on_show_may_be_one_mix() {
        assertThat(scene.refused(new BeginBatch(List.of("2a", "1a"), "bo"), "BATCH_NOT_PLANNED")
                        .sentence())
                .contains("1a with 2a");
        scene.refused(new BeginBatch(List.of("1a", "3a"), "bo"), "BATCH_NOT_PLANNED");
        Scene.planned().at("09:54").refused(begin(), "BATCH_NOT_PLANNED");
    }

    @Test
    void either_bowl_may_be_begun_alone_and_then_there_is_no_pair_any_more() {
        scene.does(new BeginBowl("1a", "bo"));
        assertThat(bowl(scene, "1a").batch()).isEmpty();
        assertThat(bowl(scene, "1a").planned()).isEqualTo(Given.formula());
        scene.refused(begin(), "BOWL_ALREADY_BEGUN");
    }

    @Test
    void a_pair_of_a_client_who_left_is_no_pair() {
        scene.does(new CancelService(2, "left"));
        scene.refused(begin(), "BATCH_NOT_PLANNED");
    }

    @Test
    void whoever_mixes_and_what_is_needed_must_be_free() {
        scene.refused(new BeginBatch(List.of("1a", "2a"), "nobody"), "PERSON_UNKNOWN");
        scene.does(begin());
        scene.plans(Given.planned("1b", 1, "09:54", "10:20"));
        scene.refused(new BeginBowl("1b", "bo"), "PERSON_MIXING");
        scene.refused(new BeginBowl("1b", "mika"), "SCALE_BUSY");
    }

    @Test
    void two_bowls_of_the_size_must_be_free() {
        var bookings = List.of(Given.booking("one", "foils", 1, "10:00"), Given.booking("two", "full", 2, "10:05"));
        var one = BatchScene.show(new Scene().does(new OpenDay(Given.setup(2, 1), bookings)));
        assertThat(one.at("09:53").refused(begin(), "NO_BOWL_FREE").sentence()).startsWith("All but 1 of 1");
        one.does(new BeginBowl("1a", "bo"));
    }

    @Test
    void a_mix_that_would_be_past_its_life_before_its_second_first_use_is_refused() {
        scene.at("09:24").refused(begin(), "BOWL_TOO_EARLY");
        scene.at("09:25").refused(begin(), "BOWL_TOO_EARLY");
        scene.at("09:25:01").does(begin());
    }

    @Test
    void a_bowl_of_a_pair_falls_due_when_the_pair_does() {
        assertThat(Ticker.due(scene.day, Given.at("09:52"))).isEmpty();
        assertThat(Ticker.due(scene.day, Given.at("09:53")))
                .containsExactly(
                        new DayEvent.BowlDue("1a", Given.at("09:53")), new DayEvent.BowlDue("2a", Given.at("09:53")));
        assertThat(Ticker.due(scene.at("09:56").ticks().day, Given.at("09:56"))).isEmpty();
        assertThat(scene.log.stream().map(stored -> stored.event()))
                .contains(new DayEvent.BowlLate("1a", Given.at("09:53")));
    }

    @Test
    void the_mixer_is_busy_for_mixing_and_dividing_and_both_bowls_feed_their_clients() {
        scene.does(begin());
        var question = PlanQuestions.of(scene.day).orElseThrow();
        var bo = question.assistants().get(0);
        // 4 minutes by the directions, one for dividing and two for carrying
        assertThat(bo.busyUntilMinute()).isEqualTo(10 * 60);
        assertThat(bo.busyScaleId()).contains("bar-1");
        assertThat(question.services())
                .allSatisfy(service -> assertThat(service.runs().get(0).live())
                        .singleElement()
                        .satisfies(live -> assertThat(live.atChairMinute()).isEqualTo(10 * 60)));
        assertThat(question.services().get(0).runs().get(0).live().get(0).leftMilligrams())
                .isEqualTo(63_000);
        assertThat(question.services().get(1).runs().get(0).live().get(0).leftMilligrams())
                .isEqualTo(51_000);
        assertThat(question.bowlsOut()).hasSize(2);
    }
}
