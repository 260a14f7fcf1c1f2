package stirtide.planner.day;

import static org.assertj.core.api.Assertions.assertThat;
import static stirtide.planner.day.Given.at;
import static stirtide.planner.day.Given.planned;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import stirtide.events.command.DayCommand.BeginBowl;
import stirtide.events.command.DayCommand.CancelService;
import stirtide.events.command.DayCommand.FinishBowl;
import stirtide.events.day.DayEvent;
import stirtide.events.day.DayEvent.BowlDue;
import stirtide.events.day.DayEvent.BowlLate;
import stirtide.events.day.DayEvent.LifeEnded;
import stirtide.events.day.DayEvent.LifeEnding;
import stirtide.planner.day.question.PlanQuestions;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.Decision;

class TickerTest {
    @Test
    void nothing_is_due_on_an_unopened_day() {
        assertThat(Ticker.due(Day.UNOPENED, at("10:00"))).isEmpty();
        assertThat(Ticker.nextAt(Day.UNOPENED)).isEmpty();
    }

    @Test
    void a_bowl_is_due_at_its_start_once() {
        var scene = Scene.planned();
        assertThat(Ticker.nextAt(scene.day)).contains(at("09:54"));
        assertThat(Ticker.due(scene.day, at("09:54").minusMillis(1))).isEmpty();
        scene.at("09:54").ticks();
        assertThat(scene.newest()).isEqualTo(new BowlDue("1a", at("09:54")));
        assertThat(Ticker.due(scene.day, at("09:56:59"))).isEmpty();
        assertThat(Ticker.nextAt(scene.day)).contains(at("09:57"));
    }

    @Test
    void a_bowl_not_begun_is_late_once_and_the_day_is_planned_anew() {
        var scene = Scene.planned().at("09:54").ticks();
        assertThat(scene.day.planSettled()).isTrue();
        scene.at("09:57").ticks();
        assertThat(scene.newest()).isEqualTo(new BowlLate("1a", at("09:54")));
        assertThat(scene.day.planSettled()).isFalse();
        assertThat(Ticker.due(scene.day, at("09:58"))).isEmpty();
    }

    @Test
    void a_late_bowl_is_due_anew_at_its_new_time() {
        var scene = Scene.planned().at("09:57").ticks();
        scene.plans(planned("1a", 1, "09:57", "10:03"));
        assertThat(Ticker.due(scene.day, scene.now)).containsExactly(new BowlDue("1a", at("09:57")));
        scene.ticks();
        assertThat(Ticker.due(scene.day, scene.now)).isEmpty();
        assertThat(Ticker.nextAt(scene.day)).contains(at("10:00"));
    }

    @Test
    void a_bowl_begun_in_time_is_not_late() {
        var scene = Scene.begun();
        assertThat(Ticker.due(scene.day, at("10:20"))).isEmpty();
    }

    @Test
    void a_life_is_announced_five_minutes_before_and_at_its_end() {
        var scene = Scene.atChair();
        assertThat(Ticker.due(scene.day, at("10:23:59"))).isEmpty();
        scene.plans();
        assertThat(Ticker.nextAt(scene.day)).contains(at("10:29"));
        scene.at("10:29").ticks();
        assertThat(scene.newest()).isEqualTo(new LifeEnding("1a", at("10:34")));
        assertThat(Ticker.nextAt(scene.day)).contains(at("10:34"));
        scene.at("10:34").ticks();
        assertThat(scene.newest()).isEqualTo(new LifeEnded("1a", at("10:34")));
        assertThat(Ticker.nextAt(scene.day)).isEmpty();
    }

    @Test
    void a_closed_bowl_has_no_life_to_end() {
        var scene = Scene.atChair().does(new FinishBowl("1a")).plans();
        assertThat(Ticker.nextAt(scene.day)).isEmpty();
    }

    @Test
    void hours_later_everything_is_caught_up_in_order_of_time_and_nothing_twice() {
        var scene = Scene.begun();
        var caughtUp = Ticker.due(scene.day, at("15:00"));
        assertThat(caughtUp)
                .containsExactly(
                        new BowlDue("2a", at("10:24")),
                        new BowlLate("2a", at("10:24")),
                        new LifeEnding("1a", at("10:34")),
                        new LifeEnded("1a", at("10:34")));
        assertThat(Ticker.due(scene.at("15:00").ticks().day, at("15:00"))).isEmpty();
    }

    @Test
    void catching_up_late_gives_what_watching_all_along_gives() {
        var watched = new ArrayList<DayEvent>();
        var scene = Scene.begun();
        for (var now = scene.now; !now.isAfter(at("15:00")); now = now.plus(Duration.ofSeconds(20))) {
            scene.now = now;
            List<DayEvent> due = Ticker.due(scene.day, now);
            watched.addAll(due);
            scene.ticks();
        }
        assertThat(watched).isEqualTo(Ticker.due(Scene.begun().day, at("15:00")));
    }

    @Test
    void a_cancelled_service_has_nothing_due() {
        var scene = Scene.planned().does(new CancelService(1, ""));
        assertThat(Ticker.due(scene.day, at("10:00"))).isEmpty();
        assertThat(Ticker.nextAt(scene.day)).contains(at("10:24"));
    }

    @Test
    void nothing_falls_due_after_the_day() {
        var scene = Scene.planned();
        var last = planned("1a", 1, "23:59", "23:59");
        scene.plans(last);
        assertThat(Ticker.nextAt(scene.day)).contains(at("23:59"));
        var tomorrow = new stirtide.events.plan.PlannedBowl(
                "1a",
                1,
                1,
                1,
                last.zones(),
                last.mixStart().plusSeconds(60),
                last.mixEnd(),
                last.neededFrom(),
                last.neededTo(),
                last.lifeEnds(),
                last.personId(),
                "bar-1",
                "M",
                1,
                1,
                last.formula(),
                0);
        scene.plans(tomorrow);
        assertThat(Ticker.nextAt(scene.day)).isEmpty();
        assertThat(Ticker.due(scene.day, at("23:59").plus(Duration.ofDays(400))))
                .isEmpty();
    }

    @Test
    void time_moves_on_however_long_nobody_begins_a_bowl() {
        var scene = Scene.planned();
        for (int i = 0; i < 100; i++) {
            var next = Ticker.nextAt(scene.day).orElseThrow();
            assertThat(next).isAfterOrEqualTo(scene.now);
            scene.now = next;
            scene.ticks();
            PlanQuestions.of(scene.day)
                    .ifPresent(question ->
                            scene.append(new DayEvent.PlanDrawn(SimplePlans.draw(question)), "service", ""));
        }
        assertThat(scene.now).isAfter(at("10:30"));
        assertThat(Evolver.replay(scene.log)).isEqualTo(scene.day);
        assertThat(scene.ask(new BeginBowl("1a", "mika"))).isInstanceOf(Decision.Accepted.class);
    }
}
