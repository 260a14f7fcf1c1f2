package stirtide.mixing.formula;

import java.util.Optional;
import java.util.stream.Collectors;
import stirtide.events.setup.Directions.TechniqueRule;
import stirtide.mixing.formula.FormulaAnswer.Impossible;
import stirtide.mixing.strength.BlendStrength;
import stirtide.mixing.strength.LegalLimits;
import stirtide.mixing.text.AmountText;
import stirtide.mixing.weighing.WorstCaseCheck;

/**
 * The hard limits: window and ceiling of the directions, the legal ceiling, the bowl. The ceiling of the directions is
 * on the developer. The legal ceiling is on the ready mix and counts what the lightener releases too; how much that is
 * nobody at a bar knows, so the developer itself is held to it, which is stricter.
 */
final class FormulaLimits {
    private FormulaLimits() {}

    static Optional<TechniqueRule> ruleOf(FormulaQuestion question) {
        return question.directions().techniques().stream()
                .filter(rule -> rule.technique().equals(question.technique()))
                .findFirst();
    }

    static Impossible unknownTechnique(FormulaQuestion question) {
        String known = question.directions().techniques().stream()
                .map(TechniqueRule::technique)
                .collect(Collectors.joining(", "));
        return new Impossible(
                "The directions of " + question.directions().name() + " say nothing about " + question.technique()
                        + ".",
                "They permit: " + known + ".");
    }

    static Optional<Impossible> refuse(FormulaQuestion question, TechniqueRule rule) {
        if (question.ratioThousandths() < rule.lowestRatioThousandths()
                || question.ratioThousandths() > rule.highestRatioThousandths())
            return Optional.of(new Impossible(
                    "The ratio " + AmountText.ratio(question.ratioThousandths()) + " is outside the directions of "
                            + question.directions().name() + " for " + rule.technique() + ".",
                    "A ratio from " + AmountText.ratio(rule.lowestRatioThousandths()) + " to "
                            + AmountText.ratio(rule.highestRatioThousandths()) + "."));
        if (question.strengthHundredths() > LegalLimits.ceilingHundredths(rule))
            return Optional.of(tooStrong(question, rule));
        if (question.leastMilligrams() > question.usableMilligrams())
            return Optional.of(new Impossible(
                    "The bowl holds " + AmountText.grams(question.usableMilligrams()) + ", but "
                            + AmountText.grams(question.leastMilligrams()) + " are needed with residue.",
                    "A larger bowl, or the need split between more bowls."));
        return Optional.empty();
    }

    static WorstCaseCheck checkOf(FormulaQuestion question, TechniqueRule rule) {
        int wanted = question.strengthHundredths();
        return new WorstCaseCheck(
                question.scale(),
                rule.lowestRatioThousandths(),
                rule.highestRatioThousandths(),
                Math.max(0, wanted - BlendStrength.BLEND_TOLERANCE_HUNDREDTHS),
                Math.min(LegalLimits.ceilingHundredths(rule), wanted + BlendStrength.BLEND_TOLERANCE_HUNDREDTHS));
    }

    static Impossible outOfReach(FormulaQuestion question) {
        String water =
                question.directions().waterPermitted() ? "" : " The directions do not permit thinning with water.";
        return new Impossible(
                "Developer of " + AmountText.strength(question.strengthHundredths())
                        + " can be neither taken nor blended from the shelf." + water,
                "A developer of that strength, or one weaker and one stronger, none above "
                        + AmountText.strength(LegalLimits.ON_HAIR_HUNDREDTHS) + ".");
    }

    private static Impossible tooStrong(FormulaQuestion question, TechniqueRule rule) {
        String whose = rule.highestStrengthHundredths() <= LegalLimits.ON_HAIR_HUNDREDTHS
                ? "the directions of " + question.directions().name() + " permit for " + rule.technique()
                : "the law permits on hair";
        return new Impossible(
                "Developer of " + AmountText.strength(question.strengthHundredths()) + " is stronger than " + whose
                        + ".",
                "A strength of " + AmountText.strength(LegalLimits.ceilingHundredths(rule)) + " or less.");
    }
}
