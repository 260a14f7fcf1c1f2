package stirtide.planner;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The command that lists and runs the trials. */
class TrialsTest {
    private static final Path FOLDER = Path.of("trials").toAbsolutePath();
    private static final Pattern LISTED = Pattern.compile("(?m)^  ([a-z][a-z-]*) {2,}\\S");

    private record Ended(int code, String text) {}

    private static Ended run(String... words) throws IOException, InterruptedException {
        List<String> command = Stream.concat(Stream.of(FOLDER.resolve("run").toString()), Stream.of(words))
                .toList();
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return new Ended(process.waitFor(), text);
    }

    private static List<String> listed() throws IOException, InterruptedException {
        return LISTED.matcher(run().text())
                .results()
                .map(found -> found.group(1))
                .toList();
    }

    @Test
    void without_a_name_all_trials_are_listed() throws Exception {
        assertThat(run().code()).isZero();
        assertThat(listed())
                .contains("soak", "kill-nine", "flip", "replans", "compare")
                .doesNotHaveDuplicates();
    }

    @Test
    void every_program_of_the_folder_is_listed() throws Exception {
        try (Stream<Path> files = Files.list(FOLDER)) {
            for (Path file : files.filter(one -> one.toString().endsWith(".py")).toList()) {
                String name = file.getFileName().toString().replace(".py", "").replace('_', '-');
                assertThat(listed().contains(name))
                        .as(name)
                        .isEqualTo(Files.readString(file).endsWith("\n\n\nmain()\n"));
            }
        }
    }

    @Test
    void every_listed_trial_has_its_program_or_class() throws Exception {
        String script = Files.readString(FOLDER.resolve("run"));
        for (String name : listed()) {
            Matcher java = Pattern.compile("(?m)^    " + name + "\\) .*?in_(java|bench) .*?([a-z.]+\\.[A-Z]\\w*)")
                    .matcher(script);
            if (!java.find())
                assertThat(FOLDER.resolve(name.replace('-', '_') + ".py")).exists();
            else if (java.group(2).startsWith("stirtide.planner."))
                assertThatCode(() -> Class.forName(java.group(2))).as(name).doesNotThrowAnyException();
        }
    }

    @Test
    void an_unknown_trial_ends_with_64_and_the_list() throws Exception {
        Ended ended = run("nothing-of-the-kind");
        assertThat(ended.code()).isEqualTo(64);
        assertThat(ended.text())
                .contains("there is no trial \"nothing-of-the-kind\"", "usage: planner-service/trials/run");
    }
}
