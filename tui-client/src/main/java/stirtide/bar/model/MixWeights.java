package stirtide.bar.model;

import java.util.List;
import stirtide.events.view.DayView;
import stirtide.events.view.DayView.PartCard;
import stirtide.events.view.DayView.PlannedBowlCard;

/**
 * What is to be weighed for a mix.
 *
 * @param lightenerMilligrams lightener
 * @param parts liquids in the order of weighing
 * @param strengthHundredths strength of the liquids together
 * @param wantedRatioThousandths ratio wanted
 * @param lowestRatioThousandths lower end of the directions' window
 * @param highestRatioThousandths upper end of the directions' window
 */
public record MixWeights(
        int lightenerMilligrams,
        List<PartCard> parts,
        int strengthHundredths,
        int wantedRatioThousandths,
        int lowestRatioThousandths,
        int highestRatioThousandths) {
    /** What a bowl that is begun, or a whole mix for two bowls, was planned with. */
    public static MixWeights of(PlannedBowlCard planned) {
        return new MixWeights(
                planned.lightenerMilligrams(),
                planned.parts(),
                planned.strengthHundredths(),
                planned.wantedRatioThousandths(),
                planned.lowestRatioThousandths(),
                planned.highestRatioThousandths());
    }

    /** What is planned for a bowl of the queue alone. */
    public static MixWeights alone(DayView.QueuedBowl queued) {
        var formula = queued.bowl().formula();
        return new MixWeights(
                formula.lightenerMilligrams(),
                queued.parts(),
                formula.strengthHundredths(),
                formula.wantedRatioThousandths(),
                formula.lowestRatioThousandths(),
                formula.highestRatioThousandths());
    }

    /** What is planned for a bowl of the queue, for both bowls together where they are one mix. */
    public static MixWeights of(DayView.QueuedBowl queued) {
        return queued.batch().map(batch -> of(batch.planned())).orElseGet(() -> alone(queued));
    }

    /** All liquids together. */
    public int developerMilligrams() {
        return parts.stream().mapToInt(PartCard::milligrams).sum();
    }

    /** The whole mix. */
    public int totalMilligrams() {
        return lightenerMilligrams + developerMilligrams();
    }
}
