package stirtide.planner.service;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stirtide.events.command.CommandResult;
import stirtide.events.json.ContractJson;
import stirtide.planner.eventlog.EventLog;
import stirtide.planner.eventlog.SqliteEventLog;

/** The service is killed at seeded moments of a played day: in the middle of commands, ticks and plans. */
class KilledServiceIT {
    /** More with {@code -Dstirtide.kills=50}; hundreds under load are the matter of {@code planner-service/trials/run kill-nine}. */
    private static final int KILLS = Integer.getInteger("stirtide.kills", 9);

    private static final long SEED = 20_270_309;
    private static final long LONGEST_WAIT_MICROS = 15_000;

    @TempDir
    Path undisturbed;

    @TempDir
    Path disturbed;

    private final Random random = new Random(SEED);
    private final Set<Integer> killAt = new HashSet<>();
    private final List<CommandResult> acknowledged = new ArrayList<>();
    private @Nullable ServiceProcess process;
    private @Nullable SalonClient client;
    private Instant time = SmallSalon.MORNING;
    private int sent;
    private int kills;

    @Test
    void no_acknowledged_command_is_lost_or_applied_twice_and_the_day_ends_the_same() throws Exception {
        List<String> expected = playUndisturbed();
        List<String> found = playKilled();
        assertThat(kills).isEqualTo(KILLS);
        assertThat(withoutSeals(found)).isEqualTo(withoutSeals(expected));
        for (CommandResult result : acknowledged)
            assertThat(found.stream().filter(event -> event.contains("\"" + result.commandId() + "\"")))
                    .as(result.commandId())
                    .hasSize((int) (result.lastRevision() - result.firstRevision() + 1));
        try (EventLog log = SqliteEventLog.open(disturbed)) {
            assertThat(log.verify()).isEmpty();
        }
    }

    @Test
    void a_killed_service_leaves_nothing_in_the_temporary_folder() throws Exception {
        try (ServiceProcess service = ServiceProcess.start(disturbed, undisturbed)) {
            new SalonClient(service.port()).open(SmallSalon.opening());
            service.kill();
        }
        assertThat(undisturbed).isEmptyDirectory();
        assertThat(disturbed.resolve("log.db")).exists();
    }

    /** Clients are sealed with random keys, so two logs of one day differ there and nowhere else. */
    private static List<String> withoutSeals(List<String> events) {
        return events.stream()
                .map(event -> event.replaceAll("sealed:(c\\d+):[\\w-]+", "sealed:$1"))
                .toList();
    }

    private List<String> playUndisturbed() throws Exception {
        int[] requests = {0};
        try (PlannerService service = PlannerService.start(PlayedDayIT.settings(undisturbed))) {
            SalonClient client = new SalonClient(service.port(), response -> {
                if (response.request().method().equals("POST")) requests[0]++;
            });
            PlayedDayIT.play(client);
            List<Integer> all =
                    new ArrayList<>(IntStream.range(0, requests[0]).boxed().toList());
            Collections.shuffle(all, random);
            killAt.addAll(all.subList(0, KILLS));
            return client.events(SmallSalon.DAY);
        }
    }

    private List<String> playKilled() throws Exception {
        start();
        try {
            send(client -> client.post("/days", SmallSalon.opening()));
            advance(SmallSalon.MORNING);
            DayPlayer player = new DayPlayer();
            Optional<DayPlayer.Step> step = player.next(client().view(SmallSalon.DAY));
            while (step.isPresent()) {
                DayPlayer.Step now = step.get();
                advance(now.at());
                send(client -> client.command(SmallSalon.DAY, now.request()));
                advance(now.at());
                step = player.next(client().view(SmallSalon.DAY));
            }
            return client().events(SmallSalon.DAY);
        } finally {
            running().close();
        }
    }

    private void start() throws IOException {
        process = ServiceProcess.start(
                disturbed,
                "--clock",
                "driven",
                "--clock-start",
                SmallSalon.MORNING.toString(),
                "--rate-permille",
                "0",
                "--plan-rounds",
                "3");
        client = new SalonClient(running().port());
    }

    private ServiceProcess running() {
        return Objects.requireNonNull(process);
    }

    private SalonClient client() {
        return Objects.requireNonNull(client);
    }

    private void advance(Instant to) throws Exception {
        time = to;
        send(client -> client.post("/clock/advance", new SalonClient.Advance(to)));
    }

    /** Sends until an answer comes; where a kill is due, waits for a seeded time and kills, answered or not. */
    private void send(Function<SalonClient, HttpRequest> request) throws Exception {
        boolean kill = killAt.contains(sent++);
        if (kill) {
            sendAndKill(request.apply(client()));
            start();
            SalonClient again = client();
            again.advance(time);
        }
        acknowledge(client().send(request.apply(client())));
    }

    private void sendAndKill(HttpRequest request) throws Exception {
        kills++;
        CompletableFuture<HttpResponse<String>> answer = client().sendLater(request);
        try {
            acknowledge(answer.get((long) (random.nextDouble() * LONGEST_WAIT_MICROS), TimeUnit.MICROSECONDS));
        } catch (TimeoutException | ExecutionException unanswered) {
            assertThat(unanswered).isNotNull();
        }
        running().kill();
    }

    private void acknowledge(HttpResponse<String> answer) {
        assertThat(answer.statusCode()).as(answer.body()).isIn(200, 201, 409);
        if (answer.body().contains("\"firstRevision\""))
            acknowledged.add(ContractJson.read(answer.body(), CommandResult.class));
    }
}
