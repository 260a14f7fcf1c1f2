package stirtide.planner.strength;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * Volume strength: one liter of solution gives this many liters of oxygen. Two moles of peroxide give one of oxygen
 * (2 H2O2 -> 2 H2O + O2).
 *
 * @param volumes liters of oxygen per liter of solution, 0 or more
 */
public record OxygenVolumes(BigDecimal volumes) {
    private static final BigDecimal TWO = BigDecimal.valueOf(2);

    /** Weight of peroxide per volume of solution that gives this much oxygen. */
    public WeightPerVolume toWeightPerVolume(Oxygen conditions) {
        return new WeightPerVolume(volumes.multiply(TWO)
                .multiply(conditions.gramsPerMole())
                .divide(conditions.litersPerMole(), MathContext.DECIMAL64));
    }

    /** Oxygen that a solution gives. */
    public static OxygenVolumes of(WeightPerVolume strength, Oxygen conditions) {
        return new OxygenVolumes(strength.gramsPerLiter()
                .multiply(conditions.litersPerMole())
                .divide(conditions.gramsPerMole().multiply(TWO), MathContext.DECIMAL64));
    }

    /**
     * The trade's convention that 10 vol is 3 %, as per cent by weight. Common practice, no source; within 1.5 % of the
     * stoichiometry of weight per volume, and never used where a limit is checked.
     */
    public WeightShare byConvention() {
        return new WeightShare(volumes.multiply(BigDecimal.valueOf(3)).divide(BigDecimal.TEN, MathContext.DECIMAL64));
    }
}
