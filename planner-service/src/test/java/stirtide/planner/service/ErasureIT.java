package stirtide.planner.service;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stirtide.events.command.DayCommand;
import stirtide.events.day.Booking;
import stirtide.events.json.ContractJson;
import stirtide.events.view.DayView;
import stirtide.planner.eventlog.LogMaintenance;

/** Who a client was stands nowhere after an erasure, and all else is as it was. */
class ErasureIT {
    private static final String CANARY = "Oleander-canary";

    @TempDir
    Path folder;

    record Reference(String clientRef) {}

    private static Booking booking() {
        return new Booking(
                "b-9",
                "half",
                3,
                Instant.parse("2027-03-09T13:00:00Z"),
                CANARY,
                "long",
                "medium",
                Optional.of("ada"),
                0,
                0,
                Optional.empty(),
                Optional.empty());
    }

    private List<Path> filesWith(String text) throws Exception {
        List<Path> found = new ArrayList<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList())
                if (new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1).contains(text)) found.add(file);
        }
        return found;
    }

    private static String key(Path keys) throws Exception {
        for (var client : ContractJson.mapper()
                .readTree(stirtide.planner.access.CheckedFile.read(keys).text())
                .get("clients"))
            if (client.get("clientId").asText().equals("c000004"))
                return client.get("key").asText();
        return "";
    }

    @Test
    void a_reference_no_day_accepts_is_refused_in_words_and_stored_nowhere() throws Exception {
        try (PlannerService service = PlannerService.start(PlayedDayIT.settings(folder))) {
            SalonClient client = new SalonClient(service.port());
            client.open(SmallSalon.opening());
            String booking =
                    ContractJson.write(SmallSalon.request("book-too-long", new DayCommand.BookService(booking())));
            String tooLong = CANARY + "y".repeat(50);
            var answer = client.send(client.command(
                    SmallSalon.DAY,
                    ContractJson.read(booking.replace(CANARY, tooLong), stirtide.events.command.CommandRequest.class)));
            assertThat(answer.statusCode()).as(answer.body()).isEqualTo(409);
            assertThat(answer.body())
                    .contains("CLIENT_REFERENCE_LONG", "64 characters at most")
                    .doesNotContain(tooLong);
        }
        assertThat(filesWith(CANARY)).isEmpty();
    }

    @Test
    void an_erased_client_stands_nowhere_and_the_day_goes_on() throws Exception {
        DayView before;
        try (PlannerService service = PlannerService.start(PlayedDayIT.settings(folder))) {
            SalonClient client = new SalonClient(service.port());
            client.open(SmallSalon.opening());
            client.advance(SmallSalon.MORNING);
            var booked = client.send(client.command(
                    SmallSalon.DAY, SmallSalon.request("book-canary", new DayCommand.BookService(booking()))));
            assertThat(booked.statusCode()).as(booked.body()).isEqualTo(200);
            client.advance(SmallSalon.MORNING.plusSeconds(60));
            before = client.view(SmallSalon.DAY);
            assertThat(before.services())
                    .extracting(DayView.ServiceCard::clientRef)
                    .contains(CANARY, "K1");
            assertThat(client.get("/days/" + SmallSalon.DAY + "/setup").body()).contains(CANARY);
            assertThat(String.join("", client.events(SmallSalon.DAY))).doesNotContain(CANARY);
            assertThat(filesWith(CANARY)).isEmpty();

            var record = client.send(client.post("/clients/export", new Reference(CANARY)));
            assertThat(record.statusCode()).isEqualTo(200);
            assertThat(record.body()).contains(CANARY, "b-9", SmallSalon.DAY).doesNotContain("b-1");
            String key = key(folder.resolve("clients.keys"));
            assertThat(key).hasSize(64);

            assertThat(client.send(client.post("/clients/erasure", new Reference(CANARY)))
                            .statusCode())
                    .isEqualTo(204);
            DayView after = client.view(SmallSalon.DAY);
            assertThat(after.services())
                    .extracting(DayView.ServiceCard::clientRef)
                    .doesNotContain(CANARY);
            assertThat(after.totals()).isEqualTo(before.totals());
            assertThat(client.get("/days/" + SmallSalon.DAY + "/setup").body()).doesNotContain(CANARY);
            assertThat(client.send(client.post("/clients/export", new Reference(CANARY)))
                            .statusCode())
                    .isEqualTo(404);
            assertThat(client.send(client.post("/clients/erasure", new Reference(CANARY)))
                            .statusCode())
                    .isEqualTo(404);
            assertThat(client.events(SmallSalon.DAY)
                            .get(client.events(SmallSalon.DAY).size() - 1))
                    .contains("ClientErased", "c000004");
            assertThat(filesWith(key)).isEmpty();
        }
        assertThat(LogMaintenance.verify(folder)).isEmpty();
        try (PlannerService service = PlannerService.start(PlayedDayIT.settings(folder))) {
            DayView again = new SalonClient(service.port()).view(SmallSalon.DAY);
            assertThat(again.services()).hasSameSizeAs(before.services());
            assertThat(ContractJson.write(again)).doesNotContain(CANARY).contains("K1");
        }
    }
}
