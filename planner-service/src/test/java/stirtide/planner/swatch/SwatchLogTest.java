package stirtide.planner.swatch;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import stirtide.events.setup.SwatchTest;
import stirtide.events.view.SwatchView.LiftCard;

/** Ratios compared by swatches. Invented tests. */
class SwatchLogTest {
    private static SwatchTest swatch(int ratio, int minutes, int after) {
        return new SwatchTest(LocalDate.of(2027, 3, 1), "pale-clay", ratio, 600, minutes, 50, after);
    }

    @Test
    void lines_give_mean_spread_and_number() {
        List<LiftCard> lines = SwatchLog.of(
                "pale-clay",
                List.of(swatch(2000, 30, 80), swatch(1500, 30, 90), swatch(2000, 30, 70), swatch(2000, 30, 75)));
        assertThat(lines).hasSize(2);
        assertThat(lines.get(0).sentence())
                .isEqualTo("1:1.5 with 20 vol (6 %) for 30 min lifted 4.0 levels, 1 swatch only");
        assertThat(lines.get(0).spreadHundredths()).isEmpty();
        assertThat(lines.get(1).meanLiftHundredths()).isEqualTo(250);
        assertThat(lines.get(1).spreadHundredths()).contains(50);
        assertThat(lines.get(1).sentence())
                .isEqualTo("1:2 with 20 vol (6 %) for 30 min lifted 2.5 levels (2.0 to 3.0), 3 swatches");
    }

    @Test
    void other_lighteners_and_times_stay_apart() {
        assertThat(SwatchLog.of("other", List.of(swatch(2000, 30, 80)))).isEmpty();
        assertThat(SwatchLog.of("pale-clay", List.of(swatch(2000, 30, 80), swatch(2000, 40, 80))))
                .extracting(LiftCard::minutes)
                .containsExactly(30, 40);
    }

    @Test
    void a_level_off_the_scale_is_refused() {
        assertThat(SwatchLog.objection(swatch(2000, 30, 101)).orElseThrow()).contains("1 to 10");
        assertThat(SwatchLog.objection(swatch(2000, 30, 100))).isEmpty();
    }
}
