package stirtide.bar.keys;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import stirtide.bar.keys.KeyBurstFilter.Verdict;

class KeyBurstFilterTest {
    private static final long MILLI = 1_000_000L;

    private final KeyBurstFilter pace = new KeyBurstFilter();

    private Verdict enter(long millis) {
        return pace.judge(Key.of(Key.Kind.ENTER, millis * MILLI));
    }

    @Test
    void the_second_half_of_a_line_end_is_dropped() {
        assertThat(enter(1000)).isEqualTo(Verdict.TAKE);
        assertThat(pace.judge(Key.of(Key.Kind.ENTER, 1000 * MILLI + 50_000))).isEqualTo(Verdict.DROP);
    }

    @Test
    void an_enter_of_fingers_is_taken() {
        assertThat(List.of(enter(1000), enter(1150), enter(1350))).containsOnly(Verdict.TAKE);
    }

    @Test
    void from_the_third_fast_key_on_it_is_a_machine() {
        List<Verdict> verdicts = IntStream.range(0, 6)
                .mapToObj(i -> pace.judge(Key.of('4', 1000 * MILLI + i * 100_000L)))
                .toList();
        assertThat(verdicts)
                .containsExactly(
                        Verdict.TAKE, Verdict.TAKE, Verdict.MACHINE, Verdict.MACHINE, Verdict.MACHINE, Verdict.MACHINE);
    }

    @Test
    void fingers_at_thirty_keys_a_second_are_fingers() {
        List<Verdict> verdicts = IntStream.range(0, 9)
                .mapToObj(i -> pace.judge(Key.of('4', i * 33 * MILLI)))
                .toList();
        assertThat(verdicts).containsOnly(Verdict.TAKE);
    }

    @Test
    void everything_between_the_marks_of_a_paste_is_a_paste() {
        assertThat(pace.judge(Key.of(Key.Kind.PASTE_BEGINS, 0))).isEqualTo(Verdict.PASTE);
        assertThat(pace.judge(Key.of('9', 900 * MILLI))).isEqualTo(Verdict.PASTE);
        assertThat(enter(1800)).isEqualTo(Verdict.PASTE);
        assertThat(pace.judge(Key.of(Key.Kind.PASTE_ENDS, 1900 * MILLI))).isEqualTo(Verdict.PASTE);
        assertThat(pace.judge(Key.of('9', 2900 * MILLI))).isEqualTo(Verdict.TAKE);
    }

    @Test
    void reports_of_mouse_and_focus_are_dropped() {
        assertThat(pace.judge(Key.of(Key.Kind.REPORT, 0))).isEqualTo(Verdict.DROP);
    }
}
