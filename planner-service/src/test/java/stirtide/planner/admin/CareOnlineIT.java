package stirtide.planner.admin;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stirtide.events.json.ContractJson;
import stirtide.planner.cli.CommandException;
import stirtide.planner.service.PlannerService;
import stirtide.planner.service.Settings;
import stirtide.planner.service.SmallSalon;

/** Care of the log of a service that is running: copies, and what is kept of clients. */
class CareOnlineIT {
    private static final String DAY = "/days/quay-house/2027-03-09";
    private static final String CANARY = "Oleander-canary";
    private static final int WRITES = 150;

    @TempDir
    Path place;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();
    private final HttpClient client =
            HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
    private Path data;
    private int port;

    @BeforeEach
    void name_the_folder() {
        data = place.resolve("data");
    }

    private PlannerService start(Path folder) {
        PlannerService service = PlannerService.start(
                Settings.inProcess(folder).withDrivenClock(Instant.parse("2027-03-09T08:00:00Z"), 0));
        port = service.port();
        return service;
    }

    private int care(String... words) {
        return CareMain.run(
                Arrays.asList(words),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8));
    }

    private String said() {
        return out.toString(StandardCharsets.UTF_8) + err.toString(StandardCharsets.UTF_8);
    }

    private String path(String name) {
        return place.resolve(name).toString();
    }

    private HttpResponse<String> post(String path, String body) throws Exception {
        return client.send(
                HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path))
                        .header("content-type", "application/json")
                        .POST(BodyPublishers.ofString(body))
                        .build(),
                BodyHandlers.ofString());
    }

    private String get(String path) throws Exception {
        return client.send(
                        HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path))
                                .build(),
                        BodyHandlers.ofString())
                .body();
    }

    private void open() throws Exception {
        String opening = ContractJson.write(SmallSalon.opening())
                .replace("\"clientRef\":\"K2\"", "\"clientRef\":\"" + CANARY + "\"");
        assertThat(post("/days", opening).statusCode()).isEqualTo(201);
    }

    private static String swatch(int number) {
        return "{\"commandId\":\"swatch-" + number + "\",\"actor\":\"mika\",\"command\":{\"type\":\"RecordSwatch\","
                + "\"swatch\":{\"on\":\"2027-03-01\",\"lightenerId\":\"powder\",\"ratioThousandths\":" + (1500 + number)
                + ",\"strengthHundredths\":600,\"minutes\":30,\"levelBeforeTenths\":50,\"levelAfterTenths\":80}}}";
    }

    @Test
    void a_copy_made_while_the_service_writes_holds_a_state_that_was_and_knows_its_commands() throws Exception {
        ExecutorService beside = Executors.newSingleThreadExecutor();
        AtomicBoolean done = new AtomicBoolean();
        CountDownLatch writing = new CountDownLatch(WRITES);
        List<String> events;
        try (PlannerService service = start(data)) {
            open();
            Future<Integer> written = beside.submit(() -> {
                int number = 0;
                for (; !done.get() || number < WRITES; number++) {
                    assertThat(post(DAY + "/commands", swatch(number)).statusCode())
                            .isEqualTo(200);
                    writing.countDown();
                }
                return number;
            });
            assertThat(writing.await(60, TimeUnit.SECONDS)).isTrue();
            assertThat(care("backup", data.toString(), path("copy"))).as(said()).isZero();
            done.set(true);
            assertThat(written.get(60, TimeUnit.SECONDS)).isGreaterThanOrEqualTo(WRITES);
            assertThat(service.port()).isPositive();
        } finally {
            beside.shutdownNow();
        }
        assertThat(care("export", data.toString())).isZero();
        events = out.toString(StandardCharsets.UTF_8).lines().toList();
        assertThat(care("restore", path("copy"), path("restored"), "--open"))
                .as(said())
                .isZero();
        assertThat(care("verify", path("restored"))).as(said()).isZero();
        out.reset();
        assertThat(care("export", path("restored"))).isZero();
        List<String> copied = out.toString(StandardCharsets.UTF_8).lines().toList();
        assertThat(copied).hasSizeGreaterThan(WRITES).isEqualTo(events.subList(0, copied.size()));
        try (PlannerService again = start(place.resolve("restored"))) {
            assertThat(again.port()).isPositive();
            assertThat(post(DAY + "/commands", swatch(0)).body()).contains("\"repeated\":true");
        }
    }

    @Test
    void a_client_is_told_of_and_forgotten_through_the_running_service_and_stands_nowhere_after() throws Exception {
        try (PlannerService service = start(data)) {
            open();
            assertThat(service.port()).isPositive();
            assertThat(care("client", data.toString(), "export", CANARY))
                    .as(said())
                    .isZero();
            assertThat(said())
                    .contains("\"clientRef\":\"" + CANARY + "\"", "\"b-2\"")
                    .doesNotContain("\"b-1\"");
            assertThat(care("backup", data.toString(), path("before")))
                    .as(said())
                    .isZero();
            String key = key();
            out.reset();
            assertThat(care("client", data.toString(), "erase", CANARY))
                    .as(said())
                    .isZero();
            assertThat(care("client", data.toString(), "erase", CANARY))
                    .as(said())
                    .isEqualTo(CommandException.BAD_INPUT);
            assertThat(care("client", data.toString(), "export", "nobody"))
                    .as(said())
                    .isEqualTo(CommandException.BAD_INPUT);
            assertThat(care("backup", data.toString(), path("after")))
                    .as(said())
                    .isZero();
            assertThat(get(DAY)).contains("\"K1\"").doesNotContain(CANARY);
            assertThat(filesWith(CANARY)).isEmpty();
            assertThat(filesWith(key)).isEmpty();
            assertThat(said()).doesNotContain(CANARY);
        }
        assertThat(care("verify", data.toString())).isZero();
    }

    @Test
    void the_same_on_a_stopped_service_and_the_day_notes_it_at_the_next_start() throws Exception {
        start(data).close();
        try (PlannerService service = start(data)) {
            open();
            assertThat(service.port()).isPositive();
        }
        assertThat(care("client", data.toString(), "export", CANARY)).as(said()).isZero();
        assertThat(said())
                .contains("\"clientRef\":\"" + CANARY + "\"", "\"b-2\"")
                .doesNotContain("\"b-1\"");
        String key = key();
        assertThat(care("client", data.toString(), "erase", CANARY)).as(said()).isZero();
        assertThat(care("client", data.toString(), "erase", CANARY)).isEqualTo(CommandException.BAD_INPUT);
        assertThat(filesWith(key)).isEmpty();
        assertThat(filesWith(CANARY)).isEmpty();
        try (PlannerService service = start(data)) {
            assertThat(service.port()).isPositive();
            assertThat(get(DAY)).contains("\"K1\"").doesNotContain(CANARY);
            assertThat(get(DAY + "/events?limit=500")).contains("ClientErased");
        }
    }

    @Test
    void an_old_backup_with_old_keys_comes_back_without_the_key_of_whoever_was_erased_since() throws Exception {
        Path old = Files.createDirectories(place.resolve("old"));
        try (PlannerService service = start(data)) {
            open();
            assertThat(service.port()).isPositive();
            assertThat(care("backup", data.toString(), path("copy"))).as(said()).isZero();
            Files.copy(data.resolve("clients.keys"), old.resolve("clients.keys"));
            String key = key();
            assertThat(care("client", data.toString(), "erase", CANARY)).isZero();
            Files.copy(data.resolve("clients.erased"), old.resolve("clients.erased"));
            assertThat(care("restore", path("copy"), path("restored"), old.toString(), "--open"))
                    .as(said())
                    .isZero();
            assertThat(Files.readString(place.resolve("restored").resolve("clients.keys")))
                    .doesNotContain(key)
                    .contains("c000001");
        }
        try (PlannerService again = start(place.resolve("restored"))) {
            assertThat(again.port()).isPositive();
            assertThat(get(DAY)).contains("\"K1\"").doesNotContain(CANARY);
        }
        assertThat(care("restore", path("copy"), path("other"), path("nowhere")))
                .isEqualTo(CommandException.CANNOT_CREATE);
        assertThat(place.resolve("other")).doesNotExist();
    }

    /** The key of the canary, who was booked second. */
    private String key() throws Exception {
        var clients = ContractJson.mapper()
                .readTree(stirtide.planner.access.CheckedFile.read(data.resolve("clients.keys"))
                        .text())
                .get("clients");
        List<String> keys = new ArrayList<>();
        for (var one : clients)
            if (one.get("clientId").asText().equals("c000002"))
                keys.add(one.get("key").asText());
        assertThat(keys).hasSize(1);
        return keys.get(0);
    }

    private List<Path> filesWith(String text) throws Exception {
        List<Path> found = new ArrayList<>();
        try (Stream<Path> files = Files.walk(place)) {
            for (Path file : files.filter(Files::isRegularFile).toList())
                if (new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1).contains(text)) found.add(file);
        }
        return found;
    }
}
