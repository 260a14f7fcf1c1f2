package stirtide.planner.service;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stirtide.events.command.CommandRequest;
import stirtide.events.command.DayCommand;
import stirtide.events.day.DayEvent.PlanDrawn;
import stirtide.events.day.DayEvent.PlanKept;
import stirtide.events.day.StoredEvent;
import stirtide.events.view.DayView;
import stirtide.planner.eventlog.EventLog;
import stirtide.planner.eventlog.SqliteEventLog;

/** A first plan is stored at once, and what the search for a better one found is stored after it. */
class TwoStepsIT {
    @TempDir
    Path whole;

    @TempDir
    Path cut;

    /** Three clients at one minute and one assistant: no plan is as good as if each had the bar to itself. */
    private static CommandRequest allAtOnce() {
        return SmallSalon.request(
                "open-day-1",
                new DayCommand.OpenDay(
                        SmallSalon.setup(),
                        List.of(
                                SmallSalon.booking("b-1", "full", 1, "09:00", "long"),
                                SmallSalon.booking("b-2", "half", 2, "09:00", "medium"),
                                SmallSalon.booking("b-3", "full", 3, "09:00", "medium"))));
    }

    private static List<StoredEvent> opened(Path folder) throws Exception {
        try (PlannerService service = PlannerService.start(PlayedDayIT.settings(folder))) {
            SalonClient client = new SalonClient(service.port());
            assertThat(client.open(allAtOnce()).statusCode()).isEqualTo(201);
            client.advance(SmallSalon.MORNING);
            DayView view = client.view(SmallSalon.DAY);
            assertThat(view.planSettled()).isTrue();
            assertThat(view.betterPlanSought()).isFalse();
        }
        try (EventLog log = SqliteEventLog.open(folder)) {
            return log.read(SmallSalon.DAY, 0, EventLog.READ_LIMIT);
        }
    }

    private static int firstPlan(List<StoredEvent> events) {
        int place = 0;
        while (!(events.get(place).event() instanceof PlanDrawn)) place++;
        return place;
    }

    @Test
    void the_second_step_follows_the_first_and_stands_on_the_same_events() throws Exception {
        List<StoredEvent> events = opened(whole);
        int place = firstPlan(events);
        PlanDrawn first = (PlanDrawn) events.get(place).event();
        assertThat(first.plan().roundsToCome()).contains(3);
        assertThat(events).hasSize(place + 2);
        if (events.get(place + 1).event() instanceof PlanKept kept)
            assertThat(kept.basedOnRevision()).isEqualTo(first.plan().basedOnRevision());
        else
            assertThat(((PlanDrawn) events.get(place + 1).event()).plan().basedOnRevision())
                    .isEqualTo(first.plan().basedOnRevision());
    }

    @Test
    void a_service_that_ended_between_the_steps_takes_the_second_at_its_next_start() throws Exception {
        List<StoredEvent> events = opened(whole);
        List<StoredEvent> before = new ArrayList<>(events.subList(0, firstPlan(events) + 1));
        try (EventLog log = SqliteEventLog.open(cut)) {
            log.append(SmallSalon.DAY, 0, EventLog.NO_COMMAND, new byte[0], before);
        }
        try (PlannerService service = PlannerService.start(PlayedDayIT.settings(cut))) {
            new SalonClient(service.port()).advance(SmallSalon.MORNING);
        }
        try (EventLog log = SqliteEventLog.open(cut)) {
            assertThat(log.read(SmallSalon.DAY, 0, EventLog.READ_LIMIT)).isEqualTo(events);
        }
    }
}
