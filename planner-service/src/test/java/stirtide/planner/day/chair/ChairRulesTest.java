package stirtide.planner.day.chair;

import static org.assertj.core.api.Assertions.assertThat;
import static stirtide.planner.day.Given.booking;

import java.util.List;
import org.junit.jupiter.api.Test;
import stirtide.events.command.DayCommand.FinishZone;
import stirtide.events.command.DayCommand.OpenDay;
import stirtide.events.command.DayCommand.RinseSection;
import stirtide.events.command.DayCommand.StartService;
import stirtide.events.command.DayCommand.TakeBack;
import stirtide.events.day.DayEvent.SectionRinsed;
import stirtide.events.day.DayEvent.ServiceStarted;
import stirtide.events.day.DayEvent.ZoneFinished;
import stirtide.planner.day.Evolver;
import stirtide.planner.day.Given;
import stirtide.planner.day.Scene;
import stirtide.planner.day.question.PlanQuestions;
import stirtide.planner.day.state.DayTime;

class ChairRulesTest {
    private final Scene scene = Scene.open(booking("one", "foils", 1, "10:00"));

    @Test
    void a_service_starts_once() {
        scene.does(new StartService(1));
        assertThat(scene.newest()).isEqualTo(new ServiceStarted(1));
        assertThat(scene.refused(new StartService(1), "SERVICE_STARTED").sentence())
                .contains("08:00");
    }

    @Test
    void nothing_starts_before_its_day() {
        var midnight = DayTime.of(Given.setup()).dayStart();
        var eve = new Scene();
        eve.now = midnight.minusMillis(1);
        eve.does(new OpenDay(Given.setup(), List.of(booking("one", "foils", 1, "10:00"))));
        assertThat(eve.refused(new StartService(1), "DAY_NOT_BEGUN").sentence())
                .contains(Given.setup().date().toString(), "open the day of today");
        eve.now = midnight;
        eve.does(new StartService(1));
    }

    @Test
    void only_a_known_service_starts() {
        scene.refused(new StartService(2), "SERVICE_UNKNOWN");
    }

    @Test
    void a_zone_is_not_finished_before_the_start() {
        scene.refused(new FinishZone(1, "crown"), "SERVICE_NOT_STARTED");
    }

    @Test
    void zones_are_finished_in_order() {
        scene.does(new StartService(1));
        assertThat(scene.refused(new FinishZone(1, "sides"), "ZONE_NOT_NEXT").sentence())
                .contains("accepted: crown");
        scene.does(new FinishZone(1, "crown"));
        assertThat(scene.newest()).isEqualTo(new ZoneFinished(1, "crown"));
        scene.refused(new FinishZone(1, "crown"), "ZONE_NOT_NEXT");
        scene.does(new FinishZone(1, "sides"));
        scene.refused(new FinishZone(1, "sides"), "SERVICE_APPLIED");
    }

    @Test
    void a_section_is_rinsed_once_when_its_zones_are_applied() {
        scene.refused(new RinseSection(9, 1), "SERVICE_UNKNOWN");
        assertThat(scene.refused(new RinseSection(1, 7), "SECTION_UNKNOWN").sentence())
                .contains("Accepted: 1");
        scene.does(new StartService(1));
        assertThat(scene.refused(new RinseSection(1, 1), "SECTION_NOT_APPLIED").sentence())
                .contains("Rinse when the hair asks for it", "finish crown, sides of service 1");
        scene.does(new FinishZone(1, "crown")).does(new FinishZone(1, "sides"));
        scene.at("08:35").does(new RinseSection(1, 1));
        assertThat(scene.newest()).isEqualTo(new SectionRinsed(1, 1));
        assertThat(scene.refused(new RinseSection(1, 1), "SECTION_RINSED").sentence())
                .contains("08:35");
    }

    @Test
    void a_recorded_rinse_ends_processing_early_or_late_and_can_be_taken_back() {
        scene.does(new StartService(1)).does(new FinishZone(1, "crown")).does(new FinishZone(1, "sides"));
        var planned =
                Rinses.applied(scene.day, scene.day.service(1).orElseThrow()).get(0);
        assertThat(planned.recorded()).isFalse();
        assertThat(planned.zones()).containsExactly("crown", "sides");
        assertThat(PlanQuestions.of(scene.day).orElseThrow().services()).hasSize(1);
        scene.at("08:09").does(new RinseSection(1, 1));
        assertThat(Rinses.lastRinse(scene.day, scene.day.service(1).orElseThrow()))
                .contains(Given.at("08:09"));
        assertThat(PlanQuestions.of(scene.day).orElseThrow().services()).isEmpty();
        scene.does(new TakeBack(scene.day.revision()));
        assertThat(Rinses.applied(scene.day, scene.day.service(1).orElseThrow()))
                .containsExactly(planned);
        scene.at("09:30").does(new RinseSection(1, 1));
        assertThat(Rinses.applied(scene.day, scene.day.service(1).orElseThrow()))
                .singleElement()
                .satisfies(late -> {
                    assertThat(late.recorded()).isTrue();
                    assertThat(late.rinseAt()).isEqualTo(Given.at("09:30"));
                    assertThat(late.rinseBy()).isEqualTo(planned.rinseBy());
                });
        assertThat(Evolver.replay(scene.log)).isEqualTo(scene.day);
    }

    @Test
    void a_zone_of_nothing_is_refused() {
        scene.refused(new FinishZone(7, "crown"), "SERVICE_UNKNOWN");
    }
}
