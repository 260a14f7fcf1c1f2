package stirtide.events.formula;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;

/**
 * What goes into one bowl.
 *
 * @param lightenerId lightener
 * @param lightenerMilligrams weight of lightener
 * @param developerParts liquids in the order of weighing, one to three
 * @param strengthHundredths strength of the liquids together, in hundredths of a per cent by weight
 * @param wantedRatioThousandths ratio wanted, developer per lightener in thousandths
 * @param lowestRatioThousandths lower end of the ratio window of the directions
 * @param highestRatioThousandths upper end of the ratio window of the directions
 * @param worstLowRatioThousandths smallest true ratio if the scale errs as far as it may, rounded down
 * @param worstHighRatioThousandths largest true ratio if the scale errs as far as it may, rounded up
 */
@RecordBuilder
public record BowlFormula(
        String lightenerId,
        int lightenerMilligrams,
        List<DeveloperPart> developerParts,
        int strengthHundredths,
        int wantedRatioThousandths,
        int lowestRatioThousandths,
        int highestRatioThousandths,
        int worstLowRatioThousandths,
        int worstHighRatioThousandths)
        implements BowlFormulaBuilder.With {
    public BowlFormula {
        developerParts = List.copyOf(developerParts);
    }

    /** Weight of all liquids together, in milligrams. */
    public int developerMilligrams() {
        return developerParts.stream().mapToInt(DeveloperPart::milligrams).sum();
    }

    /** Weight of the whole mix, in milligrams. */
    public int totalMilligrams() {
        return lightenerMilligrams + developerMilligrams();
    }
}
