package stirtide.bar.views;

import java.util.List;
import java.util.stream.IntStream;
import stirtide.events.view.DayView;
import stirtide.events.view.DayView.PartCard;

/**
 * What is to be weighed for a bowl of the queue, for both bowls together where they are one mix.
 *
 * @param lightenerMilligrams lightener
 * @param parts liquids in the order of weighing
 * @param strengthHundredths strength of the liquids together
 * @param wantedRatioThousandths ratio wanted
 * @param lowestRatioThousandths lower end of the directions' window
 * @param highestRatioThousandths upper end of the directions' window
 */
record WeighCard(
        int lightenerMilligrams,
        List<PartCard> parts,
        int strengthHundredths,
        int wantedRatioThousandths,
        int lowestRatioThousandths,
        int highestRatioThousandths) {
    static WeighCard of(DayView.QueuedBowl queued) {
        if (queued.batch().isPresent()) {
            DayView.PlannedBowlCard whole = queued.batch().get().planned();
            return new WeighCard(
                    whole.lightenerMilligrams(),
                    whole.parts(),
                    whole.strengthHundredths(),
                    whole.wantedRatioThousandths(),
                    whole.lowestRatioThousandths(),
                    whole.highestRatioThousandths());
        }
        var formula = queued.bowl().formula();
        return new WeighCard(
                formula.lightenerMilligrams(),
                IntStream.range(0, formula.developerParts().size())
                        .mapToObj(i -> new PartCard(
                                formula.developerParts().get(i).developerId(),
                                queued.partNames().get(i),
                                queued.partStrengthsHundredths().get(i),
                                formula.developerParts().get(i).milligrams()))
                        .toList(),
                formula.strengthHundredths(),
                formula.wantedRatioThousandths(),
                formula.lowestRatioThousandths(),
                formula.highestRatioThousandths());
    }

    int totalMilligrams() {
        return lightenerMilligrams
                + parts.stream().mapToInt(PartCard::milligrams).sum();
    }
}
