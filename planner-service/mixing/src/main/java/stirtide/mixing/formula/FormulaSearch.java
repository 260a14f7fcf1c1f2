package stirtide.mixing.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stirtide.events.formula.BowlFormula;
import stirtide.events.formula.DeveloperPart;
import stirtide.events.setup.Directions.TechniqueRule;
import stirtide.mixing.strength.BlendStrength;
import stirtide.mixing.strength.Liquid;
import stirtide.mixing.text.AmountText;
import stirtide.mixing.weighing.WorstCaseCheck;

/**
 * Finds what to weigh: the smallest mix that is enough and stays inside the directions however the scale errs, and
 * among those the one closest to the wanted ratio.
 *
 * <p>A developer of the wanted strength is used where the shelf has one that suffices. Else two are blended by
 * alligation by weight; with water only where the directions permit and no two developers do; three where no two do.
 */
public final class FormulaSearch {
    private static final long LARGEST_MIX_TRIED = 1_000_000;

    private FormulaSearch() {}

    /** Answers with weights, or says why there are none and what would help. There is no way round a refusal. */
    public static FormulaAnswer find(FormulaQuestion question) {
        Optional<TechniqueRule> rule = FormulaLimits.ruleOf(question);
        if (rule.isEmpty()) return FormulaLimits.unknownTechnique(question);
        Optional<FormulaAnswer.Impossible> refusal = FormulaLimits.refuse(question, rule.get());
        if (refusal.isPresent()) return refusal.get();
        WorstCaseCheck check = FormulaLimits.checkOf(question, rule.get());
        List<List<List<Liquid>>> ladder = BlendCandidates.ladder(question);
        if (ladder.isEmpty()) return FormulaLimits.outOfReach(question);
        for (List<List<Liquid>> rung : ladder) {
            Optional<Blend> best = bestOf(rung, question, check, question.usableMilligrams());
            if (best.isPresent()) return weigh(best.get(), question, rule.get(), check);
        }
        return unweighable(question, check, ladder);
    }

    /** A found mix and the liquids its parts belong to. */
    private record Blend(WeightSearch.Found found, List<Liquid> liquids) {}

    private static Optional<Blend> bestOf(
            List<List<Liquid>> rung, FormulaQuestion question, WorstCaseCheck check, long usable) {
        Optional<Blend> best = Optional.empty();
        for (List<Liquid> liquids : rung) {
            LiquidSplit split = new LiquidSplit(check, liquids, question.strengthHundredths());
            long most = best.map(blend -> blend.found().total()).orElse(usable);
            Optional<WeightSearch.Found> found =
                    WeightSearch.search(check, split, question.ratioThousandths(), question.leastMilligrams(), most);
            if (found.isPresent()
                    && (best.isEmpty()
                            || WeightSearch.better(found.get(), best.get().found(), question.ratioThousandths())))
                best = Optional.of(new Blend(found.get(), liquids));
        }
        return best;
    }

    private static FormulaAnswer weigh(
            Blend blend, FormulaQuestion question, TechniqueRule rule, WorstCaseCheck check) {
        int lightener = blend.found().lightener();
        int[] parts = blend.found().parts();
        int[] kinds = WorstCaseCheck.eachOnce(parts.length);
        int[] amounts = WorstCaseCheck.withFirst(lightener, parts);
        List<DeveloperPart> developerParts = new ArrayList<>();
        for (int k = 0; k < parts.length; k++)
            developerParts.add(new DeveloperPart(blend.liquids().get(k).id(), parts[k]));
        BowlFormula formula = new BowlFormula(
                question.directions().lightenerId(),
                lightener,
                developerParts,
                BlendStrength.blendHundredths(blend.liquids(), parts),
                question.ratioThousandths(),
                rule.lowestRatioThousandths(),
                rule.highestRatioThousandths(),
                check.worstLowRatio(kinds, amounts),
                check.worstHighRatio(kinds, amounts));
        return new FormulaAnswer.Weigh(formula, (int) (blend.found().total() - question.leastMilligrams()));
    }

    /** Why no weights hold on a scale, and what would help. */
    private static FormulaAnswer unweighable(
            FormulaQuestion question, WorstCaseCheck check, List<List<List<Liquid>>> ladder) {
        String reason = "No weights from " + AmountText.grams(question.leastMilligrams()) + " to "
                + AmountText.grams(question.usableMilligrams()) + " on scale "
                + question.scale().scaleId() + " (division "
                + AmountText.grams(check.errors().stepMilligrams()) + ") stay inside "
                + AmountText.ratio(check.lowestRatio()) + " to " + AmountText.ratio(check.highestRatio())
                + " and the strength in the worst case.";
        long ceiling = Math.min(LARGEST_MIX_TRIED, check.errors().maximumMilligrams());
        Optional<Long> larger = ceiling <= question.usableMilligrams()
                ? Optional.empty()
                : ladder.stream()
                        .flatMap(rung -> bestOf(rung, question, check, ceiling).stream())
                        .map(blend -> blend.found().total())
                        .min(Long::compare);
        String finer = "a scale with a smaller division, or more developer on the shelf if the count is short.";
        return new FormulaAnswer.Impossible(
                reason,
                larger.map(total -> "A mix of " + AmountText.grams(total) + " in a bowl that holds it, " + finer)
                        .orElse("A" + finer.substring(1)));
    }
}
