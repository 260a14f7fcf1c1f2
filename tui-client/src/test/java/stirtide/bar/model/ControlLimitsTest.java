package stirtide.bar.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import stirtide.bar.Samples;

class ControlLimitsTest {
    private static BigDecimal rounded(BigDecimal value) {
        return value.setScale(4, RoundingMode.HALF_UP);
    }

    /**
     * Flow rates of ten batches from NIST/SEMATECH e-Handbook 6.3.2.2: mean 50.81, mean moving range 1.8778, limits
     * 45.8159 and 55.8041. The figures stand here from memory and agree with the formula worked out by hand.
     */
    @Test
    void the_limits_of_the_handbooks_ten_batches_come_out() {
        List<BigDecimal> batches = Stream.of(
                        "49.6", "47.6", "49.9", "51.3", "47.8", "51.2", "52.6", "52.4", "53.6", "52.1")
                .map(BigDecimal::new)
                .toList();
        ControlLimits limits = ControlLimits.of(batches);
        assertThat(limits.mean()).isEqualByComparingTo("50.81");
        assertThat(rounded(limits.meanRange())).isEqualByComparingTo("1.8778");
        assertThat(rounded(limits.upper())).isEqualByComparingTo("55.8041");
        assertThat(rounded(limits.lower())).isEqualByComparingTo("45.8159");
    }

    @Test
    void one_day_far_above_the_others_is_unusual_and_no_other_is() {
        ControlLimits limits = OverMixBars.limits(Samples.past()).orElseThrow();
        assertThat(Samples.past())
                .filteredOn(day -> limits.isUnusual(BigDecimal.valueOf(day.overMixedMilligrams())))
                .extracting(DayOverMix::overMixedMilligrams)
                .containsExactly(151_000);
    }

    @Test
    void too_few_days_have_no_limits() {
        assertThat(OverMixBars.limits(Samples.past().subList(0, 7))).isEmpty();
        assertThat(OverMixBars.limits(Samples.past().subList(0, 8))).isPresent();
    }
}
