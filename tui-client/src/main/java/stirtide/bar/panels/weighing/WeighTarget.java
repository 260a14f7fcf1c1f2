package stirtide.bar.panels.weighing;

import java.util.List;
import java.util.Optional;
import stirtide.bar.model.MixWeights;
import stirtide.bar.text.BowlText;
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
 * @param mix planned weights and the window of the directions
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
        MixWeights mix,
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
                MixWeights.of(planned),
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
                MixWeights.of(planned),
                Optional.of(planned.usableMilligrams()),
                scale(view, planned.scaleId()),
                Optional.of(batch));
    }

    static WeighTarget of(DayView.QueuedBowl queued, DayView view) {
        return new WeighTarget(
                queued.bowl().bowl(),
                queued.bowl().chair(),
                queued.clientRef(),
                queued.bowl().zones(),
                queued.lightenerName(),
                MixWeights.alone(queued),
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
}
