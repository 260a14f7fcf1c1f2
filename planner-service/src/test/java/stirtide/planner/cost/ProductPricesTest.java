package stirtide.planner.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stirtide.events.formula.BowlFormula;
import stirtide.events.formula.DeveloperPart;
import stirtide.planner.stock.SmallShelf;

/** Costs are exact. Invented prices. */
class ProductPricesTest {
    private static final ProductPrices PRICES = new ProductPrices(SmallShelf.with(1_000_000, Optional.empty()));

    private static BowlFormula bowl(int lightener, int developer) {
        return new BowlFormula(
                "pale-clay",
                lightener,
                List.of(new DeveloperPart("dev-600", developer), new DeveloperPart("water", 0)),
                600,
                2000,
                1500,
                2500,
                1900,
                2100);
    }

    @Test
    void a_gram_costs_its_share_of_the_pack() {
        assertThat(PRICES.perGram("pale-clay").orElseThrow().amount()).isEqualByComparingTo("0.048");
        assertThat(PRICES.perGram("dev-600").orElseThrow().amount()).isEqualByComparingTo("0.009");
        assertThat(PRICES.perGram("water").orElseThrow().amount()).isEqualByComparingTo("0");
        assertThat(PRICES.perGram("other")).isEmpty();
    }

    @Test
    void a_bowl_costs_the_sum_of_its_parts() {
        assertThat(PRICES.ofBowl(bowl(20_000, 40_000)).amount()).isEqualByComparingTo("1.32");
        assertThat(PRICES.perMixedGram(bowl(20_000, 40_000)).shown()).isEqualTo("0.02 EUR");
    }

    @Test
    void a_thicker_mix_costs_more_for_the_same_grams() {
        Money more = PRICES.thickerAgainstThinner(bowl(20_000, 40_000), bowl(24_000, 36_000), 60_000);
        assertThat(more.amount()).isEqualByComparingTo("0.156");
    }

    @Test
    void running_short_and_over_mix_set_the_fraction() {
        Money runningShort = PRICES.ofWaiting(6, new BigDecimal("0.80")).plus(PRICES.ofBowl(bowl(5_000, 10_000)));
        assertThat(runningShort.amount()).isEqualByComparingTo("5.13");
        assertThat(CriticalFraction.permille(runningShort, 10_000, PRICES.perMixedGram(bowl(20_000, 40_000))))
                .isEqualTo(959);
    }

    @Test
    void currencies_do_not_mix_and_have_their_own_digits() {
        Money yen = Money.of(new BigDecimal("12.5"), "JPY");
        assertThat(yen.shown()).isEqualTo("13 JPY");
        assertThatThrownBy(() -> PRICES.ofWaiting(1, BigDecimal.ONE).plus(yen)).hasMessageContaining("one currency");
    }
}
