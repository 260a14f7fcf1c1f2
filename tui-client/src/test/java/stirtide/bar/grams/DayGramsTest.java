package stirtide.bar.grams;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import stirtide.bar.Samples;
import stirtide.bar.scene.DayPick;

class DayGramsTest {
    @ParameterizedTest
    @EnumSource(DayPick.Sort.class)
    void however_sorted_the_bars_add_up_to_what_was_over_mixed(DayPick.Sort sort) {
        int sum = DayGrams.bars(Samples.calm(), sort).stream()
                .mapToInt(DayGrams.Bar::milligrams)
                .sum();
        assertThat(sum).isEqualTo(Samples.calm().totals().overMixedMilligrams());
    }

    @Test
    void the_largest_bar_comes_first_and_knows_its_bowls() {
        DayGrams.Bar first = DayGrams.bars(Samples.calm(), DayPick.Sort.CAUSE).get(0);
        assertThat(first.label()).isEqualTo("left over");
        assertThat(first.milligrams()).isEqualTo(10_500);
        assertThat(first.bowls()).extracting(bowl -> bowl.bowl()).containsExactly("2a", "1a");
    }

    @Test
    void a_share_of_nothing_is_none() {
        assertThat(DayGrams.percent(5, 0)).isEqualTo("0.0");
        assertThat(DayGrams.percent(18_500, 742_000)).isEqualTo("2.5");
    }
}
