package stirtide.planner.salonfiles.rules;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.Optional;
import stirtide.events.setup.AllowancePolicy;
import stirtide.events.setup.AllowancePolicyBuilder;
import stirtide.events.setup.Developer;
import stirtide.events.setup.DeveloperBuilder;
import stirtide.events.setup.Directions;
import stirtide.events.setup.DirectionsBuilder;
import stirtide.planner.salonfiles.json.FieldPath;
import stirtide.planner.salonfiles.json.FieldText;

/**
 * Prices in the salon's currency.
 *
 * @param currency the currency, empty when that was refused
 */
public record PriceRules(Optional<Currency> currency) {
    /** Prices in the currency of an ISO 4217 code; the currency is empty when money is not paid in one of that code. */
    public static PriceRules in(String code) {
        return new PriceRules(Currency.getAvailableCurrencies().stream()
                .filter(each -> each.getCurrencyCode().equals(code) && each.getDefaultFractionDigits() >= 0)
                .findAny());
    }

    /** Refuses a price with more decimals than its currency has. */
    public void check(BigDecimal price, FieldPath at) {
        currency.filter(known -> price.scale() > known.getDefaultFractionDigits())
                .ifPresent(known -> at.refuse(
                        FieldText.quoted(price.toPlainString()),
                        "a price with at most " + known.getDefaultFractionDigits() + " decimals, as " + known
                                + " has"));
    }

    /** A developer whose price has the decimals of its currency. */
    public Developer scaled(Developer developer) {
        return DeveloperBuilder.builder(developer)
                .packPrice(scaled(developer.packPrice()))
                .build();
    }

    /** Directions whose price has the decimals of its currency. */
    public Directions scaled(Directions directions) {
        return DirectionsBuilder.builder(directions)
                .packPrice(scaled(directions.packPrice()))
                .build();
    }

    /** An allowance policy whose price has the decimals of its currency. */
    public AllowancePolicy scaled(AllowancePolicy policy) {
        return AllowancePolicyBuilder.builder(policy)
                .waitingMinutePrice(policy.waitingMinutePrice().map(this::scaled))
                .build();
    }

    private BigDecimal scaled(BigDecimal price) {
        return currency.map(Currency::getDefaultFractionDigits)
                .filter(decimals -> price.scale() < decimals)
                .map(price::setScale)
                .orElse(price);
    }
}
