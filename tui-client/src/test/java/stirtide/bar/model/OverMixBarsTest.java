package stirtide.bar.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import stirtide.bar.Samples;

class OverMixBarsTest {
    @ParameterizedTest
    @EnumSource(OverMixSelection.Sort.class)
    void however_sorted_the_bars_add_up_to_what_was_over_mixed(OverMixSelection.Sort sort) {
        int sum = OverMixBars.bars(List.of(DayOverMix.of(Samples.calm())), sort).stream()
                .mapToInt(OverMixBars.Bar::milligrams)
                .sum();
        assertThat(sum).isEqualTo(Samples.calm().totals().overMixedMilligrams());
    }

    @Test
    void the_largest_bar_comes_first_and_knows_its_bowls() {
        OverMixBars.Bar first = OverMixBars.bars(List.of(DayOverMix.of(Samples.calm())), OverMixSelection.Sort.CAUSE)
                .get(0);
        assertThat(first.label()).isEqualTo("left over");
        assertThat(first.milligrams()).isEqualTo(10_500);
        assertThat(first.bowls()).extracting(left -> left.bowl().bowl()).containsExactly("2a", "1a");
    }

    @ParameterizedTest
    @EnumSource(OverMixSelection.Sort.class)
    void bars_over_weeks_add_up_to_the_days_of_the_period(OverMixSelection.Sort sort) {
        int today = Samples.calm().totals().overMixedMilligrams();
        var week = new OverMixSelection(sort, 0, OverMixSelection.Period.WEEK);
        // the six days before: 73, 62, 70, 65, 60 and 66 g
        assertThat(sum(week)).isEqualTo(today + 396_000);
        var weeks = week.otherPeriod();
        assertThat(weeks.period()).isEqualTo(OverMixSelection.Period.FOUR_WEEKS);
        assertThat(sum(weeks))
                .isEqualTo(today
                        + Samples.past().stream()
                                .mapToInt(DayOverMix::overMixedMilligrams)
                                .sum());
        assertThat(weeks.otherPeriod().period()).isEqualTo(OverMixSelection.Period.TODAY);
    }

    private static int sum(OverMixSelection pick) {
        return OverMixBars.bars(Samples.calm(), Samples.past(), pick).stream()
                .mapToInt(OverMixBars.Bar::milligrams)
                .sum();
    }

    @Test
    void bowls_of_other_days_say_their_day() {
        var week = new OverMixSelection(OverMixSelection.Sort.BOWL, 0, OverMixSelection.Period.WEEK);
        assertThat(OverMixBars.bars(Samples.calm(), Samples.past(), week))
                .extracting(OverMixBars.Bar::label)
                .contains("2027-05-13 bowl 2b");
    }

    @Test
    void a_share_of_nothing_is_none() {
        assertThat(OverMixBars.percent(5, 0)).isEqualTo("0.0");
        assertThat(OverMixBars.percent(18_500, 742_000)).isEqualTo("2.5");
    }
}
