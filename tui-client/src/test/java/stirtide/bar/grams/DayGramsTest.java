package stirtide.bar.grams;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import stirtide.bar.Samples;
import stirtide.bar.scene.DayPick;
import stirtide.bar.scene.PastDay;

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
        assertThat(first.bowls()).extracting(left -> left.bowl().bowl()).containsExactly("2a", "1a");
    }

    @ParameterizedTest
    @EnumSource(DayPick.Sort.class)
    void bars_over_weeks_add_up_to_the_days_of_the_period(DayPick.Sort sort) {
        int today = Samples.calm().totals().overMixedMilligrams();
        var week = new DayPick(sort, 0, DayPick.Period.WEEK);
        // the six days before: 73, 62, 70, 65, 60 and 66 g
        assertThat(sum(week)).isEqualTo(today + 396_000);
        var weeks = week.otherPeriod();
        assertThat(weeks.period()).isEqualTo(DayPick.Period.FOUR_WEEKS);
        assertThat(sum(weeks))
                .isEqualTo(today
                        + Samples.past().stream()
                                .mapToInt(PastDay::overMixedMilligrams)
                                .sum());
        assertThat(weeks.otherPeriod().period()).isEqualTo(DayPick.Period.TODAY);
    }

    private static int sum(DayPick pick) {
        return DayGrams.bars(Samples.calm(), Samples.past(), pick).stream()
                .mapToInt(DayGrams.Bar::milligrams)
                .sum();
    }

    @Test
    void bowls_of_other_days_say_their_day() {
        var week = new DayPick(DayPick.Sort.BOWL, 0, DayPick.Period.WEEK);
        assertThat(DayGrams.bars(Samples.calm(), Samples.past(), week))
                .extracting(DayGrams.Bar::label)
                .contains("2027-05-13 bowl 2b");
    }

    @Test
    void a_share_of_nothing_is_none() {
        assertThat(DayGrams.percent(5, 0)).isEqualTo("0.0");
        assertThat(DayGrams.percent(18_500, 742_000)).isEqualTo("2.5");
    }
}
