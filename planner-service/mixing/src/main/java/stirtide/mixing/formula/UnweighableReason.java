package stirtide.mixing.formula;

import java.util.List;
import java.util.Optional;
import stirtide.mixing.formula.FormulaAnswer.Impossible;
import stirtide.mixing.strength.Liquid;
import stirtide.mixing.text.AmountText;
import stirtide.mixing.weighing.WorstCaseCheck;

/** Says why no weights hold on a scale, and what would help. */
final class UnweighableReason {
    private static final long LARGEST_MIX_TRIED = 1_000_000;

    private UnweighableReason() {}

    static Impossible explain(FormulaQuestion question, WorstCaseCheck check, List<List<List<Liquid>>> ladder) {
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
                        .flatMap(rung -> FormulaSearch.bestOf(rung, question, check, ceiling).stream())
                        .map(blend -> blend.found().total())
                        .min(Long::compare);
        String finer = "a scale with a smaller division, or more developer on the shelf if the count is short.";
        return new Impossible(
                reason,
                larger.map(total -> "A mix of " + AmountText.grams(total) + " in a bowl that holds it, " + finer)
                        .orElse("A" + finer.substring(1)));
    }
}
