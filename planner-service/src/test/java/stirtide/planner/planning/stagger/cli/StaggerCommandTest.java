package stirtide.planner.planning.stagger.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StaggerCommandTest {
    private static final String DAY = "src/test/resources/stagger-bench/S8A1-nat-1.json";

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    private int run(String... arguments) {
        return StaggerCommand.run(
                List.of(arguments),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8));
    }

    @Test
    void prints_one_line_of_json_for_each_day() throws Exception {
        assertThat(run("--seconds", "20", DAY, DAY)).isZero();

        String[] lines = out.toString(StandardCharsets.UTF_8).split("\n");
        assertThat(lines).hasSize(2);
        JsonNode line = new ObjectMapper().readTree(lines[0]);
        assertThat(line.get("name").asText()).isEqualTo("S8A1-nat-1");
        assertThat(line.get("waitMinutes").asInt()).isZero();
        assertThat(line.get("bowls").asInt()).isEqualTo(24);
        assertThat(line.get("ageMinutes").asInt()).isEqualTo(99);
        assertThat(line.get("provenLevels").asInt()).isEqualTo(3);
        assertThat(line.get("bounds").get("ageMinutes").asInt()).isEqualTo(99);
        assertThat(line.get("plan").size()).isEqualTo(24);
    }

    @Test
    void refuses_a_command_line_without_files() {
        assertThat(run("--seconds", "1")).isEqualTo(2);
        assertThat(err.toString(StandardCharsets.UTF_8)).contains("FILE", "Usage: stagger");
    }

    @Test
    void refuses_seconds_that_are_no_number() {
        assertThat(run("--seconds", "soon", DAY)).isEqualTo(2);
        assertThat(err.toString(StandardCharsets.UTF_8)).contains("whole number");
    }

    @Test
    void help_names_every_option() {
        assertThat(run("--help")).isZero();
        assertThat(out.toString(StandardCharsets.UTF_8)).contains("--seconds=N", "FILE...", "--version");
    }

    @Test
    void names_file_and_place_of_a_wrong_value(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("day.json");
        Files.writeString(
                file, Files.readString(Path.of(DAY)).replace("\"handoverMinutes\": 1", "\"handoverMinutes\": -4"));

        assertThat(run(file.toString())).isEqualTo(2);
        assertThat(err.toString(StandardCharsets.UTF_8))
                .contains("day.json /handoverMinutes: -4 found; a whole number from 0 to 1000000 is accepted");
    }

    @Test
    void names_a_file_that_is_not_there() {
        assertThat(run("nowhere.json")).isEqualTo(2);
        assertThat(err.toString(StandardCharsets.UTF_8)).contains("nowhere.json: cannot be read");
    }
}
