package stirtide.bar.panels.weighing;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import stirtide.bar.text.BowlText;
import stirtide.events.formula.BowlFormula;
import stirtide.events.formula.DeveloperPart;
import stirtide.events.view.DayView;
import stirtide.events.view.ScaleCard;

/**
 * What is to be weighed into a bowl.
 *
 * @param bowl bowl id
 * @param chair chair number
 * @param clientRef client
 * @param zones zones it feeds
 * @param lightenerName lightener
 * @param lightenerMilligrams planned lightener
 * @param parts planned liquids in the order of weighing
 * @param wantedRatioThousandths ratio wanted
 * @param lowestRatioThousandths lower end of the directions' window
 * @param highestRatioThousandths upper end of the directions' window
 * @param usableMilligrams most the bowl may hold, empty until the service has reported it
 * @param scale scale it is weighed on
 * @param batch the mix for two bowls that is weighed, when it is one; the weights are for both together then
 */
record WeighTarget(
        String bowl,
        int chair,
        String clientRef,
        List<String> zones,
        String lightenerName,
        int lightenerMilligrams,
        List<DayView.PartCard> parts,
        int wantedRatioThousandths,
        int lowestRatioThousandths,
        int highestRatioThousandths,
        Optional<Integer> usableMilligrams,
        ScaleCard scale,
        Optional<DayView.BatchCard> batch) {
    static WeighTarget of(DayView.LiveBowl live, DayView view) {
        Optional<DayView.BatchCard> batch = live.batch().filter(mix -> !mix.divided());
        if (batch.isPresent()) return of(batch.get(), BowlText.zones(live, view), view);
        DayView.PlannedBowlCard planned = live.planned();
        return new WeighTarget(
                live.bowl(),
                live.chair(),
                live.clientRef(),
                BowlText.zones(live, view),
                planned.lightenerName(),
                planned.lightenerMilligrams(),
                planned.parts(),
                planned.wantedRatioThousandths(),
                planned.lowestRatioThousandths(),
                planned.highestRatioThousandths(),
                Optional.of(planned.usableMilligrams()),
                scale(view, planned.scaleId()),
                Optional.empty());
    }

    /** The whole mix for two bowls, in the bowl it is mixed in. */
    static WeighTarget of(DayView.BatchCard batch, List<String> zones, DayView view) {
        DayView.PlannedBowlCard planned = batch.planned();
        return new WeighTarget(
                batch.mixedIn().bowl(),
                batch.mixedIn().chair(),
                batch.mixedIn().clientRef(),
                zones,
                planned.lightenerName(),
                planned.lightenerMilligrams(),
                planned.parts(),
                planned.wantedRatioThousandths(),
                planned.lowestRatioThousandths(),
                planned.highestRatioThousandths(),
                Optional.of(planned.usableMilligrams()),
                scale(view, planned.scaleId()),
                Optional.of(batch));
    }

    static WeighTarget of(DayView.QueuedBowl queued, DayView view) {
        BowlFormula formula = queued.bowl().formula();
        List<DeveloperPart> liquids = formula.developerParts();
        List<DayView.PartCard> parts = IntStream.range(0, liquids.size())
                .mapToObj(i -> new DayView.PartCard(
                        liquids.get(i).developerId(),
                        queued.partNames().get(i),
                        queued.partStrengthsHundredths().get(i),
                        liquids.get(i).milligrams()))
                .toList();
        return new WeighTarget(
                queued.bowl().bowl(),
                queued.bowl().chair(),
                queued.clientRef(),
                queued.bowl().zones(),
                queued.lightenerName(),
                formula.lightenerMilligrams(),
                parts,
                formula.wantedRatioThousandths(),
                formula.lowestRatioThousandths(),
                formula.highestRatioThousandths(),
                Optional.empty(),
                scale(view, queued.bowl().scaleId()),
                Optional.empty());
    }

    /** The scale of that id; the first where the salon has taken it away since, as the service has it. */
    private static ScaleCard scale(DayView view, String scaleId) {
        return view.scales().stream()
                .filter(scale -> scale.scaleId().equals(scaleId))
                .findFirst()
                .orElseGet(() -> view.scales().get(0));
    }

    int developerMilligrams() {
        return parts.stream().mapToInt(DayView.PartCard::milligrams).sum();
    }
}
