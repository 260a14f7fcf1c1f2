package stirtide.bar.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import stirtide.bar.Samples;
import stirtide.bar.canvas.Glyphs;
import stirtide.bar.terminal.ColorDepth;

class OptionsReaderTest {
    private static OptionsReader.Answer read(Map<String, String> environment, String... words) {
        return OptionsReader.read(List.of(words), environment, "/home/somebody");
    }

    private static BarOptions understood(Map<String, String> environment, String... words) {
        return ((OptionsReader.Answer.Understood) read(environment, words)).options();
    }

    @Test
    void a_day_and_a_person_are_enough() {
        BarOptions options = understood(Map.of(), "--day", Samples.DAY, "--person=tamsin");
        assertThat(options.source().day()).isEqualTo(Samples.DAY);
        assertThat(options.readOnly()).isFalse();
        assertThat(options.source().server().toString()).isEqualTo(BarOptions.DEFAULT_SERVER);
        assertThat(options.state()).isEqualTo(Path.of("/home/somebody/.local/state/stirtide"));
    }

    @Test
    void who_signed_on_is_signed_off_after_ten_minutes_without_a_key_unless_told_otherwise() {
        assertThat(understood(Map.of(), "--day", Samples.DAY).idleMinutes()).isEqualTo(10);
        assertThat(understood(Map.of(), "--day", Samples.DAY, "--idle-minutes", "0")
                        .idleMinutes())
                .isZero();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "--day nowhere",
                "--day",
                "--day a/2027-05-14 --color pink",
                "--day a/2027-05-14 --idle-minutes soon",
                "--day a/2027-05-14 --width 0",
                "--day a/2027-05-14 --width x",
                "--day a/2027-05-14 --server nowhere",
                "--day a/2027-05-14 --json",
                "--day a/2027-05-14 --view kitchen",
                "--day a/2027-05-14 --scale usb --dialect nowhere.properties",
                "--day a/2027-05-14 --scale /dev/ttyUSB0 --dialect nowhere.properties",
                "--day a/2027-05-14 --loud"
            })
    void what_is_not_understood_is_answered_with_what_would_be(String line) {
        String[] words = line.isEmpty() ? new String[0] : line.split(" ");
        assertThat(read(Map.of(), words))
                .isInstanceOfSatisfying(
                        OptionsReader.Answer.Wrong.class,
                        wrong -> assertThat(wrong.sentence()).containsAnyOf("takes", "needs", "lists", "goes with"));
    }

    @ParameterizedTest
    @CsvSource({
        "truecolor,xterm-256color,'',FULL",
        "'',xterm-256color,'',TABLE",
        "'',tmux,'',TABLE",
        "'',linux,'',SIXTEEN",
        "truecolor,xterm,1,NONE",
        "'',dumb,'',NONE"
    })
    void colors_follow_the_environment(String colorTerm, String term, String noColor, ColorDepth depth) {
        var environment = Map.of("COLORTERM", colorTerm, "TERM", term, "NO_COLOR", noColor);
        assertThat(understood(environment, "--day", Samples.DAY).appearance().depth())
                .isEqualTo(depth);
        assertThat(understood(environment, "--day", Samples.DAY, "--color", "16")
                        .appearance()
                        .depth())
                .isEqualTo(ColorDepth.SIXTEEN);
    }

    @Test
    void the_linux_console_gets_the_characters_it_has() {
        assertThat(understood(Map.of("TERM", "linux"), "--day", Samples.DAY)
                        .appearance()
                        .glyphs())
                .isEqualTo(Glyphs.CP437);
    }

    @Test
    void help_and_completion_name_every_option() {
        for (String word : List.of("--help", "--completion")) {
            String text = ((OptionsReader.Answer.Text) read(Map.of(), word)).text();
            for (BarOption option : BarOption.values()) assertThat(text).contains(option.word());
        }
    }

    @Test
    void the_help_names_the_choices_and_the_exit_codes() {
        assertThat(BarUsage.help())
                .startsWith("usage: bar --day SALON/DATE")
                .contains("auto, full, cp437, ascii", "64", "69", "70", "74");
    }

    @Test
    void the_version_is_told() {
        assertThat(read(Map.of(), "--version"))
                .isInstanceOfSatisfying(
                        OptionsReader.Answer.Text.class,
                        version -> assertThat(version.text()).startsWith("bar ").endsWith("\n"));
    }

    @ParameterizedTest
    @CsvSource({
        "--loud,unknown option --loud",
        "--days x,maybe --day",
        "--bell=yes,--bell",
        "--width,--width needs a value"
    })
    void a_refusal_says_which_word_is_wrong(String line, String sentence) {
        assertThat(read(Map.of(), line.split(" ")))
                .isInstanceOfSatisfying(
                        OptionsReader.Answer.Wrong.class,
                        wrong -> assertThat(wrong.sentence()).contains(sentence));
    }

    @Test
    void what_is_read_quickly_is_what_picocli_reads() {
        List<String> words = List.of(
                "--day", "a/2027-05-14", "--bell", "--width=90", "--person", "--bell", "--person=", "--state=a=b");
        ParsedOptions parsed = ParsedOptions.of(words).orElseThrow();
        var slow = BarUsage.commandLine().parseArgs(words.toArray(String[]::new));
        for (BarOption option : BarOption.values()) {
            assertThat(parsed.has(option)).as(option.word()).isEqualTo(slow.hasMatchedOption(option.word()));
            if (!option.value().isEmpty())
                assertThat(parsed.value(option).orElse(null))
                        .isEqualTo(slow.<String>matchedOptionValue(option.word(), null));
        }
    }
}
