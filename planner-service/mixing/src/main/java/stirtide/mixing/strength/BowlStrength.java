package stirtide.mixing.strength;

import stirtide.events.formula.BowlFormula;

/** Strength of a whole mix: the peroxide of the liquids over everything that is in the bowl. */
public final class BowlStrength {
    private BowlStrength() {}

    /**
     * The strength in the bowl before anything has reacted, in hundredths of a per cent by weight, rounded half up. By
     * weight the powder thins the developer: 6 % at 1:2 is 4 % in the bowl.
     *
     * @param formula a formula of more than 0 mg
     */
    public static int hundredths(BowlFormula formula) {
        return hundredths(formula.strengthHundredths(), formula.lightenerMilligrams(), formula.developerMilligrams());
    }

    /**
     * The same of liquids of one strength together.
     *
     * @param strengthHundredths strength of the liquids together, in hundredths of a per cent by weight
     * @param lightenerMilligrams weight of the lightener, 0 or more
     * @param developerMilligrams weight of all liquids, more than 0
     */
    public static int hundredths(int strengthHundredths, long lightenerMilligrams, long developerMilligrams) {
        long total = lightenerMilligrams + developerMilligrams;
        return (int) ((2 * strengthHundredths * developerMilligrams + total) / (2 * total));
    }
}
