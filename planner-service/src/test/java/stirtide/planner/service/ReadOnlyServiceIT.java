package stirtide.planner.service;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stirtide.events.command.DayCommand;

/** A damaged log is shown as far as it can be read, and nothing is stored on top of the damage. */
class ReadOnlyServiceIT {
    @TempDir
    Path folder;

    private long sound;

    @BeforeEach
    void write_a_log_and_change_a_start_in_it() throws Exception {
        try (PlannerService service = PlannerService.start(PlayedDayIT.settings(folder))) {
            SalonClient client = new SalonClient(service.port());
            client.open(SmallSalon.opening());
            client.advance(SmallSalon.MORNING.plusSeconds(3600));
            assertThat(client.send(client.command(
                                    SmallSalon.DAY,
                                    SmallSalon.request("start-service-1", new DayCommand.StartService(1))))
                            .statusCode())
                    .isEqualTo(200);
            client.advance(SmallSalon.MORNING.plusSeconds(3660));
            sound = client.events(SmallSalon.DAY).stream()
                    .takeWhile(event -> !event.contains("stirtide.ServiceStarted.v1"))
                    .count();
        }
        Path file = folder.resolve("log.db");
        String bytes = Files.readString(file, StandardCharsets.ISO_8859_1);
        int at = bytes.indexOf("{\"service\":1}", bytes.indexOf("stirtide.ServiceStarted.v1"));
        Files.writeString(
                file, bytes.substring(0, at + 11) + "2" + bytes.substring(at + 12), StandardCharsets.ISO_8859_1);
    }

    @Test
    void days_are_shown_up_to_the_damage_commands_are_refused_and_no_byte_changes() throws Exception {
        byte[] before = Files.readAllBytes(folder.resolve("log.db"));
        try (PlannerService service = PlannerService.start(PlayedDayIT.settings(folder))) {
            SalonClient client = new SalonClient(service.port());
            assertThat(client.view(SmallSalon.DAY).revision()).isEqualTo(sound);
            assertThat(client.events(SmallSalon.DAY)).hasSize((int) sound);
            HttpResponse<String> refused = client.send(client.command(
                    SmallSalon.DAY, SmallSalon.request("start-service-2", new DayCommand.StartService(2))));
            assertThat(refused.statusCode()).isEqualTo(503);
            assertThat(refused.body()).contains("LOG_READ_ONLY").doesNotContain(folder.toString());
            assertThat(client.open(SmallSalon.opening()).body()).contains("\"repeated\":true");
            SalonClient operator = new SalonClient(service.managementPort());
            assertThat(operator.get("/ready").statusCode()).isEqualTo(503);
            assertThat(operator.get("/ready").body()).contains("read only");
            assertThat(operator.get("/health").statusCode()).isEqualTo(200);
        }
        assertThat(folder.resolve("log.db")).hasBinaryContent(before);
    }
}
