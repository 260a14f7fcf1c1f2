package stirtide.planner.salonfiles.rules;

import java.util.List;
import stirtide.events.setup.Developer;
import stirtide.events.setup.Directions;
import stirtide.events.setup.Directions.TechniqueRule;
import stirtide.mixing.text.AmountText;
import stirtide.planner.salonfiles.json.FieldPath;
import stirtide.planner.salonfiles.json.FieldPath.Located;
import stirtide.planner.salonfiles.json.FieldText;
import stirtide.planner.salonfiles.json.UniqueIds;

/** Rules of what is on the shelf: developers, and the directions of lighteners. */
public final class ProductFileRules {
    private final PriceRules prices;
    private final UniqueIds lighteners = new UniqueIds("lightener");

    /** @param prices rules of prices in the salon's currency */
    public ProductFileRules(PriceRules prices) {
        this.prices = prices;
    }

    /** Refuses what cannot be in a list of developers. */
    public void check(List<Developer> developers, FieldPath at) {
        UniqueIds ids = new UniqueIds("developer");
        for (Located<Developer> each : at.each("developers", developers)) {
            ids.take(each.value().developerId(), each.path().at("developerId"));
            prices.check(each.value().packPrice(), each.path().at("packPrice"));
        }
    }

    /** Refuses what cannot be in directions; the id of the lightener must differ from those checked before. */
    public void check(Directions directions, int handOverMinutes, FieldPath at) {
        lighteners.take(directions.lightenerId(), at.at("lightenerId"));
        int untilChair = directions.mixMinutes() + handOverMinutes;
        if (directions.workingLifeMinutes() <= untilChair)
            at.refuse(
                    "workingLifeMinutes",
                    String.valueOf(directions.workingLifeMinutes()),
                    "more than the " + untilChair + " minutes that mixing and hand-over take");
        UniqueIds techniques = new UniqueIds("technique");
        for (Located<TechniqueRule> each : at.each("techniques", directions.techniques())) {
            techniques.take(each.value().technique(), each.path().at("technique"));
            checkWindow(each.value(), each.path().at("lowestRatio"));
        }
        prices.check(directions.packPrice(), at.at("packPrice"));
    }

    private static void checkWindow(TechniqueRule rule, FieldPath at) {
        String lowest = FieldText.quoted(AmountText.ratio(rule.lowestRatioThousandths()));
        if (rule.lowestRatioThousandths() == 0) at.refuse(lowest, "more developer than none, such as \"1:1\"");
        if (rule.lowestRatioThousandths() > rule.highestRatioThousandths())
            at.refuse(
                    lowest,
                    "at most the highest ratio, "
                            + FieldText.quoted(AmountText.ratio(rule.highestRatioThousandths()))
                            + "; the window is written from low to high");
    }
}
