package stirtide.mixing.formula;

import stirtide.events.formula.BowlFormula;

/** What to weigh, or why there is nothing that may be weighed. */
public sealed interface FormulaAnswer {
    /**
     * What to weigh.
     *
     * @param formula the weights, with the true range of their ratio on this scale
     * @param surplusMilligrams grams beyond need and residue, 0 or more
     */
    record Weigh(BowlFormula formula, int surplusMilligrams) implements FormulaAnswer {}

    /**
     * Nothing may be weighed.
     *
     * @param reason why, in one sentence
     * @param whatHelps what would be accepted, in one sentence
     */
    record Impossible(String reason, String whatHelps) implements FormulaAnswer {}
}
