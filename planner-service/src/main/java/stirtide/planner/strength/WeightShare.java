package stirtide.planner.strength;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Share by weight: the only kind of strength the tool plans, blends and limits with, because it weighs.
 *
 * @param percent grams of hydrogen peroxide in 100 g of solution, 0 to 100
 */
public record WeightShare(BigDecimal percent) {
    /** From hundredths of a per cent, the whole-number form of plans and files. */
    public static WeightShare ofHundredths(int hundredths) {
        return new WeightShare(BigDecimal.valueOf(hundredths, 2));
    }

    /** Hundredths of a per cent, rounded up: a limit checked with it is never passed by rounding. */
    public int hundredthsRoundedUp() {
        return percent.movePointRight(2).setScale(0, RoundingMode.CEILING).intValueExact();
    }

    /** Weight per volume; needs the density of the solution, in kilograms per liter. */
    public WeightPerVolume toWeightPerVolume(BigDecimal density) {
        return WeightPerVolume.ofPercent(percent.multiply(density));
    }

    /** Volumes by the trade's convention that 3 % is 10 vol. Common practice, no source. */
    public OxygenVolumes volumesByConvention() {
        return new OxygenVolumes(percent.multiply(BigDecimal.TEN).divide(BigDecimal.valueOf(3), MathContext.DECIMAL64));
    }
}
