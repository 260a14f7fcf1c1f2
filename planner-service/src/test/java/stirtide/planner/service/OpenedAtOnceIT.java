package stirtide.planner.service;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stirtide.events.command.CommandRequest;
import stirtide.events.command.DayCommand;

/** Many who open one day at once, half of them with what is refused: the day has one keeper all the same. */
class OpenedAtOnceIT {
    @TempDir
    Path folder;

    private static CommandRequest opening(int rival) {
        DayCommand.OpenDay good = (DayCommand.OpenDay) SmallSalon.opening().command();
        boolean refused = rival % 2 == 0;
        return SmallSalon.request(
                "opening-" + (1000 + rival),
                refused
                        ? new DayCommand.OpenDay(
                                good.setup(),
                                List.of(SmallSalon.booking("nobody-knows-it", "unknown", 1, "10:00", "medium")))
                        : good);
    }

    @Test
    void a_refused_opening_takes_the_day_from_nobody_who_waits_to_open_it() throws Exception {
        try (PlannerService service = PlannerService.start(PlayedDayIT.settings(folder))) {
            SalonClient client = new SalonClient(service.port());
            List<CompletableFuture<HttpResponse<String>>> sent = IntStream.range(0, 60)
                    .mapToObj(rival -> client.sendLater(client.post("/days", opening(rival))))
                    .toList();
            List<Integer> statuses =
                    sent.stream().map(answer -> answer.join().statusCode()).toList();
            assertThat(statuses).containsOnly(201, 409);
            assertThat(statuses.stream().filter(status -> status == 201)).hasSize(1);
            assertThat(client.advance(SmallSalon.MORNING).statusCode()).isEqualTo(200);
            assertThat(client.events(SmallSalon.DAY)).isNotEmpty();
        }
    }
}
