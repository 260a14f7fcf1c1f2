package stirtide.planner.service;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ServeCommandTest {
    @Test
    void an_option_wins_over_the_environment() {
        Settings settings = ServeCommand.read(
                List.of("--data", "here", "--port", "0"),
                Map.of("STIRTIDE_PORT", "9", "STIRTIDE_MANAGEMENT_PORT", "8"));
        assertThat(settings.data()).isEqualTo(Path.of("here"));
        assertThat(settings.port()).isZero();
        assertThat(settings.managementPort()).isEqualTo(8);
        assertThat(settings.drivenFrom()).isEmpty();
    }

    @Test
    void a_driven_clock_starts_where_it_is_told() {
        Settings settings = ServeCommand.read(
                List.of("--data", "d", "--clock", "driven", "--clock-start", "2027-03-09T08:00:00Z"), Map.of());
        assertThat(settings.drivenFrom()).contains(Instant.parse("2027-03-09T08:00:00Z"));
    }

    @ParameterizedTest
    @CsvSource({
        "'', --data is missing",
        "--data, --data needs a value",
        "--data d --data e, --data is given twice",
        "--data d --speed 3, --speed is not an option",
        "--data d --port 70000, a whole number from 0 to 65535 is accepted",
        "--data d --port many, a whole number from 0 to 65535 is accepted",
        "--data d --tls-key k.pem, --tls-certificate and --tls-key go together",
        "--data d --date 9.3.2027, a day such as 2027-03-09 is accepted",
        "--data d --clock sun, wall or driven is accepted",
        "--data d --clock driven, --clock driven needs --clock-start",
        "--data d --clock-start 2027-03-09T08:00:00Z, goes with --clock driven only",
    })
    void a_wrong_option_is_refused_with_what_is_accepted(String line, String reason) {
        List<String> arguments = line.isEmpty() ? List.of() : List.of(line.split(" "));
        assertThatThrownBy(() -> ServeCommand.read(arguments, Map.of()))
                .isInstanceOf(StartFailure.class)
                .hasMessageContaining(reason)
                .extracting(failure -> ((StartFailure) failure).exitCode())
                .isEqualTo(StartFailure.USAGE);
    }
}
