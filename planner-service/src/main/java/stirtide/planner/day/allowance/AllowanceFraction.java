package stirtide.planner.day.allowance;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Comparator;
import java.util.Optional;
import stirtide.events.setup.AllowancePolicy;
import stirtide.events.setup.BowlSize;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Developer;
import stirtide.events.setup.Directions;
import stirtide.events.setup.Menu.MenuZone;
import stirtide.mixing.text.AmountText;
import stirtide.planner.allowance.AllowanceSettings;
import stirtide.planner.cost.CriticalFraction;
import stirtide.planner.cost.Money;
import stirtide.planner.cost.ProductPrices;

/**
 * How often the grams of a zone are to be enough: as a manager has set it, as the salon's files fix it, or as the costs
 * say. Running short costs an extra mix, which is the residue of another bowl and the minutes the client waits for it; too
 * much costs the grams thrown away.
 *
 * @param permille times in a thousand, 500 to 995
 * @param sentence where that comes from
 */
public record AllowanceFraction(int permille, String sentence) {
    private static final int ALWAYS_PERMILLE = AllowanceSettings.HIGHEST_FRACTION_PERMILLE;

    /** The fraction for a zone. */
    public static AllowanceFraction of(DaySetup setup, Optional<Integer> byManager, MenuZone zone) {
        var policy = setup.allowances().orElse(AllowancePolicy.USUAL);
        if (byManager.isPresent()) return new AllowanceFraction(byManager.get(), "set by a manager");
        if (policy.fixedPermille().isPresent())
            return new AllowanceFraction(policy.fixedPermille().get(), "fixed in the salon's files");
        var usual = AllowanceSettings.usual().fractionPermille();
        if (policy.waitingMinutePrice().isEmpty())
            return new AllowanceFraction(usual, "the usual one: nobody has said what a minute of waiting costs");
        return byCosts(setup, policy, policy.waitingMinutePrice().get(), zone);
    }

    private static AllowanceFraction byCosts(
            DaySetup setup, AllowancePolicy policy, BigDecimal minutePrice, MenuZone zone) {
        var prices = new ProductPrices(setup);
        var perGram = perMixedGram(setup, prices, zone);
        int minutes = setup.salon().handOverMinutes()
                + setup.directions(zone.lightenerId())
                        .map(Directions::mixMinutes)
                        .orElse(0);
        int residue = setup.salon().bowls().stream()
                .mapToInt(BowlSize::residueMilligrams)
                .min()
                .orElse(0);
        var currency = setup.salon().currency();
        var runningShort = prices.ofWaiting(minutes, minutePrice)
                .plus(Money.of(perGram.multiply(BigDecimal.valueOf(residue, 3)), currency));
        if (perGram.signum() == 0) return new AllowanceFraction(ALWAYS_PERMILLE, "the product costs nothing");
        int permille = CriticalFraction.permille(runningShort, policy.shortMilligrams(), Money.of(perGram, currency));
        return new AllowanceFraction(
                permille,
                "running short costs " + runningShort.shown() + " (" + minutes
                        + " min of waiting and another bowl), usually for "
                        + AmountText.grams(policy.shortMilligrams()) + "; a gram thrown away costs "
                        + Money.of(perGram, currency).ofOneGram().toPlainString() + " " + currency);
    }

    /** Price of a gram of mix by the menu; a strength between two developers is paid as their blend. */
    private static BigDecimal perMixedGram(DaySetup setup, ProductPrices prices, MenuZone zone) {
        var lightener = prices.perGram(zone.lightenerId()).map(Money::amount).orElse(BigDecimal.ZERO);
        var developer = developerPrice(setup, prices, zone.strengthHundredths());
        var ratio = BigDecimal.valueOf(zone.ratioThousandths(), 3);
        return lightener.add(developer.multiply(ratio)).divide(ratio.add(BigDecimal.ONE), MathContext.DECIMAL64);
    }

    private static BigDecimal developerPrice(DaySetup setup, ProductPrices prices, int strength) {
        var below = setup.developers().stream()
                .filter(one -> one.strengthHundredths() <= strength)
                .max(Comparator.comparingInt(Developer::strengthHundredths).thenComparing(Developer::developerId));
        var above = setup.developers().stream()
                .filter(one -> one.strengthHundredths() >= strength)
                .min(Comparator.comparingInt(Developer::strengthHundredths).thenComparing(Developer::developerId));
        if (below.isEmpty() || above.isEmpty())
            return below.or(() -> above).map(one -> price(prices, one)).orElse(BigDecimal.ZERO);
        int apart = above.get().strengthHundredths() - below.get().strengthHundredths();
        if (apart == 0) return price(prices, below.get());
        var share = BigDecimal.valueOf(strength - below.get().strengthHundredths())
                .divide(BigDecimal.valueOf(apart), MathContext.DECIMAL64);
        return price(prices, above.get())
                .multiply(share)
                .add(price(prices, below.get()).multiply(BigDecimal.ONE.subtract(share)));
    }

    private static BigDecimal price(ProductPrices prices, Developer developer) {
        return prices.perGram(developer.developerId()).map(Money::amount).orElse(BigDecimal.ZERO);
    }
}
