package stirtide.planner.service;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stirtide.events.command.CommandRequest;
import stirtide.events.command.DayCommand;
import stirtide.events.day.Booking;
import stirtide.events.json.ContractJson;

/** An id stands for one client, and for one of whom something is kept. */
class ClientIdsIT {
    @TempDir
    Path folder;

    private static CommandRequest booking(String id, String clientRef, String treatment) {
        return SmallSalon.request(
                "book-" + id,
                new DayCommand.BookService(new Booking(
                        id,
                        treatment,
                        3,
                        Instant.parse("2027-03-09T13:00:00Z"),
                        clientRef,
                        "long",
                        "medium",
                        Optional.of("ada"),
                        0,
                        0,
                        Optional.empty(),
                        Optional.empty())));
    }

    private static HttpResponse<String> send(SalonClient client, CommandRequest request) throws Exception {
        return client.send(client.command(SmallSalon.DAY, request));
    }

    private int keys() throws Exception {
        return ContractJson.mapper()
                .readTree(stirtide.planner.access.CheckedFile.read(folder.resolve("clients.keys"))
                        .text())
                .get("clients")
                .size();
    }

    private void an_id_is_new_after(Optional<byte[]> restored) throws Exception {
        Path keys = folder.resolve("clients.keys");
        Files.delete(keys);
        if (restored.isPresent()) Files.write(keys, restored.get());
        try (PlannerService service = PlannerService.start(PlayedDayIT.settings(folder))) {
            SalonClient client = new SalonClient(service.port());
            assertThat(send(client, booking("b-10", "Linden", "half")).statusCode())
                    .isEqualTo(200);
            assertThat(String.join("", client.events(SmallSalon.DAY)))
                    .containsOnlyOnce("sealed:c000004:")
                    .containsOnlyOnce("sealed:c000005:");
        }
    }

    private byte[] keysBeforeTheFourthClient() throws Exception {
        try (PlannerService service = PlannerService.start(PlayedDayIT.settings(folder))) {
            SalonClient client = new SalonClient(service.port());
            client.open(SmallSalon.opening());
            client.advance(SmallSalon.MORNING);
            byte[] older = Files.readAllBytes(folder.resolve("clients.keys"));
            assertThat(send(client, booking("b-9", "Oleander", "half")).statusCode())
                    .isEqualTo(200);
            return older;
        }
    }

    @Test
    void an_id_of_the_log_is_not_given_again_after_older_keys_were_restored() throws Exception {
        an_id_is_new_after(Optional.of(keysBeforeTheFourthClient()));
    }

    @Test
    void an_id_of_the_log_is_not_given_again_after_the_keys_were_lost() throws Exception {
        keysBeforeTheFourthClient();
        an_id_is_new_after(Optional.empty());
    }

    @Test
    void neither_a_refused_command_nor_one_sent_again_after_an_erasure_makes_a_client() throws Exception {
        record Reference(String clientRef) {}
        keysBeforeTheFourthClient();
        try (PlannerService service = PlannerService.start(PlayedDayIT.settings(folder))) {
            SalonClient client = new SalonClient(service.port());
            assertThat(keys()).isEqualTo(4);
            for (int refused = 0; refused < 5; refused++)
                assertThat(send(client, booking("x-" + refused, "Nobody-" + refused, "no-such"))
                                .statusCode())
                        .isEqualTo(409);
            assertThat(send(client, booking("b-9", "Oleander", "half")).body()).contains("\"repeated\":true");
            assertThat(send(client, booking("b-9", "Hazel", "half")).statusCode())
                    .isEqualTo(422);
            assertThat(client.send(client.post("/clients/erasure", new Reference("Oleander")))
                            .statusCode())
                    .isEqualTo(204);
            assertThat(send(client, booking("b-9", "Oleander", "half")).statusCode())
                    .isEqualTo(422);
            assertThat(client.send(client.post("/clients/export", new Reference("Oleander")))
                            .statusCode())
                    .isEqualTo(404);
            assertThat(keys()).isEqualTo(3);
            // A key that is written for an accepted command carries no client of the refused ones with it.
            assertThat(send(client, booking("b-11", "Linden", "half")).statusCode())
                    .isEqualTo(200);
            assertThat(keys()).isEqualTo(4);
        }
    }
}
