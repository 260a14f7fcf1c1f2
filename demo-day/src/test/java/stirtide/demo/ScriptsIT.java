package stirtide.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The scripts as a shell sees them: exit codes, what goes to which stream, what is left behind. */
class ScriptsIT {
    private record Ended(int code, String out, String err) {}

    @TempDir
    Path scratch;

    private Ended run(Path workingFolder, String script, String... arguments) throws Exception {
        List<String> command =
                new ArrayList<>(List.of(Path.of(script).toAbsolutePath().toString()));
        command.addAll(List.of(arguments));
        Path out = scratch.resolve("out.txt");
        Path err = scratch.resolve("err.txt");
        Process process = new ProcessBuilder(command)
                .directory(workingFolder.toFile())
                .redirectInput(ProcessBuilder.Redirect.from(Path.of("/dev/null").toFile()))
                .redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .start();
        int code = process.waitFor();
        return new Ended(code, Files.readString(out), Files.readString(err));
    }

    @Test
    void plan_prints_the_prep_sheet_from_any_folder() throws Exception {
        Ended ended = run(scratch, "plan", DemoFolders.SALON.toString());
        assertThat(ended.code()).as(ended.err()).isZero();
        assertThat(ended.out()).contains("PREP SHEET  Quillon Row", "MIX, IN THIS ORDER", "HAVE READY", "CAUTIONS");
        assertThat(ended.out().lines())
                .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
    }

    @Test
    void plan_prints_json_and_nothing_else_when_asked() throws Exception {
        Ended ended = run(scratch, "plan", DemoFolders.SALON.toString(), "--json");
        assertThat(ended.code()).as(ended.err()).isZero();
        assertThat(stirtide.events.json.ContractJson.read(ended.out(), stirtide.events.plan.Plan.class)
                        .bowls())
                .hasSizeGreaterThan(16);
        assertThat(ended.err()).isEmpty();
    }

    static Stream<Arguments> wrongUsage() {
        return Stream.of(
                Arguments.of("plan", new String[] {}),
                Arguments.of("plan", new String[] {"--cheap", "salon"}),
                Arguments.of("plan", new String[] {"salon", "salon"}),
                Arguments.of("plan", new String[] {"salon", "--date", "tomorrow"}),
                Arguments.of("plan", new String[] {"salon", "--date"}),
                Arguments.of("run", new String[] {"--fast"}),
                Arguments.of("run", new String[] {"--rate", "0"}),
                Arguments.of("run", new String[] {"surplus"}),
                Arguments.of("begin", new String[] {}),
                Arguments.of("begin", new String[] {"one", "two"}));
    }

    @ParameterizedTest
    @MethodSource("wrongUsage")
    void wrong_usage_ends_with_64_and_a_usage_line(String script, String[] arguments) throws Exception {
        Ended ended = run(scratch, script, arguments);
        assertThat(ended.code()).isEqualTo(64);
        assertThat(ended.out()).isEmpty();
        assertThat(ended.err()).contains("usage: demo-day/" + script).doesNotContain("Exception");
    }

    @ParameterizedTest
    @MethodSource("scripts")
    void help_is_printed_on_standard_output(String script) throws Exception {
        Ended ended = run(scratch, script, "--help");
        assertThat(ended.code()).isZero();
        assertThat(ended.out()).startsWith("usage: demo-day/" + script);
    }

    static Stream<String> scripts() {
        return Stream.of("plan", "run", "begin");
    }

    private interface Damage {
        void to(Path folder) throws IOException;
    }

    static Stream<Arguments> brokenFolders() {
        return Stream.of(
                broken("salon.json", "a missing file", folder -> Files.delete(folder.resolve("salon.json"))),
                broken("menu.json", "half a file", folder -> cut(folder.resolve("menu.json"))),
                broken(
                        "developers.json",
                        "negative grams",
                        folder -> replace(folder, "developers.json", "1750", "-1750")),
                broken("menu.json", "a ratio outside", folder -> replace(folder, "menu.json", "\"1:2.5\"", "\"1:9\"")),
                broken(
                        "bookings.ics",
                        "an unknown entry",
                        folder -> replace(folder, "bookings.ics", ":retouch", ":pedicure")),
                broken(
                        "bookings.ics",
                        "no events",
                        folder -> Files.writeString(
                                folder.resolve("bookings.ics"), "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nEND:VCALENDAR\r\n")),
                broken("menu.json", "garbage", folder -> Files.write(folder.resolve("menu.json"), new byte[1 << 20])));
    }

    private static Arguments broken(String file, String what, Damage damage) {
        return Arguments.of(what, file, damage);
    }

    private static void cut(Path file) throws IOException {
        String text = Files.readString(file);
        Files.writeString(file, text.substring(0, text.length() / 2));
    }

    private static void replace(Path folder, String file, String old, String with) throws IOException {
        Path path = folder.resolve(file);
        String text = Files.readString(path);
        assertThat(text).contains(old);
        Files.writeString(path, text.replace(old, with));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("brokenFolders")
    void a_broken_folder_ends_with_65_names_the_file_and_stays_as_it_was(String what, String file, Damage damage)
            throws Exception {
        Path folder = DemoFolders.copyOfSalon(Files.createDirectory(scratch.resolve("broken")));
        damage.to(folder);
        SortedMap<String, Long> before = sizes(folder);
        Ended ended = run(scratch, "plan", folder.toString());
        assertThat(ended.code()).as(ended.err()).isEqualTo(65);
        assertThat(ended.out()).isEmpty();
        assertThat(ended.err()).contains(file, "accepted").doesNotContain("Exception", "\tat ");
        assertThat(sizes(folder)).isEqualTo(before);
    }

    @Test
    void a_folder_that_is_not_there_ends_with_65() throws Exception {
        Ended ended = run(scratch, "plan", scratch.resolve("nowhere").toString());
        assertThat(ended.code()).isEqualTo(65);
        assertThat(ended.err()).isNotBlank().doesNotContain("Exception");
    }

    private static SortedMap<String, Long> sizes(Path folder) throws IOException {
        SortedMap<String, Long> sizes = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path each : all.filter(Files::isRegularFile).toList())
                sizes.put(folder.relativize(each).toString(), Files.size(each));
        }
        return sizes;
    }

    @Test
    void run_without_a_terminal_prints_the_day_and_ends_with_0() throws Exception {
        Ended ended = run(scratch, "run");
        assertThat(ended.code()).as(ended.err()).isZero();
        assertThat(ended.out())
                .contains("PREP SHEET", "THE DAY AS IT WENT", "CHECKS")
                .doesNotContain("NOT  ");
    }
}
