package stirtide.planner.salonfiles.json;

import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import stirtide.events.setup.Developer;
import stirtide.events.setup.Directions;
import stirtide.events.setup.Directions.TechniqueRule;

/** Reads what stands on the shelf: developers, and the directions of lighteners. */
public final class ProductReader {
    private final Optional<Currency> currency;
    private final UniqueIds lighteners = new UniqueIds("lightener");

    /** @param currency the salon's currency, empty when that was refused */
    public ProductReader(Optional<Currency> currency) {
        this.currency = currency;
    }

    public List<Developer> developers(LocatedJson json) {
        UniqueIds ids = new UniqueIds("developer");
        List<Developer> read = new ArrayList<>();
        for (LocatedValue item : json.top().items("developers")) {
            ids.take(item.at("developerId"));
            read.add(new Developer(
                    item.text("developerId"),
                    item.text("name"),
                    StrengthFields.strength(item, "strengthPercent", "volumes"),
                    item.thousandths("packGrams"),
                    PriceFields.price(item.at("packPrice"), currency),
                    item.thousandthsIfAny("countedGrams")));
        }
        return read;
    }

    /** Directions of one lightener; its id must differ from those read before. */
    public Directions directions(LocatedJson json, int handOverMinutes) {
        LocatedValue item = json.top();
        lighteners.take(item.at("lightenerId"));
        int mixMinutes = item.whole("mixMinutes");
        if (item.whole("workingLifeMinutes") <= mixMinutes + handOverMinutes) {
            item.at("workingLifeMinutes")
                    .refuse("more than the " + (mixMinutes + handOverMinutes)
                            + " minutes that mixing and hand-over take");
        }
        return new Directions(
                item.text("lightenerId"),
                item.text("name"),
                item.text("form"),
                item.whole("workingLifeMinutes"),
                mixMinutes,
                item.flag("waterPermitted"),
                techniques(item),
                item.thousandths("packGrams"),
                PriceFields.price(item.at("packPrice"), currency),
                item.thousandthsIfAny("countedGrams"),
                item.wholeIfAny("strandTestHours"),
                item.wholeIfAny("patchTestHours"),
                item.items("cautions").stream()
                        .map(each -> each.node().textValue())
                        .toList());
    }

    private static List<TechniqueRule> techniques(LocatedValue directions) {
        UniqueIds ids = new UniqueIds("technique");
        List<TechniqueRule> read = new ArrayList<>();
        for (LocatedValue item : directions.items("techniques")) {
            ids.take(item.at("technique"));
            read.add(new TechniqueRule(
                    item.text("technique"),
                    item.flag("onScalp"),
                    lowestRatio(item),
                    item.ratio("highestRatio"),
                    StrengthFields.strength(item, "highestStrengthPercent", "highestVolumes"),
                    item.whole("longestProcessingMinutes")));
        }
        return read;
    }

    private static int lowestRatio(LocatedValue technique) {
        LocatedValue lowest = technique.at("lowestRatio");
        int ratio = technique.ratio("lowestRatio");
        if (ratio == 0) lowest.refuse("more developer than none, such as \"1:1\"");
        if (ratio > technique.ratio("highestRatio")) {
            lowest.refuse("at most the highest ratio, "
                    + technique.at("highestRatio").shown() + "; the window is written from low to high");
        }
        return ratio;
    }
}
