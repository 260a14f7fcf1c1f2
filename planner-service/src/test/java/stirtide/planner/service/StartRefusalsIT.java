package stirtide.planner.service;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stirtide.planner.cli.CommandException;

class StartRefusalsIT {
    @TempDir
    Path folder;

    @TempDir
    Path empty;

    private static void refused(Settings settings, int exitCode, String reason) {
        assertThatThrownBy(() -> PlannerService.start(settings))
                .isInstanceOf(CommandException.class)
                .hasMessageContaining(reason)
                .extracting(failure -> ((CommandException) failure).exitCode())
                .isEqualTo(exitCode);
    }

    @Test
    void a_second_process_on_the_same_folder_ends_with_69_and_leaves_the_first_alone() throws Exception {
        try (PlannerService first = PlannerService.start(Settings.inProcess(folder));
                ServiceProcess second = ServiceProcess.start(folder)) {
            assertThat(second.firstLine()).contains("another process has the log in " + folder);
            assertThat(second.exitCode()).isEqualTo(CommandException.UNAVAILABLE);
            assertThat(new SalonClient(first.port()).get("/days").statusCode()).isEqualTo(200);
        }
    }

    @Test
    void a_process_told_to_end_ends_and_gives_the_log_free() throws Exception {
        try (ServiceProcess process = ServiceProcess.start(folder)) {
            new SalonClient(process.port()).open(SmallSalon.opening());
            assertThat(process.terminate()).isEqualTo(143);
        }
        try (PlannerService again = PlannerService.start(Settings.inProcess(folder))) {
            assertThat(new SalonClient(again.port()).view(SmallSalon.DAY).salonName())
                    .isEqualTo("Quay House");
        }
    }

    @Test
    void a_taken_port_is_named_and_the_log_is_given_free() throws Exception {
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getByName("127.0.0.1"))) {
            Settings settings = new Settings(
                    folder,
                    Settings.LOOPBACK,
                    taken.getLocalPort(),
                    0,
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    1000,
                    0,
                    Optional.empty());
            refused(settings, CommandException.UNAVAILABLE, "port " + taken.getLocalPort());
        }
        PlannerService.start(Settings.inProcess(folder)).close();
        assertThat(folder.resolve("log.db")).exists();
    }

    @Test
    void files_that_are_not_accepted_end_the_start_with_65_and_leave_no_log_behind() {
        Path data = folder.resolve("data");
        refused(Settings.inProcess(data).withSalon(Optional.of(empty)), CommandException.BAD_INPUT, "salon.json");
        assertThat(data).doesNotExist();
    }

    @Test
    void a_data_folder_that_is_a_file_ends_the_start_with_73() throws Exception {
        Path file = Files.writeString(folder.resolve("plain"), "not a folder");
        refused(Settings.inProcess(file), CommandException.CANNOT_CREATE, "cannot be made or written");
    }
}
