package stirtide.planner.views;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;
import stirtide.events.formula.BowlFormula;
import stirtide.planner.cost.ProductPrices;
import stirtide.planner.day.state.BowlState;
import stirtide.planner.day.state.Day;

/** What the mix of closed bowls cost, as it was really weighed. Exact until it is rounded to the currency's digits. */
final class BowlCosts {
    private final ProductPrices prices;
    private final int digits;

    BowlCosts(Day day) {
        prices = new ProductPrices(day.opened());
        digits = Math.max(
                0, Currency.getInstance(day.opened().salon().currency()).getDefaultFractionDigits());
    }

    /** Cost of some of a bowl's mix. */
    BigDecimal of(BowlState bowl, int milligrams) {
        return prices.ofMix(real(bowl), milligrams).amount();
    }

    BigDecimal rounded(BigDecimal amount) {
        return amount.setScale(digits, RoundingMode.HALF_UP);
    }

    /** The formula of a bowl as it was weighed, or as planned while it is not weighed. */
    static BowlFormula real(BowlState bowl) {
        var planned = bowl.planned();
        if (bowl.weighed().isEmpty()) return planned;
        var weighed = bowl.weighed().get();
        return planned.withLightenerMilligrams(weighed.lightenerMilligrams())
                .withDeveloperParts(weighed.developerParts());
    }
}
