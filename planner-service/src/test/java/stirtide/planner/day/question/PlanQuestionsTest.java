package stirtide.planner.day.question;

import static org.assertj.core.api.Assertions.assertThat;
import static stirtide.planner.day.Given.at;
import static stirtide.planner.day.Given.booking;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stirtide.events.command.DayCommand.BinBowl;
import stirtide.events.command.DayCommand.CancelService;
import stirtide.events.command.DayCommand.ChangeShift;
import stirtide.events.command.DayCommand.FinishBowl;
import stirtide.events.command.DayCommand.FinishZone;
import stirtide.events.command.DayCommand.StartService;
import stirtide.events.day.Booking;
import stirtide.events.day.OverMixCause;
import stirtide.planner.day.Given;
import stirtide.planner.day.Scene;
import stirtide.planner.day.allowance.ZoneGrams;
import stirtide.planner.day.chair.Rinses;
import stirtide.planner.day.state.Day;
import stirtide.planner.planning.search.PlanQuestion;
import stirtide.planner.planning.search.PlanQuestion.Assistant;
import stirtide.planner.planning.search.PlanQuestion.BowlOut;
import stirtide.planner.planning.search.PlanQuestion.LiveSupply;
import stirtide.planner.planning.search.PlanQuestion.Minutes;
import stirtide.planner.planning.search.PlanQuestion.ServiceTask;

/** Minutes of the day: 480 is 08:00, 600 is 10:00. */
class PlanQuestionsTest {
    private static PlanQuestion ask(Scene scene) {
        return PlanQuestions.of(scene.day).orElseThrow();
    }

    private static ServiceTask task(Scene scene, int service) {
        return ask(scene).services().stream()
                .filter(task -> task.service() == service)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void nothing_is_asked_while_the_plan_knows_all() {
        assertThat(PlanQuestions.of(Day.UNOPENED)).isEmpty();
        assertThat(PlanQuestions.of(Scene.planned().day)).isEmpty();
        assertThat(PlanQuestions.of(Scene.planned().at("09:54").ticks().day)).isEmpty();
        assertThat(PlanQuestions.of(Scene.begun().day)).isPresent();
    }

    @Test
    void the_question_stands_on_the_newest_event_and_not_on_a_clock() {
        var scene = Scene.open(booking("one", "full", 1, "10:00"));
        scene.at("17:00");
        assertThat(ask(scene).asOf()).isEqualTo(at("08:00"));
        assertThat(ask(scene).nowMinute()).isEqualTo(480);
        assertThat(ask(scene).basedOnRevision()).isEqualTo(2);
    }

    @Test
    void seconds_are_rounded_up() {
        assertThat(ask(new Scene()
                                .at("08:00:01")
                                .does(new stirtide.events.command.DayCommand.OpenDay(Given.setup(), List.of())))
                        .nowMinute())
                .isEqualTo(481);
    }

    @Test
    void a_service_that_has_not_started_is_asked_for_whole() {
        var task = task(Scene.open(booking("one", "full", 1, "10:00")), 1);
        assertThat(task.started()).isFalse();
        assertThat(task.startMinute()).isEqualTo(600);
        assertThat(task.runs()).hasSize(2);
        assertThat(task.runs().get(0).zones())
                .extracting(zone -> zone.zone() + " " + zone.needMilligrams() + " " + zone.applyMinutes())
                .containsExactly("crown 40000 20", "sides 20000 10");
        assertThat(task.runs().get(1).zones().get(0).gapMinutes()).isEqualTo(10);
    }

    @Test
    void length_and_density_make_the_grams_rounded_up() {
        var booking = new Booking(
                "x",
                "full",
                1,
                at("10:00"),
                "Q.Z.",
                "long",
                "dense",
                Optional.empty(),
                0,
                0,
                Optional.empty(),
                Optional.empty());
        var zone = new stirtide.events.setup.Menu.MenuZone("z", "foil", "cloudlift", 900, 2000, 40_001, 1, 0, 0, 1);
        // 40001 x 1.3 x 1.25 = 65001.625
        assertThat(ZoneGrams.milligrams(Given.setup(), booking, zone)).isEqualTo(65_002);
    }

    @Test
    void a_client_who_is_not_there_is_planned_from_now_on() {
        var scene = Scene.planned().at("10:07").ticks();
        assertThat(task(scene, 1).startMinute()).isEqualTo(607);
        assertThat(task(scene, 1).started()).isFalse();
        assertThat(task(scene, 2).startMinute()).isEqualTo(630);
    }

    @Test
    void a_bowl_being_mixed_is_a_supply_and_keeps_its_person_until_it_is_carried_and_its_scale() {
        var scene = Scene.begun();
        assertThat(task(scene, 1).runs().get(0).live()).containsExactly(new LiveSupply("1a", 600, 634, 87_000));
        assertThat(task(scene, 1).bowlsUsed()).isEqualTo(1);
        assertThat(ask(scene).assistants())
                .containsExactly(
                        new Assistant(
                                "bo",
                                "Bo",
                                List.of(new Minutes(480, 720), new Minutes(780, 1080)),
                                600,
                                Optional.of("bar-1")),
                        new Assistant("mika", "Mika", List.of(new Minutes(480, 1080)), 0, Optional.empty()));
        assertThat(ask(scene).carryMinutes()).isEqualTo(2);
        assertThat(ask(scene).scaleBusyUntil("bar-1")).isEqualTo(598);
        assertThat(ask(scene).bowlsOut()).containsExactly(new BowlOut("M", 639));
    }

    @Test
    void a_bowl_outside_the_directions_feeds_nothing() {
        var scene = Scene.begun().does(Scene.weigh("1a", 30_000, 30_000));
        assertThat(task(scene, 1).runs().get(0).live()).isEmpty();
    }

    @Test
    void a_zone_under_way_needs_what_is_left_of_it() {
        var scene = Scene.atChair().at("10:05").does(new ChangeShift("mika", List.of()));
        var zone = task(scene, 1).runs().get(0).zones().get(0);
        assertThat(zone.begunMinute()).contains(600);
        assertThat(zone.applyMinutes()).isEqualTo(15);
        assertThat(zone.needMilligrams()).isEqualTo(30_000);
        assertThat(zone.gapMinutes()).isZero();
        assertThat(task(scene, 1).runs().get(0).live()).containsExactly(new LiveSupply("1a", 600, 634, 77_000));
        assertThat(ask(scene).assistants()).hasSize(2);
        assertThat(ask(scene).assistants().get(1).onDuty()).isEmpty();
    }

    @Test
    void at_least_one_minute_is_left_until_the_zone_is_said_to_be_finished() {
        var scene = Scene.atChair().at("10:33").does(new ChangeShift("mika", List.of()));
        var zone = task(scene, 1).runs().get(0).zones().get(0);
        assertThat(zone.applyMinutes()).isEqualTo(1);
        assertThat(zone.needMilligrams()).isEqualTo(2_000);
    }

    @Test
    void application_pauses_while_no_bowl_is_at_the_chair() {
        var scene = Scene.atChair()
                .at("10:05")
                .does(new BinBowl("1a", 60_000, OverMixCause.SPILLED))
                .at("10:25")
                .does(new ChangeShift("mika", List.of()));
        var zone = task(scene, 1).runs().get(0).zones().get(0);
        assertThat(zone.applyMinutes()).isEqualTo(15);
        assertThat(task(scene, 1).runs().get(0).live()).isEmpty();
        assertThat(ask(scene).bowlsOut()).isEmpty();
    }

    @Test
    void a_bowl_that_stood_unused_and_was_thrown_away_has_applied_nothing() {
        // Mixed are 90 g, 3 g of them stay as residue: 83 g left mean that 4 g of the zone's 40 g are on hair.
        var scene = Scene.atChair().at("10:15").does(new BinBowl("1a", 83_000, OverMixCause.SPILLED));
        var zone = task(scene, 1).runs().get(0).zones().get(0);
        assertThat(zone.begunMinute()).contains(600);
        assertThat(zone.applyMinutes()).isEqualTo(18);
        assertThat(zone.needMilligrams()).isEqualTo(36_000);
    }

    @Test
    void a_bowl_just_emptied_is_out_until_it_is_washed() {
        var scene = Scene.atChair().at("10:05").does(new FinishBowl("1a"));
        assertThat(ask(scene).bowlsOut()).containsExactly(new BowlOut("M", 610));
    }

    @Test
    void finished_zones_process_until_their_section_is_rinsed() {
        var scene = Scene.atChair()
                .at("10:20")
                .does(new FinishZone(1, "crown"))
                .at("10:30")
                .does(new FinishZone(1, "sides"));
        assertThat(task(scene, 1).processing())
                .extracting(zone -> zone.zone() + " " + zone.applyStart() + " " + zone.applyEnd())
                .containsExactly("crown 600 620", "sides 620 630");
        assertThat(task(scene, 1).startMinute()).isEqualTo(630);
        assertThat(task(scene, 1).runs())
                .singleElement()
                .satisfies(run -> assertThat(run.run()).isEqualTo(2));
        scene.at("10:50").does(new FinishBowl("1a"));
        assertThat(task(scene, 1).processing()).isEmpty();
    }

    @Test
    void what_is_applied_and_rinsed_or_cancelled_is_asked_for_no_more() {
        var scene = Scene.planned().does(new CancelService(1, "")).does(new StartService(2));
        scene.does(new FinishZone(2, "crown")).does(new FinishZone(2, "sides"));
        assertThat(ask(scene).services()).singleElement().satisfies(task -> {
            assertThat(task.service()).isEqualTo(2);
            assertThat(task.runs()).isEmpty();
            assertThat(task.processing()).hasSize(2);
        });
        scene.at("08:30").does(new ChangeShift("mika", List.of()));
        assertThat(ask(scene).services()).isEmpty();
    }

    @Test
    void the_longest_processing_of_the_directions_counts_as_the_rinse() {
        var scene = Scene.planned().does(new StartService(2)).at("08:50").does(new FinishZone(2, "crown"));
        scene.at("08:54").does(new FinishZone(2, "sides"));
        // Applied from 08:00, 55 minutes at the longest: 08:55, although 20 minutes of processing were wanted.
        var service = scene.day.service(2).orElseThrow();
        assertThat(Rinses.lastRinse(scene.day, service)).contains(at("08:55"));
    }
}
