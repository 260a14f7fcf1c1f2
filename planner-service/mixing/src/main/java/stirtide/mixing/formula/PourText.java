package stirtide.mixing.formula;

import java.util.Map;
import stirtide.events.formula.BowlFormula;
import stirtide.mixing.text.AmountText;
import stirtide.mixing.weighing.Ratios;

/** Says in one sentence what to do with a bowl next. */
public final class PourText {
    private PourText() {}

    /**
     * The sentence.
     *
     * @param next what to do
     * @param names names of products by id; an id without a name stands for itself
     */
    public static String sentence(NextPour next, Map<String, String> names) {
        if (next instanceof NextPour.Add add) return add(add, names.getOrDefault(add.partId(), add.partId()));
        if (next instanceof NextPour.Ready ready)
            return "Ready: " + onThisScale(ready.real()) + ", " + AmountText.grams(ready.surplusMilligrams())
                    + " more than needed"
                    + (ready.overfullMilligrams() == 0
                            ? "."
                            : " and " + AmountText.grams(ready.overfullMilligrams())
                                    + " more than the bowl is meant to hold: stir with care.");
        if (next instanceof NextPour.BinAndRestart bin) return bin.reason();
        NextPour.Unreadable unreadable = (NextPour.Unreadable) next;
        return unreadable.reason() + " Accepted: " + unreadable.whatHelps();
    }

    private static String add(NextPour.Add add, String name) {
        String what = add.correction() ? "Correct: add " : "Weigh ";
        String how = add.continues() ? ", no tare in between" : "";
        return what + AmountText.grams(add.milligrams()) + " " + name + how + ", until the scale shows "
                + AmountText.grams(add.displayMilligrams()) + ". The bowl is then "
                + onThisScale(add.expected()) + ".";
    }

    /**
     * The real ratio of a formula and how far it may be off: {@code "1:2, between 1:1.93 and 1:2.07 on this scale"}. The
     * ends are rounded outward to hundredths, so that the true ratio is always between them.
     */
    static String onThisScale(BowlFormula formula) {
        return AmountText.ratio(Ratios.thousandths(formula.lightenerMilligrams(), formula.developerMilligrams()))
                + ", between " + AmountText.ratio(formula.worstLowRatioThousandths() / 10 * 10L) + " and "
                + AmountText.ratio((formula.worstHighRatioThousandths() + 9) / 10 * 10L) + " on this scale";
    }
}
