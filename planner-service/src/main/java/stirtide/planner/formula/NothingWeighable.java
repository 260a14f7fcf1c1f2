package stirtide.planner.formula;

import java.util.List;
import java.util.Optional;
import stirtide.planner.formula.FormulaAnswer.Impossible;

/** Says why no weights hold on a scale, and what would help. */
final class NothingWeighable {
    private static final long LARGEST_MIX_TRIED = 1_000_000;

    private NothingWeighable() {}

    static Impossible explain(FormulaQuestion question, MixCheck check, List<List<List<Liquid>>> ladder) {
        String reason = "No weights from " + Figures.grams(question.leastMilligrams()) + " to "
                + Figures.grams(question.usableMilligrams()) + " on scale "
                + question.scale().scaleId() + " (division "
                + Figures.grams(check.errors().stepMilligrams()) + ") stay inside "
                + Figures.ratio(check.lowestRatio()) + " to " + Figures.ratio(check.highestRatio())
                + " and the strength in the worst case.";
        long ceiling = Math.min(LARGEST_MIX_TRIED, check.errors().maximumMilligrams());
        Optional<Long> larger = ceiling <= question.usableMilligrams()
                ? Optional.empty()
                : ladder.stream()
                        .flatMap(rung -> Formulas.bestOf(rung, question, check, ceiling).stream())
                        .map(blend -> blend.found().total())
                        .min(Long::compare);
        String finer = "a scale with a smaller division, or more developer on the shelf if the count is short.";
        return new Impossible(
                reason,
                larger.map(total -> "A mix of " + Figures.grams(total) + " in a bowl that holds it, " + finer)
                        .orElse("A" + finer.substring(1)));
    }
}
