package stirtide.planner.day;

import static org.assertj.core.api.Assertions.assertThat;
import static stirtide.planner.day.Given.at;
import static stirtide.planner.day.Given.span;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stirtide.events.command.DayCommand.AcknowledgeAlarm;
import stirtide.events.command.DayCommand.BinBowl;
import stirtide.events.command.DayCommand.ChangeShift;
import stirtide.events.command.DayCommand.CloseDay;
import stirtide.events.command.DayCommand.StartService;
import stirtide.events.command.DayCommand.TakeBack;
import stirtide.events.day.DayEvent.DayClosed;
import stirtide.events.day.DayEvent.ShiftChanged;
import stirtide.events.day.OverMixCause;
import stirtide.events.setup.Span;
import stirtide.planner.day.question.PlanQuestions;
import stirtide.planner.day.setup.People;

class DayRulesTest {
    @Test
    void a_shift_is_replaced_whole() {
        var scene = Scene.planned().does(new ChangeShift("bo", List.of(span("09:00", "10:00"))));
        assertThat(scene.newest()).isEqualTo(new ShiftChanged("bo", List.of(span("09:00", "10:00"))));
        var bo = scene.day.opened().salon().people().get(0);
        assertThat(People.onDuty(scene.day, bo, at("08:30"))).isFalse();
        assertThat(People.onDuty(scene.day, bo, at("09:00"))).isTrue();
        assertThat(People.onDuty(scene.day, bo, at("10:00"))).isFalse();
        scene.does(new ChangeShift("bo", List.of()));
        assertThat(People.onDuty(scene.day, bo, at("09:00"))).isFalse();
    }

    @Test
    void a_shift_that_cannot_be_is_refused() {
        var scene = Scene.planned();
        scene.refused(new ChangeShift("nobody", List.of()), "PERSON_UNKNOWN");
        scene.refused(new ChangeShift("bo", List.of(span("09:00", "10:00"), span("10:00", "11:00"))), "SHIFT_OVERLAPS");
        scene.refused(
                new ChangeShift("bo", List.of(new Span(at("09:00").minusSeconds(86_400), at("10:00")))),
                "SHIFT_OUTSIDE_DAY");
    }

    @Test
    void an_alarm_is_acknowledged_once_while_it_stands() {
        var scene = Scene.begun();
        scene.refused(new AcknowledgeAlarm("PAST_LIFE:1a"), "ALARM_UNKNOWN");
        scene.at("10:34").does(new AcknowledgeAlarm("PAST_LIFE:1a"));
        assertThat(scene.refused(new AcknowledgeAlarm("PAST_LIFE:1a"), "ALARM_ACKNOWLEDGED")
                        .sentence())
                .startsWith("Ilka");
        scene.does(new BinBowl("1a", 0, OverMixCause.PAST_LIFE));
        scene.refused(new AcknowledgeAlarm("PAST_LIFE:1a"), "ALARM_UNKNOWN");
    }

    @Test
    void a_day_closes_when_no_bowl_is_in_use_and_stays_closed() {
        var scene = Scene.begun();
        assertThat(scene.refused(new CloseDay(), "BOWLS_IN_USE").sentence()).contains("1a");
        scene.does(new BinBowl("1a", 0, OverMixCause.SPILLED)).does(new CloseDay());
        assertThat(scene.newest()).isEqualTo(new DayClosed());
        scene.refused(new CloseDay(), "DAY_CLOSED");
        scene.refused(new StartService(1), "DAY_CLOSED");
        scene.refused(new TakeBack(scene.day.revision()), "DAY_CLOSED");
        assertThat(Ticker.nextAt(scene.day)).isEmpty();
        assertThat(PlanQuestions.of(scene.day)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "service", "xxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxx"})
    void a_command_needs_a_person(String actor) {
        Scene.planned().as(actor).refused(new StartService(1), "ACTOR_UNKNOWN");
    }
}
