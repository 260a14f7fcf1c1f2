package stirtide.planner.service;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stirtide.planner.cli.CommandException;

/** A log that was lost is not taken for a new one, and what is left beside it is not touched. */
class LostLogIT {
    private static final List<String> REMAINS = List.of("anchor", "clients.keys", "closed-days.db");

    @TempDir
    Path written;

    @TempDir
    Path lost;

    /** As a killed service leaves it: a part of the log is in the write-ahead file only. */
    @BeforeEach
    void a_folder_of_a_service_in_the_middle_of_its_work() throws Exception {
        try (PlannerService service = PlannerService.start(PlayedDayIT.settings(written))) {
            SalonClient client = new SalonClient(service.port());
            client.open(SmallSalon.opening());
            client.advance(SmallSalon.MORNING.plusSeconds(3600));
            for (String name : List.of("lock", "log.db", "log.db-wal", "anchor", "clients.keys", "closed-days.db"))
                Files.copy(written.resolve(name), lost.resolve(name));
        }
        assertThat(Files.size(lost.resolve("log.db-wal"))).isPositive();
    }

    private Map<String, String> bytes() throws Exception {
        Map<String, String> found = new TreeMap<>();
        try (Stream<Path> files = Files.walk(lost)) {
            for (Path file : files.filter(Files::isRegularFile).toList())
                found.put(
                        lost.relativize(file).toString(),
                        new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
        }
        return found;
    }

    private void refused(String reason) throws Exception {
        Map<String, String> before = bytes();
        assertThatThrownBy(
                        () -> PlannerService.start(PlayedDayIT.settings(lost)).close())
                .isInstanceOf(CommandException.class)
                .hasMessageContaining(reason)
                .extracting(failure -> ((CommandException) failure).exitCode())
                .isEqualTo(CommandException.LOG_BROKEN);
        assertThat(bytes()).isEqualTo(before);
    }

    private void shorten(int length) throws Exception {
        Path log = lost.resolve("log.db");
        Files.write(log, Arrays.copyOf(Files.readAllBytes(log), length));
    }

    @Test
    void a_killed_service_whose_log_is_whole_starts_again() throws Exception {
        try (PlannerService service = PlannerService.start(PlayedDayIT.settings(lost))) {
            assertThat(new SalonClient(service.port()).view(SmallSalon.DAY).salonName())
                    .isEqualTo("Quay House");
        }
    }

    @Test
    void a_missing_log_ends_the_start_with_74() throws Exception {
        Files.delete(lost.resolve("log.db"));
        refused("is missing, although log.db-wal lies beside it");
        Files.delete(lost.resolve("log.db-wal"));
        for (String last : REMAINS) {
            refused("is missing, although " + last + " lies beside it");
            Files.delete(lost.resolve(last));
        }
        PlannerService.start(PlayedDayIT.settings(lost)).close();
    }

    @Test
    void an_emptied_log_ends_the_start_with_74() throws Exception {
        shorten(0);
        refused("is empty");
        Files.delete(lost.resolve("log.db-wal"));
        refused("is empty");
    }

    @Test
    void a_log_cut_within_its_first_page_ends_the_start_with_74() throws Exception {
        for (int length : new int[] {4095, 2000, 100, 99, 1}) {
            shorten(length);
            refused("is shortened");
        }
    }

    @Test
    void a_log_that_has_lost_pages_ends_the_start_with_74() throws Exception {
        PlannerService.start(PlayedDayIT.settings(lost)).close();
        int whole = (int) Files.size(lost.resolve("log.db"));
        shorten(whole - 1);
        refused("is shortened: it has " + (whole - 1) + " bytes of " + whole);
        shorten(4096);
        refused("is shortened: it has 4096 bytes of " + whole);
    }

    @Test
    void looking_at_an_emptied_log_leaves_its_write_ahead_file() throws Exception {
        shorten(0);
        Map<String, String> before = bytes();
        assertThatThrownBy(() -> stirtide.planner.eventlog.LogMaintenance.verify(lost))
                .hasMessageContaining("is empty");
        assertThat(bytes()).isEqualTo(before);
    }
}
