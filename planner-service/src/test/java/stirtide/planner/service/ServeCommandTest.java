package stirtide.planner.service;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import stirtide.planner.cli.CommandException;

class ServeCommandTest {
    private final List<Settings> started = new ArrayList<>();
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(Map<String, String> environment, String... arguments) {
        return ServeCommand.of(List.of(arguments), environment, started::add)
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err))
                .execute(arguments);
    }

    @Test
    void well_formed_options_are_read_alike_without_the_parser() {
        String[] options = {
            "--data",
            "here",
            "--port",
            "65535",
            "--management-port",
            "0",
            "--salon",
            "files",
            "--date",
            "2027-03-09",
            "--clock",
            "Driven",
            "--clock-start",
            "2027-03-09T08:00:00Z",
            "--rate-permille",
            "1000000",
            "--plan-rounds",
            "100000"
        };
        assertThat(run(Map.of(), options)).isZero();
        assertThat(ServeCommand.runWellFormed(List.of(options), Map.of(), started::add))
                .contains(0);
        assertThat(started).hasSize(2);
        assertThat(started.get(0)).isEqualTo(started.get(1));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "--help",
                "--data",
                "--port 1",
                "--data a --data b",
                "--data=a",
                "--data --port",
                "--data a --port 65536",
                "--data a --port -1",
                "--data a --port x",
                "--data a --plan-rounds 100001",
                "--data a --clock sun",
                "--data a --clock driven",
                "--data a --date today",
                "--data a --unknown b"
            })
    void everything_else_is_left_to_the_parser(String line) {
        List<String> words = line.isEmpty() ? List.of() : List.of(line.split(" "));
        assertThat(ServeCommand.runWellFormed(words, Map.of(), started::add)).isEmpty();
        assertThat(started).isEmpty();
    }

    @Test
    void the_environment_is_left_to_the_parser() {
        assertThat(ServeCommand.runWellFormed(List.of("--data", "a"), Map.of("STIRTIDE_PORT", "x"), started::add))
                .isEmpty();
    }

    @Test
    void an_option_wins_over_the_environment() {
        assertThat(run(Map.of("STIRTIDE_PORT", "9", "STIRTIDE_MANAGEMENT_PORT", "8"), "--data", "here", "--port", "0"))
                .isZero();
        assertThat(started).singleElement().satisfies(settings -> {
            assertThat(settings.data()).isEqualTo(Path.of("here"));
            assertThat(settings.port()).isZero();
            assertThat(settings.managementPort()).isEqualTo(8);
            assertThat(settings.drivenFrom()).isEmpty();
        });
    }

    @Test
    void every_option_can_stand_in_the_environment() {
        assertThat(run(Map.ofEntries(
                        Map.entry("STIRTIDE_DATA", "here"),
                        Map.entry("STIRTIDE_PORT", "1"),
                        Map.entry("STIRTIDE_MANAGEMENT_PORT", "2"),
                        Map.entry("STIRTIDE_HOST", "127.0.0.2"),
                        Map.entry("STIRTIDE_SALON", "salon"),
                        Map.entry("STIRTIDE_DATE", "2027-03-09"),
                        Map.entry("STIRTIDE_CLOCK", "driven"),
                        Map.entry("STIRTIDE_CLOCK_START", "2027-03-09T08:00:00Z"),
                        Map.entry("STIRTIDE_RATE_PERMILLE", "3"),
                        Map.entry("STIRTIDE_PLAN_ROUNDS", "4"),
                        Map.entry("STIRTIDE_TLS_CERTIFICATE", "c.pem"),
                        Map.entry("STIRTIDE_TLS_KEY", "k.pem"),
                        Map.entry("STIRTIDE_LOG", "text"),
                        Map.entry("STIRTIDE_VERSION", "9"))))
                .isZero();
        assertThat(started.get(0).toString())
                .isEqualTo("Settings[data=here, host=127.0.0.2, port=1, managementPort=2, salon=Optional[salon],"
                        + " date=Optional[2027-03-09], drivenFrom=Optional[2027-03-09T08:00:00Z], ratePermille=3,"
                        + " planRounds=4, encryption=Optional[Encryption[certificate=c.pem, key=k.pem]]]");
    }

    @Test
    void a_driven_clock_starts_where_it_is_told() {
        run(Map.of(), "--data", "d", "--clock", "driven", "--clock-start", "2027-03-09T08:00:00Z");
        assertThat(started.get(0).drivenFrom()).contains(Instant.parse("2027-03-09T08:00:00Z"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'' | Missing required option: '--data=FOLDER'",
                "--data | Missing required parameter for option '--data' (FOLDER)",
                "--data d --data e | option '--data' (FOLDER) should be specified only once",
                "--data d --speed 3 | Unknown options: '--speed', '3'",
                "--data d --port 70000 | '--port': '70000' is not accepted; accepted is a whole number from 0 to 65535",
                "--data d --port many | '--port': 'many' is not accepted; accepted is a whole number from 0 to 65535",
                "--data d --tls-key k.pem | --tls-certificate and --tls-key go together",
                "--data d --date 9.3.2027 | '9.3.2027' is not accepted; accepted is a date such as 2027-03-09",
                "--data d --clock sun | '--clock': expected one of [WALL, DRIVEN] (case-insensitive) but was 'sun'",
                "--data d --clock driven | --clock driven needs --clock-start",
                "--data d --clock-start 2027-03-09T08:00:00Z | goes with --clock driven only",
            })
    void a_wrong_option_is_refused_with_what_is_accepted(String line, String reason) {
        String[] arguments = line.isEmpty() ? new String[0] : line.split(" ");
        assertThat(run(Map.of(), arguments)).isEqualTo(CommandException.USAGE);
        assertThat(err.toString()).startsWith("stirtide: ").contains(reason, "--plan-rounds=N");
        assertThat(started).isEmpty();
    }

    @Test
    void help_version_and_completion_are_printed_without_a_start() throws Exception {
        assertThat(run(Map.of(), "--help")).isZero();
        assertThat(out.toString()).contains("--management-port=N", "(7465)", "STIRTIDE_DATA");
        assertThat(run(Map.of(), "--version")).isZero();
        Path build = Path.of("..", "pom.xml");
        String version = Files.readString(build).replaceFirst("(?s).*?<version>([^<]+)</version>.*", "$1");
        assertThat(out.toString()).endsWith("stirtide " + version + System.lineSeparator());
        assertThat(run(Map.of(), "generate-completion")).isZero();
        assertThat(out.toString()).contains("--clock-start");
        assertThat(started).isEmpty();
    }
}
