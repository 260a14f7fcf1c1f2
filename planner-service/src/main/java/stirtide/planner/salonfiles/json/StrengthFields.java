package stirtide.planner.salonfiles.json;

import java.math.BigDecimal;
import java.math.RoundingMode;
import stirtide.mixing.text.AmountText;

/** Strengths of hydrogen peroxide. One volume is taken as 0.3 per cent by weight, as in 12 % = 40 volumes (EU law). */
final class StrengthFields {
    private static final BigDecimal HUNDREDTHS_PER_VOLUME = BigDecimal.valueOf(30);

    private StrengthFields() {}

    /** The strength in hundredths of a per cent; volumes beside it must say the same. */
    static int strength(LocatedValue owner, String percentKey, String volumesKey) {
        int hundredths = owner.hundredths(percentKey);
        if (!owner.has(volumesKey)) return hundredths;
        BigDecimal written = owner.at(volumesKey).node().decimalValue().stripTrailingZeros();
        BigDecimal right = volumes(hundredths, Math.max(0, written.scale()));
        if (right.compareTo(written) != 0) {
            owner.at(volumesKey)
                    .refuse(volumes(hundredths, 1).stripTrailingZeros().toPlainString() + ", because "
                            + AmountText.percent(hundredths) + " is " + AmountText.strength(hundredths));
        }
        return hundredths;
    }

    private static BigDecimal volumes(int hundredths, int decimals) {
        return BigDecimal.valueOf(hundredths).divide(HUNDREDTHS_PER_VOLUME, decimals, RoundingMode.HALF_UP);
    }
}
