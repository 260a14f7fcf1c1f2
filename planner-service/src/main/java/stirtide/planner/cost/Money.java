package stirtide.planner.cost;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;

/**
 * An exact amount in one currency. Nothing is rounded until it is shown.
 *
 * @param amount any number of decimals
 * @param currency ISO 4217 currency of the salon
 */
public record Money(BigDecimal amount, Currency currency) {
    private static final int GRAM_DECIMALS = 2;

    /**
     * An amount in the currency with this code.
     *
     * @throws IllegalArgumentException if the code is none of ISO 4217
     */
    public static Money of(BigDecimal amount, String currencyCode) {
        return new Money(amount, Currency.getInstance(currencyCode));
    }

    /** The sum; both in the same currency. */
    public Money plus(Money other) {
        return new Money(amount.add(other.in(currency)), currency);
    }

    /** The difference; both in the same currency. */
    public Money minus(Money other) {
        return new Money(amount.subtract(other.in(currency)), currency);
    }

    /** The amount rounded half up to the currency's smallest unit, followed by its code: {@code "1.85 EUR"}. */
    public String shown() {
        int digits = Math.max(0, currency.getDefaultFractionDigits());
        return amount.setScale(digits, RoundingMode.HALF_UP).toPlainString() + " " + currency.getCurrencyCode();
    }

    /**
     * What one gram costs, rounded half up to two decimals more than the currency has: four for dollars, two for yen. The
     * one rule for grams wherever they are shown; sums are of exact amounts.
     */
    public BigDecimal ofOneGram() {
        return amount.setScale(Math.max(0, currency.getDefaultFractionDigits()) + GRAM_DECIMALS, RoundingMode.HALF_UP);
    }

    private BigDecimal in(Currency wanted) {
        if (!currency.equals(wanted))
            throw new IllegalArgumentException("cannot add " + currency + " to " + wanted + ": use one currency");
        return amount;
    }
}
