package stirtide.planner.views;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stirtide.events.command.DayCommand.CountStock;
import stirtide.events.command.DayCommand.RecordStrip;
import stirtide.events.command.DayCommand.RecordSwatch;
import stirtide.events.setup.MixStrip;
import stirtide.events.setup.SwatchTest;
import stirtide.events.view.GramsView.AllowanceCard;
import stirtide.events.view.GramsView.BowlCostCard;
import stirtide.events.view.SwatchView.LiftCard;
import stirtide.planner.day.Given;
import stirtide.planner.day.Scene;

/** What panels about grams, costs, swatches and strips are built on. */
class GramsViewsTest {
    @Test
    void every_zone_still_to_come_says_where_its_grams_come_from() {
        var view = GramsViews.of(Scene.planned().day);
        assertThat(view.allowances()).extracting(AllowanceCard::service).containsExactly(1, 1, 1, 2, 2);
        var crown = view.allowances().get(0);
        assertThat(crown.source()).isEqualTo("MENU");
        assertThat(crown.plannedMilligrams()).isEqualTo(40_000);
        assertThat(crown.safetyMilligrams()).isZero();
        assertThat(crown.sentence()).contains("40 g", "by the menu");
        assertThat(crown.fractionSentence()).contains("nobody has said");
        assertThat(view.fixedBy()).isEmpty();
    }

    @Test
    void bowls_have_their_cost_as_planned_and_as_weighed() {
        var scene = Scene.begun().does(Scene.weigh("1a", 30_000, 60_000));
        var view = GramsViews.of(scene.day);
        // 30 g at 1 per 500 g and 60 g at 10 per 1000 g: 0.06 + 0.60
        assertThat(view.bowls().get(0))
                .isEqualTo(new BowlCostCard("1a", 1, true, 90_000, new BigDecimal("0.66"), new BigDecimal("0.0073")));
        assertThat(view.bowls()).extracting(BowlCostCard::bowl).containsExactly("1a", "2a");
        assertThat(view.prices().get(0).pricePerGram()).isEqualTo(new BigDecimal("0.0020"));
        assertThat(view.currency()).isEqualTo("EUR");
    }

    @Test
    void the_thicker_mix_is_set_against_the_thinner_for_the_same_grams() {
        var foil = GramsViews.of(Scene.planned().day).mixes().get(0);
        // 60 g at 1:1.5 hold 24 + 36 g, at 1:2.5 17.1 + 42.9 g
        assertThat(foil.thickCost()).isEqualTo(new BigDecimal("0.41"));
        assertThat(foil.thinCost()).isEqualTo(new BigDecimal("0.46"));
        assertThat(foil.difference()).isEqualTo(new BigDecimal("-0.05"));
        assertThat(foil.sentence()).isEqualTo("Cloudlift, foil: 60 g at 1:1.5 cost 0.05 EUR less than at 1:2.5");
    }

    @Test
    void what_is_short_for_tomorrow_is_on_the_list() {
        assertThat(GramsViews.of(Scene.planned().day).shopping()).isEmpty();
        var scene = Scene.planned().does(new CountStock("cloudlift", 10_000));
        assertThat(GramsViews.of(scene.day).shopping())
                .singleElement()
                .satisfies(line -> assertThat(line).contains("Cloudlift", "buy 1 pack for tomorrow"));
    }

    @Test
    void swatches_are_compared_by_ratio_and_time_with_spread_and_number() {
        var scene = Scene.planned();
        for (int after : new int[] {70, 80, 75})
            scene.does(new RecordSwatch(new SwatchTest(Given.DATE, "cloudlift", 2000, 900, 30, 50, after)));
        scene.does(new RecordSwatch(new SwatchTest(Given.DATE, "cloudlift", 1500, 900, 30, 50, 85)));
        var card = SwatchViews.of(scene.day).lighteners().get(0);
        assertThat(card.lifts()).extracting(LiftCard::swatches).containsExactly(1, 3);
        assertThat(card.lifts().get(1).meanLiftHundredths()).isEqualTo(250);
        assertThat(card.lifts().get(1).spreadHundredths()).isEqualTo(Optional.of(50));
        assertThat(card.lifts().get(0).spreadHundredths()).isEmpty();
    }

    @Test
    void strips_are_compared_only_as_far_as_their_charts_can_tell() {
        var scene = Scene.planned();
        for (int ph : new int[] {100, 95, 93})
            scene.does(new RecordStrip(new MixStrip(Given.DATE, "cloudlift", 2000 - ph, 900, ph, 5)));
        var view = SwatchViews.of(scene.day);
        assertThat(view.lighteners().get(0).comparisons()).hasSize(2);
        assertThat(view.lighteners().get(0).comparisons().get(0)).contains("about 3.2 times as alkaline");
        assertThat(view.lighteners().get(0).comparisons().get(1)).contains("cannot tell");
        assertThat(view.limits()).contains("not how strong it is");
        scene.refused(new RecordStrip(new MixStrip(Given.DATE, "cloudlift", 2000, 900, 150, 5)), "STRIP_OUT_OF_RANGE");
        scene.refused(
                new RecordSwatch(new SwatchTest(Given.DATE, "cloudlift", 2000, 900, 0, 50, 80)), "SWATCH_OUT_OF_RANGE");
        scene.refused(
                new RecordSwatch(new SwatchTest(Given.DATE.plusDays(1), "cloudlift", 2000, 900, 9, 50, 80)),
                "TEST_NOT_DONE");
        scene.refused(new RecordSwatch(new SwatchTest(Given.DATE, "other", 2000, 900, 9, 50, 80)), "PRODUCT_UNKNOWN");
    }
}
