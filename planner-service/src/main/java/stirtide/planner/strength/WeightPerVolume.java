package stirtide.planner.strength;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * Weight of peroxide per volume of solution. Ten grams per liter are 1 % w/v.
 *
 * @param gramsPerLiter grams of hydrogen peroxide in a liter of solution, 0 or more
 */
public record WeightPerVolume(BigDecimal gramsPerLiter) {
    /** From per cent weight by volume, grams in 100 mL. */
    public static WeightPerVolume ofPercent(BigDecimal percent) {
        return new WeightPerVolume(percent.multiply(BigDecimal.TEN));
    }

    /** Per cent weight by volume, grams in 100 mL. */
    public BigDecimal percent() {
        return gramsPerLiter.divide(BigDecimal.TEN, MathContext.DECIMAL64);
    }

    /** Per cent by weight; needs the density of the solution, in kilograms per liter. */
    public WeightShare toWeightShare(BigDecimal density) {
        return new WeightShare(percent().divide(density, MathContext.DECIMAL64));
    }

    /** Moles of peroxide in a liter. */
    public BigDecimal molesPerLiter(Oxygen conditions) {
        return gramsPerLiter.divide(conditions.gramsPerMole(), MathContext.DECIMAL64);
    }

    /** Strength when a volume is filled up to a larger one: C1 V1 = C2 V2. Both volumes in the same unit. */
    public WeightPerVolume filledUp(BigDecimal from, BigDecimal to) {
        return new WeightPerVolume(gramsPerLiter.multiply(from).divide(to, MathContext.DECIMAL64));
    }
}
