package stirtide.planner.cost;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import stirtide.events.formula.BowlFormula;
import stirtide.events.formula.DeveloperPart;
import stirtide.events.setup.DaySetup;

/** ProductPrices per gram, from pack prices, and what bowls cost with them. Water costs nothing. */
public final class ProductPrices {
    private final String currency;
    private final Map<String, BigDecimal> perMilligram = new TreeMap<>();

    /** Reads the pack prices of a day. */
    public ProductPrices(DaySetup setup) {
        currency = setup.salon().currency();
        setup.directions()
                .forEach(product -> put(product.lightenerId(), product.packPrice(), product.packMilligrams()));
        setup.developers()
                .forEach(product -> put(product.developerId(), product.packPrice(), product.packMilligrams()));
        perMilligram.put(DeveloperPart.WATER, BigDecimal.ZERO);
    }

    /** Price of one gram of a product, to 34 digits; empty when the day does not know the product. */
    public Optional<Money> perGram(String productId) {
        return Optional.ofNullable(perMilligram.get(productId))
                .map(price -> Money.of(price.movePointRight(3), currency));
    }

    /**
     * Cost of everything weighed into a bowl.
     *
     * @throws IllegalArgumentException if the day does not know one of its products
     */
    public Money ofBowl(BowlFormula formula) {
        BigDecimal sum = ofProduct(formula.lightenerId(), formula.lightenerMilligrams());
        for (DeveloperPart part : formula.developerParts())
            sum = sum.add(ofProduct(part.developerId(), part.milligrams()));
        return Money.of(sum, currency);
    }

    /** Cost of some of a bowl's mix, over-mix for instance. */
    public Money ofMix(BowlFormula formula, int milligrams) {
        BigDecimal share = ofBowl(formula)
                .amount()
                .multiply(BigDecimal.valueOf(milligrams))
                .divide(BigDecimal.valueOf(formula.totalMilligrams()), MathContext.DECIMAL128);
        return Money.of(share, currency);
    }

    /** Cost of one gram of a bowl's mix. */
    public Money perMixedGram(BowlFormula formula) {
        return ofMix(formula, 1000);
    }

    /**
     * What the thicker of two mixes costs more than the thinner, for the same grams of mix. Negative when the thicker is
     * the cheaper.
     *
     * @param milligrams grams of mix compared
     */
    public Money thickerAgainstThinner(BowlFormula one, BowlFormula other, int milligrams) {
        boolean oneIsThicker = (long) one.developerMilligrams() * other.lightenerMilligrams()
                <= (long) other.developerMilligrams() * one.lightenerMilligrams();
        Money difference = ofMix(one, milligrams).minus(ofMix(other, milligrams));
        return oneIsThicker ? difference : Money.of(difference.amount().negate(), currency);
    }

    /** Cost of minutes a client waits. */
    public Money ofWaiting(int minutes, BigDecimal pricePerMinute) {
        return Money.of(pricePerMinute.multiply(BigDecimal.valueOf(minutes)), currency);
    }

    private void put(String productId, BigDecimal packPrice, int packMilligrams) {
        perMilligram.put(productId, packPrice.divide(BigDecimal.valueOf(packMilligrams), MathContext.DECIMAL128));
    }

    private BigDecimal ofProduct(String productId, int milligrams) {
        BigDecimal price = perMilligram.get(productId);
        if (price == null)
            throw new IllegalArgumentException(
                    "no price for " + productId + ", known: " + String.join(", ", perMilligram.keySet()));
        return price.multiply(BigDecimal.valueOf(milligrams));
    }
}
