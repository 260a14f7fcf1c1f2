package stirtide.mixing.strength;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Computed by hand: strength times liquids over the whole. */
class BowlStrengthTest {
    @Test
    void lightener_thins_the_developer_by_weight() {
        assertThat(BowlStrength.hundredths(600, 30_000, 60_000)).isEqualTo(400);
        assertThat(BowlStrength.hundredths(1200, 50_000, 50_000)).isEqualTo(600);
        assertThat(BowlStrength.hundredths(900, 30_000, 45_000)).isEqualTo(540);
    }

    @Test
    void it_is_rounded_half_up_and_large_mixes_do_not_overflow() {
        assertThat(BowlStrength.hundredths(1, 10, 10)).isEqualTo(1);
        assertThat(BowlStrength.hundredths(1, 11, 10)).isZero();
        assertThat(BowlStrength.hundredths(1200, 500_000_000, 1_500_000_000)).isEqualTo(900);
    }
}
