package stirtide.planner.service;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stirtide.events.command.CommandRequest;
import stirtide.events.json.ContractJson;

/** A service that erased a client has lost key and word in its memory too: everything it can still reach is searched. */
class ErasedMemoryIT {
    private static final String CANARY = "Oleander-canary";

    @TempDir
    Path folder;

    @TempDir
    Path place;

    record Reference(String clientRef) {}

    private static CommandRequest opening() {
        return ContractJson.read(
                ContractJson.write(SmallSalon.opening())
                        .replace("\"clientRef\":\"K2\"", "\"clientRef\":\"" + CANARY + "\""),
                CommandRequest.class);
    }

    private List<String> keys() throws Exception {
        List<String> keys = new ArrayList<>();
        for (var client : ContractJson.mapper()
                .readTree(stirtide.planner.access.CheckedFile.read(folder.resolve("clients.keys"))
                        .text())
                .get("clients")) keys.add(client.get("key").asText());
        return keys;
    }

    /** All that can still be reached: the dump collects garbage first. */
    private String memory(ServiceProcess service) throws Exception {
        Path dump = place.resolve("memory.hprof");
        Files.deleteIfExists(dump);
        Path output = place.resolve("jcmd.out");
        Process jcmd = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "jcmd").toString(),
                        Long.toString(service.id()),
                        "GC.heap_dump",
                        dump.toString())
                .redirectErrorStream(true)
                .redirectOutput(output.toFile())
                .start();
        assertThat(jcmd.waitFor()).as(Files.readString(output)).isZero();
        return new String(Files.readAllBytes(dump), StandardCharsets.ISO_8859_1);
    }

    @Test
    void neither_the_key_nor_the_word_of_an_erased_client_can_be_reached_in_memory_any_more() throws Exception {
        try (ServiceProcess service = ServiceProcess.start(
                folder,
                "--clock",
                "driven",
                "--clock-start",
                SmallSalon.MORNING.toString(),
                "--rate-permille",
                "0",
                "--plan-rounds",
                "3")) {
            SalonClient client = new SalonClient(service.port());
            assertThat(client.open(opening()).statusCode()).isEqualTo(201);
            assertThat(client.get("/days/" + SmallSalon.DAY).body()).contains(CANARY);
            assertThat(client.send(client.post("/clients/export", new Reference(CANARY)))
                            .body())
                    .contains(CANARY);
            List<String> before = keys();
            assertThat(client.send(client.post("/clients/erasure", new Reference(CANARY)))
                            .statusCode())
                    .isEqualTo(204);
            List<String> kept = keys();
            before.removeAll(kept);
            assertThat(before).hasSize(1);
            String memory = memory(service);
            // The search finds what is there.
            assertThat(memory.contains(kept.get(0))).isTrue();
            assertThat(memory.contains(before.get(0))).isFalse();
            // A connection keeps its last answer, and what hangs on it, until the next look at it.
            await().atMost(Duration.ofSeconds(60))
                    .pollInterval(Duration.ofSeconds(1))
                    .until(() -> !memory(service).contains(CANARY));
        }
    }
}
