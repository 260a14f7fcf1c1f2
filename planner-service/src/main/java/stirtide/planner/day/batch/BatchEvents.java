package stirtide.planner.day.batch;

import java.util.Optional;
import java.util.function.UnaryOperator;
import stirtide.events.day.BatchShare;
import stirtide.events.day.DayEvent;
import stirtide.events.day.StoredEvent;
import stirtide.planner.day.Evolver;
import stirtide.planner.day.state.BatchState;
import stirtide.planner.day.state.BowlState;
import stirtide.planner.day.state.BowlState.Closed;
import stirtide.planner.day.state.BowlState.Weighed;
import stirtide.planner.day.state.Day;

/**
 * What the events of a batch change. Until a mix is divided, what each of its bowls holds is counted by the shares that
 * were planned; that is for the shelf and the costs only, nothing of it goes to a chair.
 */
public final class BatchEvents {
    private BatchEvents() {}

    /** The day after an event of a batch, empty when the event is not one. */
    public static Optional<Day> apply(Day day, StoredEvent stored) {
        var event = stored.event();
        if (event instanceof DayEvent.BatchBegun begun) return Optional.of(begin(day, stored, begun));
        if (event instanceof DayEvent.BatchWeighed weighed) return Optional.of(weigh(day, stored, weighed));
        if (event instanceof DayEvent.BatchDivided divided)
            return Optional.of(divide(day, stored, divided.batch(), divided.pouredMilligrams()));
        if (event instanceof DayEvent.BatchBinned binned) {
            var batch = batch(day, stored, binned.batch());
            return Optional.of(both(
                    day,
                    stored,
                    batch,
                    bowl -> bowl.closed(
                            new Closed(stored.time(), bowl.mixedMilligrams(), Optional.of(binned.cause())))));
        }
        return Optional.empty();
    }

    private static Day begin(Day day, StoredEvent stored, DayEvent.BatchBegun begun) {
        var ids = begun.shares().stream().map(BatchShare::bowl).toList();
        var batch = new BatchState(ids, begun.planned(), Optional.empty(), false);
        int poured = begun.shares().get(1).milligrams();
        var next = day;
        for (var share : begun.shares()) {
            var service = day.service(share.service())
                    .orElseThrow(() -> Evolver.broken(stored, "there is no service " + share.service()));
            boolean second = share.bowl().equals(batch.pouredInto());
            next = next.with(service.begun(new BowlState(
                    share.bowl(),
                    share.service(),
                    share.run(),
                    begun.personId(),
                    begun.scaleId(),
                    share.bowlSizeId(),
                    BatchSplit.of(begun.planned(), poured, second),
                    stored.time(),
                    begun.lifeEnds(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    false,
                    false,
                    Optional.of(batch))));
        }
        return next;
    }

    private static Day weigh(Day day, StoredEvent stored, DayEvent.BatchWeighed weighed) {
        var whole = new Weighed(
                weighed.lightenerMilligrams(),
                weighed.developerParts(),
                weighed.ratioThousandths(),
                weighed.insideDirections(),
                stored.time());
        var batch = batch(day, stored, weighed.batch()).weighed(whole);
        long wanted = bowl(day, stored, batch.pouredInto()).planned().totalMilligrams();
        int poured = (int) (whole.totalMilligrams() * wanted / batch.planned().totalMilligrams());
        return shared(day, stored, batch, whole, poured);
    }

    private static Day divide(Day day, StoredEvent stored, String id, int poured) {
        var batch = batch(day, stored, id).dividedNow();
        var whole = batch.whole().orElseThrow(() -> Evolver.broken(stored, "nobody has weighed the mix in " + id));
        return shared(day, stored, batch, whole, poured);
    }

    private static Day shared(Day day, StoredEvent stored, BatchState batch, Weighed whole, int poured) {
        return both(
                day,
                stored,
                batch,
                bowl -> bowl.sharing(
                        batch, BatchSplit.of(whole, poured, bowl.bowl().equals(batch.pouredInto()))));
    }

    private static Day both(Day day, StoredEvent stored, BatchState batch, UnaryOperator<BowlState> change) {
        var next = day;
        for (var id : batch.bowls()) {
            var bowl = bowl(next, stored, id);
            next = next.with(next.service(bowl.service()).orElseThrow().with(change.apply(bowl)));
        }
        return next;
    }

    private static BatchState batch(Day day, StoredEvent stored, String id) {
        return bowl(day, stored, id).batch().orElseThrow(() -> Evolver.broken(stored, "bowl " + id + " is no batch"));
    }

    private static BowlState bowl(Day day, StoredEvent stored, String id) {
        return day.bowl(id).orElseThrow(() -> Evolver.broken(stored, "there is no bowl " + id));
    }
}
