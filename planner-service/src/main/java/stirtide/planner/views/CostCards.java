package stirtide.planner.views;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import stirtide.events.formula.BowlFormula;
import stirtide.events.formula.DeveloperPart;
import stirtide.events.setup.Developer;
import stirtide.events.setup.Directions;
import stirtide.events.setup.Directions.TechniqueRule;
import stirtide.events.view.GramsView.BowlCostCard;
import stirtide.events.view.GramsView.MixCostCard;
import stirtide.events.view.GramsView.PriceCard;
import stirtide.mixing.text.AmountText;
import stirtide.planner.cost.Money;
import stirtide.planner.cost.ProductPrices;
import stirtide.planner.day.state.BowlState;
import stirtide.planner.day.state.Day;

/** ProductPrices of products, costs of bowls, and what a thicker mix costs against a thinner one. */
final class CostCards {
    /** Grams of mix that are compared. */
    private static final int COMPARED_MILLIGRAMS = 60_000;

    private final Day day;
    private final ProductPrices prices;
    private final BowlCosts costs;

    CostCards(Day day) {
        this.day = day;
        this.prices = new ProductPrices(day.opened());
        this.costs = new BowlCosts(day);
    }

    List<PriceCard> prices() {
        List<PriceCard> cards = new ArrayList<>();
        for (Directions one : day.opened().directions())
            cards.add(new PriceCard(
                    one.lightenerId(), one.name(), one.packMilligrams(), one.packPrice(), perGram(one.lightenerId())));
        for (Developer one : day.opened().developers())
            cards.add(new PriceCard(
                    one.developerId(), one.name(), one.packMilligrams(), one.packPrice(), perGram(one.developerId())));
        return cards;
    }

    private BigDecimal perGram(String productId) {
        return prices.perGram(productId).map(Money::ofOneGram).orElse(BigDecimal.ZERO);
    }

    List<BowlCostCard> bowls() {
        List<BowlCostCard> cards = new ArrayList<>();
        day.services().forEach(service -> service.bowls().forEach(bowl -> cards.add(begun(bowl))));
        QueueCards.of(day)
                .forEach(queued -> cards.add(card(
                        queued.bowl().bowl(),
                        queued.bowl().service(),
                        false,
                        queued.bowl().formula())));
        return cards;
    }

    private BowlCostCard begun(BowlState bowl) {
        return card(bowl.bowl(), bowl.service(), true, BowlCosts.real(bowl));
    }

    private BowlCostCard card(String bowl, int service, boolean begun, BowlFormula formula) {
        return new BowlCostCard(
                bowl,
                service,
                begun,
                formula.totalMilligrams(),
                costs.rounded(prices.ofBowl(formula).amount()),
                prices.perMixedGram(formula).ofOneGram());
    }

    /** The thickest against the thinnest mix the directions permit, with the first developer of the shelf. */
    List<MixCostCard> mixes() {
        List<MixCostCard> cards = new ArrayList<>();
        if (day.opened().developers().isEmpty()) return cards;
        String developer = day.opened().developers().get(0).developerId();
        for (Directions product : day.opened().directions())
            for (TechniqueRule rule : product.techniques())
                if (rule.lowestRatioThousandths() < rule.highestRatioThousandths())
                    cards.add(mix(product, rule, developer));
        return cards;
    }

    private MixCostCard mix(Directions product, TechniqueRule rule, String developer) {
        BowlFormula thick = formula(product, rule, rule.lowestRatioThousandths(), developer);
        BowlFormula thin = formula(product, rule, rule.highestRatioThousandths(), developer);
        Money difference = prices.thickerAgainstThinner(thick, thin, COMPARED_MILLIGRAMS);
        boolean dearer = difference.amount().signum() >= 0;
        Money apart = dearer
                ? difference
                : Money.of(difference.amount().negate(), day.opened().salon().currency());
        return new MixCostCard(
                product.lightenerId(),
                rule.technique(),
                rule.lowestRatioThousandths(),
                rule.highestRatioThousandths(),
                COMPARED_MILLIGRAMS,
                costs.rounded(prices.ofMix(thick, COMPARED_MILLIGRAMS).amount()),
                costs.rounded(prices.ofMix(thin, COMPARED_MILLIGRAMS).amount()),
                costs.rounded(difference.amount()),
                product.name() + ", " + rule.technique() + ": " + AmountText.grams(COMPARED_MILLIGRAMS) + " at "
                        + AmountText.ratio(rule.lowestRatioThousandths()) + " cost " + apart.shown()
                        + (dearer ? " more" : " less") + " than at "
                        + AmountText.ratio(rule.highestRatioThousandths()));
    }

    private static BowlFormula formula(Directions product, TechniqueRule rule, int ratio, String developer) {
        return new BowlFormula(
                product.lightenerId(),
                1_000_000,
                List.of(new DeveloperPart(developer, ratio * 1000)),
                0,
                ratio,
                rule.lowestRatioThousandths(),
                rule.highestRatioThousandths(),
                ratio,
                ratio);
    }
}
