package stirtide.demo;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PlanCommandTest {
    @TempDir
    Path folder;

    private record Ended(int code, String out, String err) {}

    private static Ended plan(String words) {
        List<String> arguments = new ArrayList<>(List.of("plan"));
        if (!words.isEmpty()) arguments.addAll(List.of(words.split(" ")));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = DemoMain.run(arguments, new PrintStream(out, false, UTF_8), new PrintStream(err, true, UTF_8));
        return new Ended(code, out.toString(UTF_8), err.toString(UTF_8));
    }

    @ParameterizedTest
    @CsvSource({
        "--json salon, plan.json",
        "--json --date 2027-06-11 salon, plan.json",
        "salon --date=2027-06-11 --json, plan.json",
        "--visits HV salon, visits-of-HV.txt",
        "--moves salon, moves.txt"
    })
    void what_is_printed_is_the_same_byte_for_byte(String words, String file) throws IOException {
        Ended ended = plan(words);
        assertThat(ended.err()).isEmpty();
        assertThat(ended.code()).isZero();
        assertThat(ended.out()).isEqualTo(Files.readString(Path.of("src/test/resources/golden", file)));
    }

    @Test
    void moves_are_printed_best_first() {
        assertThat(plan("--moves salon").out())
                .contains("As booked: ", "One move, best first:", "Two moves that do more together");
    }

    @Test
    void the_last_two_visits_of_a_client_are_printed_side_by_side() {
        String page = plan("--visits HV salon").out();
        assertThat(page).contains("2027-02-19", "2027-04-30", "1:2.01", "1:1.96", "* differs");
        assertThat(page.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
        assertThat(plan("--visits FU salon").out()).contains("One visit is remembered.");
        Ended unknown = plan("--visits XX salon");
        assertThat(unknown.err()).contains("accepted: FU, GL, HV");
        assertThat(unknown.code()).isEqualTo(65);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "--cheap salon",
                "salon salon",
                "salon --date tomorrow",
                "salon --date",
                "--visits --json salon",
                "--moves --json salon",
                "--json --visits HV salon",
                "--html salon",
                "--html salon/salon.json salon",
                "--html prep.html --json salon",
                "@salon --cheap"
            })
    void wrong_usage_ends_with_64_and_a_usage_line(String words) {
        Ended ended = plan(words);
        assertThat(ended.code()).isEqualTo(64);
        assertThat(ended.out()).isEmpty();
        assertThat(ended.err()).contains("usage: demo-day/plan [").doesNotContain("Exception");
    }

    @Test
    void the_sheet_for_a_printer_is_written_whole_and_replaces_the_one_before() throws IOException {
        Path file = folder.resolve("prep.html");
        Files.writeString(file, "older");
        Ended ended = plan("salon --html " + file);
        assertThat(ended.err()).isEmpty();
        assertThat(ended.code()).isZero();
        assertThat(ended.out()).isEqualTo("Written for a printer: " + file + "\n");
        assertThat(Files.readString(file)).startsWith("<!DOCTYPE html>").endsWith("</html>\n");
        assertThat(folder.toFile().list()).containsExactly("prep.html");
    }

    @Test
    void a_place_that_cannot_be_written_ends_with_73_and_says_what_would_do() throws IOException {
        Files.createDirectory(folder.resolve("taken.html"));
        for (String name : List.of("nowhere/prep.html", "taken.html")) {
            Ended ended = plan("salon --html " + folder.resolve(name));
            assertThat(ended.code()).isEqualTo(73);
            assertThat(ended.err()).contains(name, "name a file").doesNotContain("Exception");
            assertThat(ended.out()).isEmpty();
        }
    }

    @Test
    void pages_exclude_each_other() {
        assertThat(plan("--moves --json salon").err()).contains("mutually exclusive");
    }
}
