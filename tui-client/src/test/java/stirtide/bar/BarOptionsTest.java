package stirtide.bar;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import stirtide.bar.canvas.Glyphs;
import stirtide.bar.terminal.ColorDepth;
import stirtide.bar.views.ScreenView;

class BarOptionsTest {
    private static BarOptions.Answer read(Map<String, String> environment, String... words) {
        return BarOptions.read(List.of(words), environment, "/home/somebody");
    }

    private static BarOptions understood(Map<String, String> environment, String... words) {
        return ((BarOptions.Answer.Understood) read(environment, words)).options();
    }

    @Test
    void a_day_and_a_person_are_enough() {
        BarOptions options = understood(Map.of(), "--day", Samples.DAY, "--person=tamsin");
        assertThat(options.day()).isEqualTo(Samples.DAY);
        assertThat(options.readOnly()).isFalse();
        assertThat(options.server().toString()).isEqualTo(BarOptions.USUAL_SERVER);
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
                        BarOptions.Answer.Wrong.class,
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
        assertThat(understood(environment, "--day", Samples.DAY).depth()).isEqualTo(depth);
        assertThat(understood(environment, "--day", Samples.DAY, "--color", "16")
                        .depth())
                .isEqualTo(ColorDepth.SIXTEEN);
    }

    @Test
    void the_linux_console_gets_the_characters_it_has() {
        assertThat(understood(Map.of("TERM", "linux"), "--day", Samples.DAY).glyphs())
                .isEqualTo(Glyphs.CP437);
    }

    @Test
    void a_printed_picture_is_plain_text_of_its_size() {
        String picture = SnapshotPrinter.picture(Samples.busy(), understood(Map.of(), "--day", Samples.DAY));
        assertThat(picture.lines())
                .hasSizeLessThanOrEqualTo(24)
                .allSatisfy(row -> assertThat(row).hasSizeLessThanOrEqualTo(80));
        assertThat(picture.chars().filter(letter -> letter < ' ' && letter != '\n'))
                .isEmpty();
        assertThat(picture).contains("NEXT MIX").endsWith("\n");
        assertThat(ScreenView.LEAST_COLUMNS).isEqualTo(80);
    }

    @Test
    void the_help_names_every_option() {
        assertThat(BarOptions.help())
                .contains("--day", "--person", "--server", "--read-only", "--once", "--json", "--width", "--height")
                .contains("--theme", "--color", "--glyphs", "--no-sync", "--state");
    }
}
