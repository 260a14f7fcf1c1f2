package stirtide.bar.panels.weighing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stirtide.bar.Samples;
import stirtide.mixing.weighing.Ratios;

/**
 * Directions 1:1.5 to 1:2.5, bowl takes 200 g, scale steps of 0.1 g that may be 0.1 g off up to 50 g and 0.15 g beyond: 40 g
 * of lightener are 39.9 to 40.1 g, so 1.5 x 40.1 + 0.15 = 60.3 g and 2.5 x 39.9 - 0.15 = 99.6 g of developer are inside.
 */
class RatioCheckTest {
    private final RatioCheck check =
            new RatioCheck(WeighTarget.of(Samples.busy().live().get(0), Samples.busy()));

    private List<String> advice(int lightener, int developer) {
        return check.advice(OptionalInt.of(lightener), Optional.of(List.of(developer)));
    }

    @ParameterizedTest
    @CsvSource({
        "40000,60300,true", "40000,60299,false", "40000,60000,false",
        "40000,99600,true", "40000,99601,false", "40000,100000,false"
    })
    void the_borders_of_the_window_belong_to_it(int lightener, int developer, boolean inside) {
        assertThat(check.isInside(lightener, List.of(developer))).isEqualTo(inside);
    }

    @Test
    void with_lightener_alone_it_says_how_much_developer_is_inside() {
        assertThat(check.advice(OptionalInt.of(40_000), Optional.empty()))
                .containsExactly("directions take 60.3 to 99.6 g of developer in all");
        assertThat(check.advice(OptionalInt.empty(), Optional.empty())).isEmpty();
    }

    @Test
    void too_much_developer_is_answered_with_more_lightener() {
        assertThat(advice(40_000, 104_000))
                .containsExactly(
                        "too much developer for the directions",
                        "inside with 41.8 to 69.0 g of lightener in all: add 1.8 to 29.0 g");
    }

    @Test
    void too_little_developer_is_answered_with_more_developer() {
        assertThat(advice(40_000, 50_000))
                .containsExactly(
                        "too little developer for the directions",
                        "inside with 60.3 to 99.6 g of developer in all: add 10.3 to 49.6 g");
    }

    @Test
    void what_only_the_scale_may_put_outside_is_said_as_that() {
        assertThat(advice(40_000, 60_200))
                .containsExactly(
                        "too little developer for the directions if the scale errs",
                        "inside with 60.3 to 99.6 g of developer in all: add 0.1 to 39.4 g");
        assertThat(check.verdict(40_000, List.of(60_200))).isEqualTo("1:1.505 OUTSIDE if the scale errs");
        assertThat(check.verdict(40_000, List.of(59_000))).isEqualTo("1:1.475 OUTSIDE 1:1.5 to 1:2.5");
        assertThat(check.verdict(40_000, List.of(60_300))).isEqualTo("1:1.508 inside 1:1.5 to 1:2.5");
    }

    @Test
    void what_the_bowl_cannot_hold_is_not_offered() {
        assertThat(advice(90_000, 100_000))
                .containsExactly(
                        "outside the directions, and the bowl takes 200.0 g: no amount more brings it in, bin it");
        assertThat(advice(90_000, 111_000)).containsExactly("more than the bowl may hold: the bowl takes 200.0 g");
    }

    @Test
    void weights_inside_need_no_words() {
        assertThat(advice(40_000, 80_000)).isEmpty();
    }

    @Test
    void the_ratio_is_rounded_to_nearest() {
        assertThat(Ratios.thousandths(30_000, 50_000)).isEqualTo(1667);
        assertThat(Ratios.thousandths(30_000, 49_999)).isEqualTo(1667);
        assertThat(Ratios.thousandths(40_000, 80_000)).isEqualTo(2000);
    }

    /** Whatever is weighed, both ends of an offered range are inside the window and fit the bowl. Seed 20270514. */
    @Test
    void every_range_offered_is_inside() {
        var random = new Random(20270514);
        int offers = 0;
        for (int i = 0; i < 2000; i++) {
            int lightener = 100 * (1 + random.nextInt(1500));
            int developer = 100 * random.nextInt(2000);
            List<String> advice = advice(lightener, developer);
            if (advice.size() < 2) continue;
            offers++;
            String offer = advice.get(1).replaceAll(".*inside with | g of.*| g$", "");
            for (String end : offer.split(" to ")) {
                int grams = stirtide.bar.text.WeightText.milligrams(end);
                boolean moreLightener = advice.get(1).contains("of lightener");
                int newLightener = moreLightener ? grams : lightener;
                int newDeveloper = moreLightener ? developer : grams;
                assertThat(check.isInside(newLightener, List.of(newDeveloper)))
                        .as("%d + %d: %s", lightener, developer, advice)
                        .isTrue();
                assertThat(check.isOverfull(newLightener, newDeveloper)).isFalse();
                assertThat(newLightener).isGreaterThanOrEqualTo(lightener);
                assertThat(newDeveloper).isGreaterThanOrEqualTo(developer);
            }
        }
        assertThat(offers).isGreaterThan(300);
    }
}
