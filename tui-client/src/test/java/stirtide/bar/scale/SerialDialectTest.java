package stirtide.bar.scale;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The dialect is invented for the test: a line at rest begins with S, a moving one with D. */
class SerialDialectTest {
    private static final Map<String, String> SETTINGS = Map.of(
            "stable",
            "S +(-?[0-9.,]+) *([a-z]+)",
            "moving",
            "D +(-?[0-9.,]+) *([a-z]+)",
            "over",
            "[+-]{3}",
            "speed",
            "9600");

    private static SerialDialect dialect() {
        return ((SerialDialect.Answer.Understood) SerialDialect.read(SETTINGS)).dialect();
    }

    @Test
    void lines_of_a_simulated_scale_become_readings() throws IOException {
        var device = new ByteArrayInputStream("D 39.9 g\r\nS   40.2 g\r\nhello\r\n+++\r\nS 1.4 oz\r\nS -0.2 g\r\n"
                .getBytes(StandardCharsets.US_ASCII));
        List<ScaleReading> heard = new ArrayList<>();
        ScaleInput.lines(device, dialect(), heard::add);
        assertThat(heard)
                .containsExactly(
                        new ScaleReading.Weight(39_900, false),
                        new ScaleReading.Weight(40_200, true),
                        new ScaleReading.Unusable("the scale carries too much or too little"),
                        new ScaleReading.Unusable("the scale shows oz: switch it to g"),
                        new ScaleReading.Unusable("the scale is below zero: zero it"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "stable|[0-9]+|first group",
                "stable|([0-9|not a pattern",
                "speed|9601|one of",
                "colour|red|takes stable"
            })
    void settings_that_cannot_be_read_say_what_would_be_accepted(String name, String value, String word) {
        var settings = new TreeMap<>(SETTINGS);
        settings.put(name, value);
        assertThat(SerialDialect.read(settings))
                .isInstanceOfSatisfying(
                        SerialDialect.Answer.Wrong.class,
                        wrong -> assertThat(wrong.sentence()).contains(word));
    }

    @Test
    void a_scale_is_found_by_how_its_report_descriptor_begins(@TempDir Path folder) throws IOException {
        assertThat(HidFinder.first(folder.resolve("none"), Path.of("/dev"))).isEmpty();
        descriptor(folder, "hidraw0", new byte[] {0x05, 0x01, 0x09});
        descriptor(folder, "hidraw1", new byte[] {0x05, (byte) 0x8D, 0x09});
        descriptor(folder, "hidraw2", new byte[] {0x06, (byte) 0x8D, 0x00});
        assertThat(HidFinder.first(folder, Path.of("/dev"))).contains(Path.of("/dev/hidraw1"));
    }

    private static void descriptor(Path folder, String name, byte[] bytes) throws IOException {
        Path device = Files.createDirectories(folder.resolve(name).resolve("device"));
        Files.write(device.resolve("report_descriptor"), bytes);
    }
}
