package stirtide.planner.day.batch;

import static stirtide.planner.day.state.EventRule.PlanRelevance.REPLAN;
import static stirtide.planner.day.state.Recheck.byAcceptedCommand;
import static stirtide.planner.day.state.Recheck.byCommand;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import stirtide.events.command.DayCommand;
import stirtide.events.day.BatchShare;
import stirtide.events.day.DayEvent.BatchBegun;
import stirtide.events.day.DayEvent.BatchBinned;
import stirtide.events.day.DayEvent.BatchDivided;
import stirtide.events.day.DayEvent.BatchWeighed;
import stirtide.events.day.DayEvent.BowlBegun;
import stirtide.events.day.StoredEvent;
import stirtide.planner.day.state.BatchState;
import stirtide.planner.day.state.BowlState;
import stirtide.planner.day.state.BowlWeights;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.EventRule;
import stirtide.planner.day.state.ImpossibleEventException;

/**
 * One mix for two bowls. From its begin on both bowls are bowls of their services like others; what is weighed is shared
 * out over them as it was planned until the real shares are known.
 */
public final class BatchEvents {
    /** A rule for each event of this folder. */
    public static final List<EventRule<?>> RULES = List.of(
            new EventRule<BatchBegun>(
                    BatchBegun.class,
                    REPLAN,
                    BatchEvents::begun,
                    e -> "began bowls " + e.shares().get(0).bowl() + " and "
                            + e.shares().get(1).bowl() + " as one mix",
                    byAcceptedCommand(e -> new DayCommand.BeginBatch(
                            e.shares().stream().map(BatchShare::bowl).toList(), e.personId()))),
            new EventRule<BatchWeighed>(
                    BatchWeighed.class,
                    REPLAN,
                    BatchEvents::weighed,
                    e -> "weighed the mix in bowl " + e.batch(),
                    byCommand(e -> new DayCommand.WeighBatch(e.batch(), e.lightenerMilligrams(), e.developerParts()))),
            new EventRule<BatchDivided>(
                    BatchDivided.class,
                    REPLAN,
                    BatchEvents::divided,
                    e -> "divided the mix in bowl " + e.batch(),
                    byCommand(e -> new DayCommand.DivideBatch(e.batch(), e.pouredMilligrams()))),
            new EventRule<BatchBinned>(
                    BatchBinned.class,
                    REPLAN,
                    (day, e, stored) -> both(
                            day,
                            batch(day, e.batch()),
                            bowl -> bowl.binned(stored.time(), bowl.mixedMilligrams(), e.cause())),
                    e -> "binned the mix in bowl " + e.batch(),
                    byCommand(e -> new DayCommand.BinBatch(e.batch(), e.cause()))));

    private BatchEvents() {}

    private static Day begun(Day day, BatchBegun event, StoredEvent stored) {
        var ids = event.shares().stream().map(BatchShare::bowl).toList();
        var batch = new BatchState(ids, event.planned(), Optional.empty(), false);
        int poured = event.shares().get(1).milligrams();
        var next = day;
        for (var share : event.shares()) {
            boolean second = share.bowl().equals(batch.pouredInto());
            var bowl = new BowlBegun(
                    share.bowl(),
                    share.service(),
                    share.run(),
                    event.personId(),
                    event.scaleId(),
                    share.bowlSizeId(),
                    BatchSplit.of(event.planned(), poured, second),
                    event.lifeEnds());
            next = next.with(next.requireService(share.service())
                    .begun(BowlState.begun(bowl, stored.time()).withBatch(Optional.of(batch))));
        }
        return next;
    }

    private static Day weighed(Day day, BatchWeighed event, StoredEvent stored) {
        var whole = new BowlWeights(
                event.lightenerMilligrams(),
                event.developerParts(),
                event.ratioThousandths(),
                event.insideDirections(),
                stored.time());
        var batch = batch(day, event.batch()).weighed(whole);
        long wanted = day.requireBowl(batch.pouredInto()).planned().totalMilligrams();
        int poured = (int) (whole.totalMilligrams() * wanted / batch.planned().totalMilligrams());
        return shared(day, batch, whole, poured);
    }

    private static Day divided(Day day, BatchDivided event, StoredEvent stored) {
        var batch = batch(day, event.batch()).dividedNow();
        var whole = batch.whole()
                .orElseThrow(() -> new ImpossibleEventException("the mix in " + event.batch() + " is not weighed"));
        return shared(day, batch, whole, event.pouredMilligrams());
    }

    private static Day shared(Day day, BatchState batch, BowlWeights whole, int poured) {
        return both(
                day,
                batch,
                bowl -> bowl.withBatch(Optional.of(batch))
                        .withWeighed(Optional.of(
                                BatchSplit.of(whole, poured, bowl.bowl().equals(batch.pouredInto())))));
    }

    private static Day both(Day day, BatchState batch, UnaryOperator<BowlState> change) {
        var next = day;
        for (var id : batch.bowls()) next = next.with(change.apply(next.requireBowl(id)));
        return next;
    }

    private static BatchState batch(Day day, String id) {
        return day.requireBowl(id)
                .batch()
                .orElseThrow(() -> new ImpossibleEventException("bowl " + id + " is no batch"));
    }
}
