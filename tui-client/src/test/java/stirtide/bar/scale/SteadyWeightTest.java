package stirtide.bar.scale;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class SteadyWeightTest {
    private static final long SECOND = 1_000_000_000L;

    private final SteadyWeight steady = new SteadyWeight();

    private SteadyWeight hear(int tenths, int milligrams, boolean stable) {
        steady.take(new ScaleReading.Weight(milligrams, stable), tenths * SECOND / 10);
        return steady;
    }

    @Test
    void the_first_word_may_be_old_and_then_two_equal_words_at_rest_are_needed() {
        assertThat(hear(0, 40_000, true).milligrams()).isEmpty();
        assertThat(hear(1, 40_000, true).milligrams()).isEmpty();
        assertThat(hear(2, 40_000, true).milligrams()).hasValue(40_000);
    }

    @Test
    void moving_other_and_late_words_take_the_weight_away() {
        hear(0, 0, true);
        hear(1, 40_000, true);
        hear(2, 40_000, true);
        assertThat(hear(3, 40_100, true).milligrams()).isEmpty();
        assertThat(hear(4, 40_100, true).milligrams()).hasValue(40_100);
        assertThat(hear(5, 40_100, false).milligrams()).isEmpty();
        hear(6, 40_100, true);
        assertThat(hear(27, 40_100, true).milligrams()).isEmpty();
    }

    @Test
    void a_weight_that_did_not_move_is_the_same_weight() {
        hear(0, 0, true);
        hear(1, 40_000, true);
        int turn = hear(2, 40_000, true).turn();
        assertThat(hear(3, 40_000, true).turn()).isEqualTo(turn);
        hear(4, 40_000, false);
        hear(5, 40_000, true);
        assertThat(hear(6, 40_000, true).turn()).isEqualTo(turn + 1);
    }

    @Test
    void trouble_of_the_scale_takes_the_weight_away() {
        hear(0, 0, true);
        hear(1, 40_000, true);
        hear(2, 40_000, true);
        steady.take(new ScaleReading.Unusable("the scale is gone"), SECOND);
        assertThat(steady.milligrams()).isEmpty();
    }
}
