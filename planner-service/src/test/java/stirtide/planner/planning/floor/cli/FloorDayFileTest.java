package stirtide.planner.planning.floor.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FloorDayFileTest {
    private static final Path DAY = Path.of("src/test/resources/floor-bench/F6A1-nat-1.json");

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @Test
    void prints_one_line_of_json() throws Exception {
        FloorDayFile file = FloorDayFile.read(DAY).orElseThrow();

        assertThat(FloorCommand.plan(file, 1, stream(out), stream(err))).isTrue();

        JsonNode line = new ObjectMapper().readTree(out.toString(StandardCharsets.UTF_8));
        assertThat(line.get("name").asText()).isEqualTo("F6A1-nat-1");
        assertThat(line.get("lateness").asInt()).isZero();
        assertThat(line.get("handling").asInt()).isEqualTo(250);
        assertThat(line.get("standing").asInt()).isZero();
        assertThat(line.get("provenLevels").asInt()).isEqualTo(3);
        assertThat(line.get("bounds").get("handling").asInt()).isEqualTo(250);
        assertThat(line.get("services")).hasSize(6);
        assertThat(line.get("services").get(0).get("rinseAssistant").asInt()).isEqualTo(-1);
        assertThat(line.get("bowls").get(0).has("mixStart")).isTrue();
    }

    @Test
    void leaves_files_of_other_kinds_alone(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("other.json");
        Files.writeString(file, "{\"runs\":[]}");
        assertThat(FloorDayFile.read(file)).isEmpty();
        assertThat(FloorDayFile.read(folder.resolve("missing.json"))).isEmpty();
    }

    @Test
    void names_file_and_place_of_a_wrong_value(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("day.json");
        Files.writeString(file, Files.readString(DAY).replaceFirst("\"applyMinutes\": [0-9]+", "\"applyMinutes\": -1"));
        assertThatThrownBy(() -> FloorDayFile.read(file))
                .isInstanceOf(FloorDayFile.Refused.class)
                .hasMessageContaining("day.json")
                .hasMessageContaining("/services/0/zones/0/applyMinutes: -1 found");
    }

    @Test
    void refuses_a_mix_that_is_not_there(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("day.json");
        Files.writeString(file, Files.readString(DAY).replaceFirst("\"mix\": [0-9]+", "\"mix\": 77"));
        assertThatThrownBy(() -> FloorDayFile.read(file))
                .isInstanceOf(FloorDayFile.Refused.class)
                .hasMessageContaining("a zone names a mix that is not there");
    }

    private static PrintStream stream(ByteArrayOutputStream to) {
        return new PrintStream(to, true, StandardCharsets.UTF_8);
    }
}
