package stirtide.planner.day;

import static org.assertj.core.api.Assertions.assertThat;
import static stirtide.planner.day.Given.booking;

import org.junit.jupiter.api.Test;
import stirtide.events.command.DayCommand.FinishZone;
import stirtide.events.command.DayCommand.StartService;
import stirtide.events.day.DayEvent.ServiceStarted;
import stirtide.events.day.DayEvent.ZoneFinished;

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
    void a_zone_of_nothing_is_refused() {
        scene.refused(new FinishZone(7, "crown"), "SERVICE_UNKNOWN");
    }
}
