package stirtide.planner.admin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stirtide.planner.access.AccessFile;
import stirtide.planner.access.Role;
import stirtide.planner.cli.CommandException;
import stirtide.planner.service.PlannerService;
import stirtide.planner.service.Settings;

/** A closed service is not opened by a lost list, nor by a restore. */
class ClosedAccessIT {
    @TempDir
    Path place;

    private static void refused(Path folder, String reason) {
        assertThatThrownBy(
                        () -> PlannerService.start(Settings.inProcess(folder)).close())
                .isInstanceOf(CommandException.class)
                .hasMessageContaining(reason)
                .extracting(failure -> ((CommandException) failure).exitCode())
                .isEqualTo(CommandException.LOG_BROKEN);
    }

    private static void giveToken(Path folder) {
        new AccessFile(folder).make("mika", Role.MANAGER, Optional.empty(), Instant.now(), Duration.ofDays(1));
    }

    private static int status(Path folder) throws Exception {
        try (PlannerService service = PlannerService.start(Settings.inProcess(folder))) {
            URI days = URI.create("http://127.0.0.1:" + service.port() + "/days");
            return HttpClient.newHttpClient()
                    .send(HttpRequest.newBuilder(days).build(), HttpResponse.BodyHandlers.ofString())
                    .statusCode();
        }
    }

    private int care(String... words) {
        return CareMain.run(List.of(words), System.out, System.err);
    }

    @Test
    void a_lost_or_emptied_list_ends_the_start_with_74_until_a_token_is_given_anew() throws Exception {
        giveToken(place);
        assertThat(status(place)).isEqualTo(401);
        Files.delete(place.resolve("access.json"));
        refused(place, "access.json is missing or empty");
        Files.write(place.resolve("access.json"), new byte[0]);
        refused(place, "care token " + place + " add");
        giveToken(place);
        assertThat(status(place)).isEqualTo(401);
    }

    @Test
    void a_restored_log_is_closed_until_somebody_sets_the_access() throws Exception {
        Path data = place.resolve("data");
        assertThat(status(data)).isEqualTo(200);
        String copy = place.resolve("copy").toString();
        assertThat(care("backup", data.toString(), copy)).isZero();
        Path restored = place.resolve("restored");
        assertThat(care("restore", copy, restored.toString())).isZero();
        refused(restored, "it is not known who may come in");
        giveToken(restored);
        assertThat(status(restored)).isEqualTo(401);
        Path open = place.resolve("open");
        assertThat(care("restore", copy, open.toString(), "--open")).isZero();
        assertThat(status(open)).isEqualTo(200);
    }

    @Test
    void a_restore_brings_the_access_list_back_with_the_keys() throws Exception {
        Path data = place.resolve("data");
        giveToken(data);
        assertThat(status(data)).isEqualTo(401);
        Path kept = Files.createDirectories(place.resolve("kept"));
        Files.copy(data.resolve("access.json"), kept.resolve("access.json"));
        String copy = place.resolve("copy").toString();
        assertThat(care("backup", data.toString(), copy)).isZero();
        Path restored = place.resolve("restored");
        assertThat(care("restore", copy, restored.toString(), kept.toString())).isZero();
        assertThat(new AccessFile(restored).read().tokens())
                .isEqualTo(new AccessFile(data).read().tokens());
        assertThat(status(restored)).isEqualTo(401);
    }
}
