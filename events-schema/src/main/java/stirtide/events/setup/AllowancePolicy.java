package stirtide.events.setup;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * How generous allowances are. Without a fixed fraction it follows from what running short costs against what a gram
 * thrown away costs.
 *
 * @param fixedPermille how often in a thousand the grams are to be enough, 500 to 995, if that is fixed
 * @param waitingMinutePrice what a minute costs in which a client waits for another mix, in the salon's currency
 * @param shortMilligrams grams that are usually missing when a mix runs short, 1 or more
 * @param halfLifeDays days after which an earlier visit counts half, 0 for never
 */
@RecordBuilder
public record AllowancePolicy(
        Optional<Integer> fixedPermille,
        Optional<BigDecimal> waitingMinutePrice,
        int shortMilligrams,
        int halfLifeDays) {
    /** No fraction fixed, no price of waiting known, 10 g usually short, half weight after a year. */
    public static final AllowancePolicy USUAL = new AllowancePolicy(Optional.empty(), Optional.empty(), 10_000, 365);
}
