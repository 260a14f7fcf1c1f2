package stirtide.mixing.formula;

import java.util.List;
import stirtide.events.setup.Developer;
import stirtide.events.setup.Directions;
import stirtide.events.setup.Scale;

/**
 * What is to be mixed, from what and on which scale.
 *
 * @param directions directions of the lightener
 * @param technique technique the mix is for; its window and ceiling hold
 * @param strengthHundredths strength of developer wanted, in hundredths of a per cent by weight
 * @param ratioThousandths developer per lightener wanted, in thousandths
 * @param shelf developers on the shelf; one that was counted gives no more than its count
 * @param neededMilligrams grams the zones need, 1 or more
 * @param residueMilligrams grams that stay on bowl and brush, 0 or more
 * @param usableMilligrams most the bowl may hold
 * @param scale scale to weigh on
 */
public record FormulaQuestion(
        Directions directions,
        String technique,
        int strengthHundredths,
        int ratioThousandths,
        List<Developer> shelf,
        int neededMilligrams,
        int residueMilligrams,
        int usableMilligrams,
        Scale scale) {
    /** @throws IllegalArgumentException if need, residue or ratio is out of range: the caller's mistake, not a refusal */
    public FormulaQuestion {
        shelf = List.copyOf(shelf);
        if (neededMilligrams < 1 || residueMilligrams < 0 || ratioThousandths < 1 || strengthHundredths < 0)
            throw new IllegalArgumentException("need and ratio must be at least 1, residue and strength at least 0: "
                    + neededMilligrams + ", " + ratioThousandths + ", " + residueMilligrams + ", "
                    + strengthHundredths);
    }

    /** Least that must be in the bowl: need and residue, in milligrams. */
    long leastMilligrams() {
        return (long) neededMilligrams + residueMilligrams;
    }
}
