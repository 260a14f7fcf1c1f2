package stirtide.planner.service;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Comparator;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stirtide.events.command.DayCommand;
import stirtide.planner.eventlog.LogMaintenance;

/** A service whose folder is taken away from under it answers for nothing that is not kept. */
class MovedFolderIT {
    @TempDir
    Path place;

    private Path folder;
    private PlannerService service;
    private SalonClient client;
    private long acknowledged;

    @BeforeEach
    void a_service_with_an_open_day() throws Exception {
        folder = place.resolve("data");
        service = PlannerService.start(PlayedDayIT.settings(folder));
        client = new SalonClient(service.port());
        client.open(SmallSalon.opening());
        client.advance(SmallSalon.MORNING.plusSeconds(3600));
        acknowledged = client.view(SmallSalon.DAY).revision();
    }

    @AfterEach
    void stop() {
        service.close();
    }

    private static HttpResponse<String> startService(SalonClient client, int service) throws Exception {
        return client.send(client.command(
                SmallSalon.DAY, SmallSalon.request("start-service-" + service, new DayCommand.StartService(service))));
    }

    private void refuses() throws Exception {
        HttpResponse<String> refused = startService(client, 1);
        assertThat(refused.statusCode()).as(refused.body()).isEqualTo(503);
        assertThat(refused.body()).contains("LOG_READ_ONLY").doesNotContain(folder.toString());
        assertThat(client.view(SmallSalon.DAY).revision()).isEqualTo(acknowledged);
        assertThat(new SalonClient(service.managementPort()).get("/ready").body())
                .contains("read only");
    }

    private static void delete(Path folder) throws Exception {
        try (Stream<Path> paths = Files.walk(folder)) {
            for (Path path : paths.sorted(Comparator.reverseOrder()).toList()) Files.delete(path);
        }
    }

    @Test
    void a_moved_folder_ends_the_storing_and_a_service_on_the_old_path_is_not_disturbed() throws Exception {
        Path moved = place.resolve("moved");
        Files.move(folder, moved);
        try (PlannerService second = PlannerService.start(PlayedDayIT.settings(folder))) {
            SalonClient other = new SalonClient(second.port());
            other.open(SmallSalon.opening());
            refuses();
            service.close();
            other.advance(SmallSalon.MORNING.plusSeconds(3600));
            assertThat(startService(other, 1).statusCode()).isEqualTo(200);
        }
        assertThat(LogMaintenance.verify(folder)).isEmpty();
        assertThat(LogMaintenance.verify(moved)).isEmpty();
        try (PlannerService again = PlannerService.start(PlayedDayIT.settings(moved))) {
            SalonClient same = new SalonClient(again.port());
            assertThat(same.view(SmallSalon.DAY).revision()).isGreaterThanOrEqualTo(acknowledged);
            assertThat(startService(same, 1).statusCode()).isEqualTo(200);
        }
    }

    @Test
    void a_removed_folder_ends_the_storing_without_any_command() throws Exception {
        delete(folder);
        SalonClient operator = new SalonClient(service.managementPort());
        await().atMost(Duration.ofSeconds(30))
                .untilAsserted(() -> assertThat(operator.get("/ready").body()).contains("read only"));
        refuses();
        assertThat(folder).doesNotExist();
    }

    @ParameterizedTest
    @ValueSource(strings = {"log.db", "log.db-wal", "lock"})
    void a_file_that_was_replaced_by_a_copy_of_itself_ends_the_storing(String name) throws Exception {
        Path file = folder.resolve(name);
        Path copy = Files.copy(file, place.resolve("copy"));
        Files.move(copy, file, java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        refuses();
    }

    @ParameterizedTest
    @ValueSource(strings = {"log.db", "log.db-wal", "lock"})
    void a_file_that_was_removed_ends_the_storing(String name) throws Exception {
        Files.delete(folder.resolve(name));
        refuses();
    }
}
