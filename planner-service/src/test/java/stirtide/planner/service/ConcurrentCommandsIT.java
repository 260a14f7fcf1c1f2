package stirtide.planner.service;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stirtide.events.command.CommandRequest;
import stirtide.events.command.CommandResult;
import stirtide.events.command.DayCommand;
import stirtide.events.json.ContractJson;

class ConcurrentCommandsIT {
    @TempDir
    Path folder;

    private PlannerService service;
    private SalonClient client;

    @BeforeEach
    void open_a_day() throws Exception {
        service = PlannerService.start(PlayedDayIT.settings(folder));
        client = new SalonClient(service.port());
        assertThat(client.open(SmallSalon.opening()).statusCode()).isEqualTo(201);
        client.advance(SmallSalon.MORNING);
    }

    @AfterEach
    void stop() {
        service.close();
    }

    private List<HttpResponse<String>> all(List<CompletableFuture<HttpResponse<String>>> answers) {
        return answers.stream().map(CompletableFuture::join).toList();
    }

    private static CommandRequest walkIn(String commandId, int number) {
        return SmallSalon.request(
                commandId,
                new DayCommand.BookService(SmallSalon.booking("walk-in-" + number, "half", 1, "15:00", "medium")));
    }

    @Test
    void a_hundred_sendings_of_one_command_at_once_are_one_command() throws Exception {
        CommandRequest request = walkIn("walk-in-once", 1);
        List<HttpResponse<String>> answers = all(IntStream.range(0, 100)
                .mapToObj(sending -> client.sendLater(client.command(SmallSalon.DAY, request)))
                .toList());
        List<CommandResult> results = answers.stream()
                .map(answer -> ContractJson.read(answer.body(), CommandResult.class))
                .toList();
        assertThat(answers).allMatch(answer -> answer.statusCode() == 200);
        assertThat(results.stream().filter(result -> !result.repeated())).hasSize(1);
        assertThat(results)
                .extracting(CommandResult::firstRevision)
                .containsOnly(results.get(0).firstRevision());
        assertThat(client.events(SmallSalon.DAY).stream().filter(event -> event.contains("walk-in-once")))
                .hasSize(1);
    }

    @Test
    void a_command_id_with_another_body_is_refused() throws Exception {
        client.send(client.command(SmallSalon.DAY, walkIn("walk-in-once", 1)));
        HttpResponse<String> other = client.send(client.command(SmallSalon.DAY, walkIn("walk-in-once", 2)));
        assertThat(other.statusCode()).isEqualTo(422);
        assertThat(other.body()).contains("COMMAND_ID_REUSED");
    }

    @Test
    void a_refused_command_may_be_sent_again_and_is_decided_anew() throws Exception {
        CommandRequest tooEarly = SmallSalon.request("finish-zone", new DayCommand.FinishZone(1, "front foils"));
        assertThat(client.send(client.command(SmallSalon.DAY, tooEarly)).statusCode())
                .isEqualTo(409);
        client.send(client.command(SmallSalon.DAY, SmallSalon.request("start-one", new DayCommand.StartService(1))));
        assertThat(client.send(client.command(SmallSalon.DAY, tooEarly)).statusCode())
                .isEqualTo(200);
    }

    @Test
    void of_all_commands_on_one_revision_exactly_one_is_taken() throws Exception {
        for (int round = 0; round < 5; round++) {
            client.advance(SmallSalon.MORNING);
            long revision = client.view(SmallSalon.DAY).revision();
            List<CompletableFuture<HttpResponse<String>>> sent = new ArrayList<>();
            for (int rival = 0; rival < 16; rival++) {
                int number = round * 16 + rival;
                sent.add(client.sendLater(client.command(
                        SmallSalon.DAY, walkIn("rival-" + 1000 + number, number), "If-Match", "\"" + revision + "\"")));
            }
            List<Integer> statuses =
                    all(sent).stream().map(HttpResponse::statusCode).toList();
            assertThat(statuses).containsOnly(200, 412);
            assertThat(statuses.stream().filter(status -> status == 200)).hasSize(1);
        }
    }
}
