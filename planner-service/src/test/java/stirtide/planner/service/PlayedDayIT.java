package stirtide.planner.service;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stirtide.events.command.DayCommand;
import stirtide.events.view.DayView;

class PlayedDayIT {
    @TempDir
    Path folder;

    static Settings settings(Path folder) {
        return Settings.inProcess(folder).withDrivenClock(SmallSalon.MORNING, 0).withPlanRounds(3);
    }

    /** Plays a day to its end and gives the statuses of its commands. */
    static List<Integer> play(SalonClient client) throws Exception {
        List<Integer> statuses = new ArrayList<>();
        statuses.add(client.open(SmallSalon.opening()).statusCode());
        client.advance(SmallSalon.MORNING);
        DayPlayer player = new DayPlayer();
        Optional<DayPlayer.Step> step = player.next(client.view(SmallSalon.DAY));
        while (step.isPresent()) {
            client.advance(step.get().at());
            HttpResponse<String> answer =
                    client.send(client.command(SmallSalon.DAY, step.get().request()));
            statuses.add(answer.statusCode());
            if (answer.statusCode() == 200 && step.get().request().command() instanceof DayCommand.BeginBowl begun)
                askForPours(client, begun.bowl());
            client.advance(step.get().at());
            step = player.next(client.view(SmallSalon.DAY));
        }
        return statuses;
    }

    /** Asks as a terminal beside the scale would: before the first pour, then after far too much lightener. */
    private static void askForPours(SalonClient client, String bowl) throws Exception {
        String path = "/days/" + SmallSalon.DAY + "/bowls/" + bowl + "/next-pour";
        assertThat(client.get(path).body()).contains("\"kind\":\"ADD\"", "\"partId\":\"lightener\"");
        assertThat(client.get(path + "?poured=lightener:900000").body()).contains("\"kind\":\"BIN_AND_RESTART\"");
        assertThat(client.get(path + "?poured=lightener").statusCode()).isEqualTo(400);
    }

    @Test
    void a_day_is_played_to_its_end_and_is_the_same_after_a_restart() throws Exception {
        DayView before;
        List<String> events;
        try (PlannerService service = PlannerService.start(settings(folder))) {
            SalonClient client = new SalonClient(service.port());
            assertThat(play(client)).contains(201).doesNotContain(400, 500, 503);
            before = client.view(SmallSalon.DAY);
            events = client.events(SmallSalon.DAY);
            assertThat(before.closed()).isTrue();
            assertThat(before.totals().bowlsMixed()).isGreaterThanOrEqualTo(4);
            assertThat(before.services()).extracting(DayView.ServiceCard::state).doesNotContain("BOOKED", "STARTED");
        }
        try (PlannerService service = PlannerService.start(settings(folder))) {
            SalonClient client = new SalonClient(service.port());
            assertThat(client.view(SmallSalon.DAY)).isEqualTo(before);
            assertThat(client.events(SmallSalon.DAY)).isEqualTo(events);
        }
    }
}
