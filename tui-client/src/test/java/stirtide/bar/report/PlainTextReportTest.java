package stirtide.bar.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import stirtide.bar.Samples;

class PlainTextReportTest {
    private final PlainTextReport lines = new PlainTextReport();

    @Test
    void the_first_picture_is_told_whole() {
        assertThat(lines.lines(Samples.busy()))
                .contains(
                        "11:40  Larch Lane Hair, 2027-05-14: 4 live bowls, 6 to mix",
                        "11:40  alarm HIGH: Bowl 3b is past its life since 11:38: stop applying it, bin it, begin a fresh one.",
                        "11:40  wait: 12:00 to 12:35 needs 45 min of mixing, one assistant gives 35")
                .anyMatch(line -> line.startsWith("11:40  next: bowl 7a for chair 5, crown foils, 34.0 g Chalk Lift and"
                        + " 48.0 g 20 vol (6 %) Cream 6 % and 20.0 g"));
    }

    @Test
    void the_same_picture_again_is_not_told_again() {
        lines.lines(Samples.busy());
        assertThat(lines.lines(Samples.busy())).isEmpty();
    }

    @Test
    void an_alarm_that_is_over_and_an_empty_queue_are_told() {
        lines.lines(Samples.busy());
        assertThat(lines.lines(Samples.quiet()))
                .contains("11:40  nothing to mix")
                .anyMatch(line -> line.contains("alarm over: Bowl 3b"));
    }

    @Test
    void no_line_holds_a_control_character() {
        List<String> all = lines.lines(Samples.busy());
        assertThat(String.join("", all).chars().filter(Character::isISOControl)).isEmpty();
    }
}
