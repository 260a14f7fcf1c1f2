package stirtide.planner.views;

import stirtide.events.formula.BowlFormula;
import stirtide.events.setup.BowlSize;
import stirtide.events.view.DayView.PartCard;
import stirtide.events.view.DayView.PlannedBowlCard;
import stirtide.events.view.DayView.WeighedCard;
import stirtide.planner.day.state.BowlWeights;
import stirtide.planner.day.state.Day;

/** A mix as planned and as weighed, for the cards of bowls and of mixes for two bowls. */
final class MixCards {
    private MixCards() {}

    static PlannedBowlCard planned(Day day, BowlFormula formula, String bowlSizeId, String scaleId) {
        return new PlannedBowlCard(
                ProductNames.lightener(day, formula.lightenerId()),
                formula.lightenerMilligrams(),
                formula.developerParts().stream()
                        .map(part -> new PartCard(
                                part.developerId(),
                                ProductNames.liquid(day, part.developerId()),
                                day.opened().strengthHundredths(part.developerId()),
                                part.milligrams()))
                        .toList(),
                formula.strengthHundredths(),
                formula.wantedRatioThousandths(),
                formula.lowestRatioThousandths(),
                formula.highestRatioThousandths(),
                day.opened()
                        .salon()
                        .bowlSize(bowlSizeId)
                        .map(BowlSize::usableMilligrams)
                        .orElse(0),
                scaleId);
    }

    static WeighedCard weighed(BowlWeights weighed) {
        return new WeighedCard(
                weighed.lightenerMilligrams(),
                weighed.developerMilligrams(),
                weighed.ratioThousandths(),
                weighed.insideDirections());
    }
}
