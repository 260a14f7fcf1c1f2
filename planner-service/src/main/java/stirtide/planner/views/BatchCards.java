package stirtide.planner.views;

import java.util.List;
import java.util.Optional;
import stirtide.events.plan.PlannedBowl;
import stirtide.events.view.DayView.BatchCard;
import stirtide.events.view.DayView.ShareCard;
import stirtide.planner.day.state.BowlIds;
import stirtide.planner.day.state.BowlState;
import stirtide.planner.day.state.Day;

/** Cards of mixes for two bowls, planned and in use. */
final class BatchCards {
    private BatchCards() {}

    /** The mix a planned bowl may be part of. */
    static Optional<BatchCard> of(Day day, PlannedBowl bowl) {
        return PlannedMixes.batchOf(day, bowl)
                .map(batch -> new BatchCard(
                        batch.shares().stream()
                                .map(share -> share(day, share.bowl(), share.bowlSizeId(), share.milligrams()))
                                .toList(),
                        MixCards.planned(
                                day, batch.formula(), batch.shares().get(0).bowlSizeId(), batch.scaleId()),
                        Optional.empty(),
                        false));
    }

    /** The mix a bowl in use is or was part of. */
    static Optional<BatchCard> of(Day day, BowlState bowl) {
        return bowl.batch().map(batch -> {
            List<BowlState> bowls =
                    batch.bowls().stream().flatMap(id -> day.bowl(id).stream()).toList();
            return new BatchCard(
                    bowls.stream()
                            .map(one -> share(
                                    day,
                                    one.bowl(),
                                    one.bowlSizeId(),
                                    one.planned().totalMilligrams()))
                            .toList(),
                    MixCards.planned(day, batch.planned(), bowls.get(0).bowlSizeId(), bowl.scaleId()),
                    batch.whole().map(MixCards::weighed),
                    batch.divided());
        });
    }

    private static ShareCard share(Day day, String bowl, String bowlSizeId, int milligrams) {
        var booking =
                day.service(BowlIds.serviceOf(bowl).orElseThrow()).orElseThrow().booking();
        return new ShareCard(bowl, booking.chair(), booking.clientRef(), bowlSizeId, milligrams);
    }
}
