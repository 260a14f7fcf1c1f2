package stirtide.planner.day.allowance;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stirtide.events.command.DayCommand.OpenDay;
import stirtide.events.command.DayCommand.SetAllowanceFraction;
import stirtide.events.setup.AllowancePolicy;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.UseHistory;
import stirtide.events.setup.UseHistory.PastUse;
import stirtide.planner.day.Evolver;
import stirtide.planner.day.Given;
import stirtide.planner.day.LearnedDayTest;
import stirtide.planner.day.Scene;

/** How often allowances are enough follows from the costs unless somebody has set it. */
class AllowanceFractionTest {
    private static DaySetup costing(String minutePrice) {
        return Given.setup()
                .withAllowances(Optional.of(
                        new AllowancePolicy(Optional.empty(), Optional.of(new BigDecimal(minutePrice)), 10_000, 365)));
    }

    private static AllowanceFraction crown(DaySetup setup) {
        return AllowanceFraction.of(
                setup, Optional.empty(), setup.menu().entries().get(0).zones().get(0));
    }

    @Test
    void without_costs_grams_are_enough_four_times_in_five() {
        assertThat(crown(Given.setup()).permille()).isEqualTo(800);
        assertThat(crown(Given.setup()).sentence()).contains("nobody has said what a minute of waiting costs");
    }

    /** Computed by hand from the prices of the tests, so that the whole chain is held. */
    @Test
    void the_fraction_is_the_cost_of_running_short_against_both_costs_together() {
        // A gram of mix: (0.002 + 2 x 0.01) / 3 = 0.0073. Short: 6 minutes and 3 g of residue, for 10 g.
        double perGram = (1 / 500.0 + 2 * 10 / 1000.0) / 3;
        int minutes = 4 + Given.setup().salon().handOverMinutes();
        double residue = 3;
        double shortGram = (minutes * 0.05 + residue * perGram) / 10;
        assertThat(crown(costing("0.05")).permille())
                .isEqualTo((int) Math.round(1000 * shortGram / (shortGram + perGram)));
        assertThat(crown(costing("0.05")).sentence()).contains(minutes + " min of waiting and another bowl");
        assertThat(crown(costing("5")).permille()).isEqualTo(995);
    }

    @Test
    void the_file_fixes_it_and_a_manager_fixes_it_over_the_file() {
        var fixed = Given.setup()
                .withAllowances(
                        Optional.of(new AllowancePolicy(Optional.of(900), Optional.of(BigDecimal.ONE), 10_000, 365)));
        assertThat(crown(fixed).permille()).isEqualTo(900);
        assertThat(AllowanceFraction.of(
                                fixed,
                                Optional.of(700),
                                fixed.menu().entries().get(0).zones().get(0))
                        .permille())
                .isEqualTo(700);
    }

    @Test
    void a_manager_changes_the_grams_of_services_that_have_not_begun() {
        var uses = List.of(used(7, 45_000), used(14, 40_000), used(21, 35_000));
        var scene = new Scene();
        scene.actor = "ruta";
        scene.does(new OpenDay(
                LearnedDayTest.withManager().with(new UseHistory(uses, List.of())),
                List.of(Given.booking("one", "foils", 1, "10:00"))));
        int usual = planned(scene);
        scene.does(new SetAllowanceFraction(Optional.of(950)));
        assertThat(planned(scene)).isGreaterThan(usual);
        assertThat(scene.day.ledger().allowance(1, "crown").orElseThrow().sentence())
                .endsWith("enough 19 times in 20");
        assertThat(scene.day.planSettled()).isFalse();
        scene.does(new SetAllowanceFraction(Optional.empty()));
        assertThat(planned(scene)).isEqualTo(usual);
        assertThat(Evolver.replay(scene.log)).isEqualTo(scene.day);
        scene.refused(new SetAllowanceFraction(Optional.of(400)), "FRACTION_OUT_OF_RANGE");
        scene.as("ilka").refused(new SetAllowanceFraction(Optional.of(900)), "MANAGER_ONLY");
    }

    private static int planned(Scene scene) {
        return scene.day.ledger().allowance(1, "crown").orElseThrow().plannedMilligrams();
    }

    private static PastUse used(int daysBefore, int milligrams) {
        return new PastUse(
                Given.DATE.minusDays(daysBefore), "foils", "crown", "", 40_000, 1000, 1000, milligrams, false);
    }
}
