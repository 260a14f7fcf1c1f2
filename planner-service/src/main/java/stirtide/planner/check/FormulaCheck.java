package stirtide.planner.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stirtide.events.formula.BowlFormula;
import stirtide.events.formula.DeveloperPart;
import stirtide.events.plan.PlannedBowl;
import stirtide.events.setup.Developer;
import stirtide.events.setup.Directions.TechniqueRule;
import stirtide.events.setup.Scale;
import stirtide.planner.planning.search.PlanQuestion;
import stirtide.planner.planning.search.PlanQuestion.RunTask;
import stirtide.planner.planning.search.PlanQuestion.ZoneTask;

/** Weights of one bowl: inside window and ceilings of every zone it feeds, however the scale errs. */
final class FormulaCheck {
    /** How far the strength of a blend may be from the strength wanted: 0.3 %, a house rule. */
    private static final int TOLERANCE_HUNDREDTHS = 30;

    private FormulaCheck() {}

    static void check(PlanQuestion question, RunTask run, List<ZoneTask> zones, PlannedBowl bowl, Findings findings) {
        BowlFormula formula = bowl.formula();
        int lowest = 0;
        int highest = Integer.MAX_VALUE;
        int ceiling = FirstFeed.LEGAL_HUNDREDTHS;
        for (ZoneTask zone : zones) {
            Optional<TechniqueRule> rule = FirstFeed.rule(question, run.lightenerId(), zone.technique());
            findings.unless(rule.isPresent(), "bowl %s: no directions for %s", bowl.bowl(), zone.technique());
            if (rule.isEmpty()) return;
            lowest = Math.max(lowest, rule.get().lowestRatioThousandths());
            highest = Math.min(highest, rule.get().highestRatioThousandths());
            ceiling = Math.min(ceiling, rule.get().highestStrengthHundredths());
        }
        findings.unless(formula.lightenerId().equals(run.lightenerId()), "bowl %s: the wrong lightener", bowl.bowl());
        findings.unless(
                formula.lowestRatioThousandths() >= lowest && formula.highestRatioThousandths() <= highest,
                "bowl %s: the window is not that of its zones",
                bowl.bowl());
        Optional<Scale> scale = question.scales().stream()
                .filter(each -> each.scaleId().equals(bowl.scaleId()))
                .findFirst();
        if (scale.isEmpty() || formula.developerParts().isEmpty()) {
            findings.unless(scale.isEmpty(), "bowl %s has no developer", bowl.bowl());
            return;
        }
        WeighingErrors weights = new WeighingErrors(scale.get(), formula);
        findings.unless(weights.weighable(), "bowl %s: scale %s cannot show the weights", bowl.bowl(), bowl.scaleId());
        findings.unless(
                weights.worst(lowest, -1) && weights.worst(highest, 1),
                "bowl %s: the ratio may leave %d to %d thousandths on scale %s",
                bowl.bowl(),
                lowest,
                highest,
                bowl.scaleId());
        strength(question, run, bowl, ceiling, weights, findings);
    }

    private static void strength(
            PlanQuestion question,
            RunTask run,
            PlannedBowl bowl,
            int ceiling,
            WeighingErrors weights,
            Findings findings) {
        List<Integer> strengths = new ArrayList<>();
        for (DeveloperPart part : bowl.formula().developerParts()) {
            Optional<Integer> strength = strengthOf(question, run, part);
            findings.unless(strength.isPresent(), "bowl %s: %s may not be used", bowl.bowl(), part.developerId());
            if (strength.isEmpty()) return;
            strengths.add(strength.get());
        }
        int wanted = run.strengthHundredths();
        findings.unless(wanted <= ceiling, "bowl %s: a strength of %d is not permitted", bowl.bowl(), wanted);
        findings.unless(
                weights.strengthWithin(
                        strengths, wanted - TOLERANCE_HUNDREDTHS, Math.min(ceiling, wanted + TOLERANCE_HUNDREDTHS)),
                "bowl %s: the blend may miss %d hundredths or pass %d",
                bowl.bowl(),
                wanted,
                ceiling);
        findings.unless(
                Math.abs(bowl.formula().strengthHundredths() - weights.strength(strengths)) <= 1,
                "bowl %s: the strength told is not that of the parts",
                bowl.bowl());
    }

    private static Optional<Integer> strengthOf(PlanQuestion question, RunTask run, DeveloperPart part) {
        if (part.developerId().equals(DeveloperPart.WATER))
            return FirstFeed.directions(question, run.lightenerId())
                    .filter(directions -> directions.waterPermitted())
                    .map(directions -> 0);
        return question.developers().stream()
                .filter(each -> each.developerId().equals(part.developerId()))
                .filter(each -> each.countedMilligrams().orElse(Integer.MAX_VALUE) >= part.milligrams())
                .map(Developer::strengthHundredths)
                .findFirst();
    }
}
