package stirtide.planner.service;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stirtide.events.command.DayCommand;
import stirtide.events.json.ContractJson;
import stirtide.events.view.DayView;

class StreamsIT {
    @TempDir
    Path folder;

    private PlannerService service;
    private SalonClient client;

    @BeforeEach
    void play_a_day() throws Exception {
        service = PlannerService.start(PlayedDayIT.settings(folder));
        client = new SalonClient(service.port());
    }

    @AfterEach
    void stop() {
        service.close();
    }

    private Stream<String> lines(HttpRequest.Builder request) throws Exception {
        HttpResponse<Stream<String>> response = client.follow(
                        request.header("accept", "text/event-stream").build(), BodyHandlers.ofLines())
                .get(20, TimeUnit.SECONDS);
        assertThat(response.statusCode()).isEqualTo(200);
        assertThat(response.headers().firstValue("content-type")).contains("text/event-stream");
        return response.body();
    }

    private HttpRequest.Builder request(String what) {
        return client.request("/days/" + SmallSalon.DAY + "/" + what);
    }

    private static long id(String line) {
        return Long.parseLong(line.substring("id: ".length()));
    }

    @Test
    void a_listener_that_comes_back_again_and_again_misses_nothing_and_gets_nothing_twice() throws Exception {
        PlayedDayIT.play(client);
        int newest = client.events(SmallSalon.DAY).size();
        Random random = new Random(7);
        List<Long> seen = new ArrayList<>();
        while (seen.size() < newest) {
            HttpRequest.Builder request = request("events");
            if (!seen.isEmpty()) request.header("Last-Event-ID", Integer.toString(seen.size()));
            int count = Math.min(newest - seen.size(), 1 + random.nextInt(40));
            try (Stream<String> lines = lines(request)) {
                Iterator<String> ids =
                        lines.filter(line -> line.startsWith("id: ")).iterator();
                for (int taken = 0; taken < count; taken++) seen.add(id(ids.next()));
            }
        }
        assertThat(seen)
                .containsExactlyElementsOf(
                        LongStream.rangeClosed(1, newest).boxed().toList());
    }

    @Test
    void events_that_happen_while_listening_arrive_in_order() throws Exception {
        client.open(SmallSalon.opening());
        client.advance(SmallSalon.MORNING);
        long head = client.view(SmallSalon.DAY).revision();
        try (Stream<String> lines = lines(request("events?after=" + head))) {
            Iterator<String> ids = lines.filter(line -> line.startsWith("id: ")).iterator();
            for (int service = 1; service <= 4; service++)
                client.send(client.command(
                        SmallSalon.DAY,
                        SmallSalon.request("start-no-" + service, new DayCommand.StartService(service))));
            for (long revision = head + 1; revision <= head + 4; revision++)
                assertThat(id(ids.next())).isEqualTo(revision);
        }
    }

    @Test
    void a_live_listener_ends_up_with_the_newest_view() throws Exception {
        client.open(SmallSalon.opening());
        client.advance(SmallSalon.MORNING);
        try (Stream<String> lines = lines(request("live"))) {
            Iterator<String> views = lines.filter(line -> line.startsWith("data: "))
                    .map(line -> line.substring("data: ".length()))
                    .iterator();
            assertThat(ContractJson.read(views.next(), DayView.class)).isEqualTo(client.view(SmallSalon.DAY));
            client.send(
                    client.command(SmallSalon.DAY, SmallSalon.request("start-one", new DayCommand.StartService(1))));
            client.advance(SmallSalon.MORNING.plusSeconds(60));
            DayView newest = client.view(SmallSalon.DAY);
            DayView shown = ContractJson.read(views.next(), DayView.class);
            while (!shown.equals(newest)) shown = ContractJson.read(views.next(), DayView.class);
            assertThat(shown).isEqualTo(newest);
        }
    }

    @Test
    void stopping_the_service_ends_the_lines() throws Exception {
        client.open(SmallSalon.opening());
        client.advance(SmallSalon.MORNING);
        try (Stream<String> lines = lines(request("live"))) {
            Iterator<String> rest = lines.iterator();
            assertThat(rest.next()).isEqualTo("retry: 2000");
            service.close();
            int more = 0;
            while (rest.hasNext()) more += rest.next().length();
            assertThat(more).isPositive();
        }
    }
}
