package stirtide.planner.day.setup;

import java.util.Optional;
import stirtide.events.formula.DeveloperPart;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Directions;
import stirtide.mixing.strength.LegalLimits;
import stirtide.mixing.text.AmountText;

/** What the products must be: strengths the law permits, and directions with a window for each technique. */
final class ProductRules {
    private ProductRules() {}

    static Optional<String> objection(DaySetup setup) {
        return shelf(setup)
                .or(() -> SetupChecks.first(setup.directions().stream().map(ProductRules::directions)));
    }

    private static Optional<String> shelf(DaySetup setup) {
        for (var developer : setup.developers()) {
            if (developer.developerId().equals(DeveloperPart.WATER))
                return Optional.of("\"water\" stands for water; give the developer another id.");
            if (developer.strengthHundredths() < 1 || developer.strengthHundredths() > LegalLimits.ON_HAIR_HUNDREDTHS)
                return Optional.of("Developer \"" + developer.developerId() + "\" has "
                        + AmountText.strength(developer.strengthHundredths()) + ". Accepted: above 0 % up to "
                        + AmountText.strength(LegalLimits.ON_HAIR_HUNDREDTHS) + ".");
        }
        return SetupChecks.unique(
                        "developer",
                        setup.developers().stream()
                                .map(one -> one.developerId())
                                .toList())
                .or(() -> SetupChecks.unique(
                        "lightener",
                        setup.directions().stream().map(Directions::lightenerId).toList()));
    }

    private static Optional<String> directions(Directions directions) {
        var of = "The directions of \"" + directions.lightenerId() + "\" ";
        if (!SetupChecks.isMinutes(directions.workingLifeMinutes(), 1)
                || !SetupChecks.isMinutes(directions.mixMinutes(), 1))
            return Optional.of(
                    of + "need a working life and mixing time of 1 to " + SetupChecks.MOST_MINUTES + " minutes.");
        if (directions.techniques().isEmpty()) return Optional.of(of + "need at least one technique.");
        for (var rule : directions.techniques()) {
            if (rule.lowestRatioThousandths() < 1 || rule.highestRatioThousandths() < rule.lowestRatioThousandths())
                return Optional.of(of + "need a ratio window for " + rule.technique()
                        + " that rises: lowest above 0, highest not below lowest.");
            if (rule.highestStrengthHundredths() < 1
                    || rule.highestStrengthHundredths() > LegalLimits.ON_HAIR_HUNDREDTHS)
                return Optional.of(of + "permit " + AmountText.strength(rule.highestStrengthHundredths())
                        + ". Accepted: above 0 % up to " + AmountText.strength(LegalLimits.ON_HAIR_HUNDREDTHS)
                        + ".");
            if (!SetupChecks.isMinutes(rule.longestProcessingMinutes(), 1))
                return Optional.of(
                        of + "need a longest processing time of 1 to " + SetupChecks.MOST_MINUTES + " minutes.");
        }
        return Optional.empty();
    }
}
