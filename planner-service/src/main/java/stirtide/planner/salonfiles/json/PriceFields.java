package stirtide.planner.salonfiles.json;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.Optional;

/** Prices in the salon's currency. */
final class PriceFields {
    private PriceFields() {}

    /** The currency of an ISO 4217 code that money is really paid in. */
    static Optional<Currency> currency(String code) {
        return Currency.getAvailableCurrencies().stream()
                .filter(each -> each.getCurrencyCode().equals(code) && each.getDefaultFractionDigits() >= 0)
                .findAny();
    }

    /** A price with the decimals of its currency; more decimals than the currency has are refused. */
    static BigDecimal price(LocatedValue item, Optional<Currency> currency) {
        BigDecimal price = new BigDecimal(item.node().textValue());
        if (currency.isEmpty()) return price;
        int decimals = currency.get().getDefaultFractionDigits();
        if (price.scale() > decimals) {
            item.refuse("a price with at most " + decimals + " decimals, as " + currency.get() + " has");
            return price;
        }
        return price.setScale(decimals);
    }
}
