package stirtide.planner.day.bowl;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stirtide.events.command.DayCommand.BinBowl;
import stirtide.events.command.DayCommand.HandOverBowl;
import stirtide.events.command.DayCommand.WeighBowl;
import stirtide.events.day.DayEvent.BowlWeighed;
import stirtide.events.day.OverMixCause;
import stirtide.events.formula.DeveloperPart;
import stirtide.planner.day.Scene;

/**
 * Scale of class II, e = 1 g, d = 0.1 g, in service: OIML R 76-1:2006, table 6, allows 0.5 e up to 5,000 e, twice that in
 * service, and half a division of rounding comes on top, so 1.05 g either way. 30 g of lightener are 28.95 to 31.05 g:
 * 1.5 x 31.05 + 1.05 = 47.625 g of developer are surely enough, 2.5 x 28.95 - 1.05 = 71.325 g surely not too much.
 */
public class BowlWeighRulesTest {
    private final Scene scene = Scene.begun();

    @ParameterizedTest
    @CsvSource({
        // lightener, developer, ratio, inside the window 1:1.5 to 1:2.5 whatever the scale's error
        "30000, 60000, 2000, true",
        "30000, 45000, 1500, false",
        "30000, 47625, 1588, true",
        "30000, 47624, 1587, false",
        "30000, 71325, 2378, true",
        "30000, 71326, 2378, false",
        "30000, 75000, 2500, false",
        "10000, 20000, 2000, true",
        "1000, 2000, 2000, false",
        "1, 1, 1000, false",
        "2, 3, 1500, false"
    })
    void the_truth_is_recorded_and_judged_without_rounding(int lightener, int developer, int ratio, boolean inside) {
        scene.does(Scene.weigh("1a", lightener, developer));
        assertThat(scene.newest())
                .isEqualTo(new BowlWeighed(
                        "1a", lightener, List.of(new DeveloperPart("dev-9", developer)), ratio, inside));
    }

    @Test
    void a_later_weighing_replaces_an_earlier_one() {
        scene.does(Scene.weigh("1a", 30_000, 20_000)).does(Scene.weigh("1a", 30_000, 60_000));
        assertThat(scene.day.bowl("1a").orElseThrow().weighed().orElseThrow().insideDirections())
                .isTrue();
        assertThat(scene.day.bowl("1a").orElseThrow().mixedMilligrams()).isEqualTo(90_000);
    }

    @Test
    void a_mix_stronger_than_the_directions_is_outside() {
        scene.does(parts(new DeveloperPart("dev-9", 59_999), new DeveloperPart("dev-12", 1)));
        assertThat(weighed().insideDirections()).isFalse();
        // 9 % as shown, more when both weights err: the ceiling is 9 %
        scene.does(parts(new DeveloperPart("dev-6", 30_000), new DeveloperPart("dev-12", 30_000)));
        assertThat(weighed().insideDirections()).isFalse();
        // 31.05 g less 1.05 g of the weaker hold 28.95 g and 1.05 g of the stronger at 9 %
        scene.does(parts(new DeveloperPart("dev-6", 31_050), new DeveloperPart("dev-12", 28_950)));
        assertThat(weighed().insideDirections()).isTrue();
        scene.does(parts(new DeveloperPart("dev-6", 31_049), new DeveloperPart("dev-12", 28_951)));
        assertThat(weighed().insideDirections()).isFalse();
    }

    @Test
    void liquids_none_of_which_is_too_strong_are_not_too_strong_together() {
        scene.does(parts(new DeveloperPart("dev-9", 59_900), new DeveloperPart("dev-6", 100)));
        assertThat(weighed().insideDirections()).isTrue();
    }

    @Test
    void a_bowl_that_may_be_outside_says_so_and_what_to_pour() {
        scene.does(Scene.weigh("1a", 30_000, 75_000));
        assertThat(scene.refused(new HandOverBowl("1a"), "OUTSIDE_DIRECTIONS").sentence())
                .contains("maybe too much developer, as the scale may err: at most 1:2.5", "Correct: add ");
        scene.does(Scene.weigh("1a", 30_000, 75_100));
        assertThat(scene.refused(new HandOverBowl("1a"), "OUTSIDE_DIRECTIONS").sentence())
                .contains("(too much developer: at most 1:2.5)");
    }

    @Test
    void water_the_directions_do_not_permit_is_outside() {
        scene.does(parts(new DeveloperPart("dev-9", 59_900), new DeveloperPart("water", 100)));
        assertThat(weighed().insideDirections()).isFalse();
    }

    @Test
    void weights_that_cannot_be_are_refused() {
        scene.refused(Scene.weigh("1a", 0, 60_000), "WEIGHT_NOT_POSITIVE");
        scene.refused(Scene.weigh("1a", -1, 60_000), "WEIGHT_NOT_POSITIVE");
        scene.refused(Scene.weigh("1a", 30_000, -1), "WEIGHT_NOT_POSITIVE");
        scene.refused(Scene.weigh("1a", 30_000, 0), "WEIGHT_NOT_POSITIVE");
        scene.refused(Scene.weigh("1a", 30_000, 210_001), "WEIGHT_BEYOND_BOWL");
        scene.refused(Scene.weigh("1a", Integer.MAX_VALUE, Integer.MAX_VALUE), "WEIGHT_BEYOND_BOWL");
        scene.does(Scene.weigh("1a", 30_000, 210_000));
    }

    @Test
    void liquids_must_be_known_and_named_once() {
        scene.refused(parts(), "PARTS_COUNT");
        scene.refused(parts(new DeveloperPart("tea", 10)), "DEVELOPER_UNKNOWN");
        scene.refused(parts(new DeveloperPart("dev-9", 10), new DeveloperPart("dev-9", 10)), "DEVELOPER_TWICE");
        scene.refused(
                parts(
                        new DeveloperPart("dev-6", 1),
                        new DeveloperPart("dev-9", 1),
                        new DeveloperPart("dev-12", 1),
                        new DeveloperPart("water", 1)),
                "PARTS_COUNT");
    }

    @Test
    void only_a_bowl_at_the_bar_is_weighed() {
        scene.refused(Scene.weigh("2a", 30_000, 60_000), "BOWL_UNKNOWN");
        scene.refused(Scene.weigh("a", 30_000, 60_000), "BOWL_UNKNOWN");
        Scene.atChair().refused(Scene.weigh("1a", 30_000, 60_000), "BOWL_AT_CHAIR");
        scene.does(new BinBowl("1a", 0, OverMixCause.SPILLED));
        scene.refused(Scene.weigh("1a", 30_000, 60_000), "BOWL_CLOSED");
    }

    private BowlWeighed weighed() {
        return (BowlWeighed) scene.newest();
    }

    private static WeighBowl parts(DeveloperPart... parts) {
        return new WeighBowl("1a", 30_000, List.of(parts));
    }
}
