package stirtide.planner.day;

import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import stirtide.events.day.ClientTests;
import stirtide.events.day.DayEvent;
import stirtide.events.day.StoredEvent;
import stirtide.events.setup.SetupPiece;
import stirtide.planner.day.allowance.AllowanceEvents;
import stirtide.planner.day.batch.BatchEvents;
import stirtide.planner.day.history.ClientErasure;
import stirtide.planner.day.setup.SetupPieces;
import stirtide.planner.day.state.Bookings;
import stirtide.planner.day.state.BowlIds;
import stirtide.planner.day.state.BowlState;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.ServiceState;

/**
 * The next state of a day after an event. Total for every history that {@link Decider} and {@link Ticker} can have
 * written; anything else is a broken log and stops the replay with the place where it broke.
 */
public final class Evolver {
    private Evolver() {}

    /**
     * The day after one more event.
     *
     * @throws IllegalStateException when the event cannot have happened on this day
     */
    public static Day evolve(Day day, StoredEvent event) {
        // What is taken back may be anywhere in the history, so the rest is played again without it.
        if (event.event() instanceof DayEvent.ActionTakenBack)
            return replay(day.history().plus(event).events());
        return step(day, event, Set.of());
    }

    public static Day replay(List<StoredEvent> events) {
        return replayWithout(events, takenBack(events));
    }

    static Day replayWithout(List<StoredEvent> events, Set<Long> leftOut) {
        var day = Day.UNOPENED;
        for (var event : events) day = step(day, event, leftOut);
        return day;
    }

    /** Revisions of all events that were taken back. */
    static Set<Long> takenBack(List<StoredEvent> events) {
        var revisions = new HashSet<Long>();
        for (var event : events)
            if (event.event() instanceof DayEvent.ActionTakenBack back) revisions.add(back.takenBackRevision());
        return revisions;
    }

    static Day step(Day day, StoredEvent event, Set<Long> leftOut) {
        if (event.revision() != day.revision() + 1)
            throw broken(event, "it does not follow revision " + day.revision());
        boolean counts = !leftOut.contains(event.revision());
        var next = counts ? apply(day, event) : day;
        var time = ofThePlan(event.event()) ? day.time() : later(day.time(), event.time());
        return next.stamped(
                event.revision(),
                time,
                counts && mattersToPlan(event.event()),
                day.history().plus(event));
    }

    /** The salon's clock may be set back by a second; the day itself never runs backwards. */
    private static Instant later(Instant one, Instant other) {
        return one.isAfter(other) ? one : other;
    }

    private static boolean ofThePlan(DayEvent event) {
        return event instanceof DayEvent.PlanDrawn || event instanceof DayEvent.PlanKept;
    }

    /** Whether a plan drawn before this event has to be drawn anew. */
    static boolean mattersToPlan(DayEvent event) {
        return !(ofThePlan(event)
                || event instanceof DayEvent.BowlDue
                || event instanceof DayEvent.LifeEnding
                || event instanceof DayEvent.ClientErased
                || event instanceof DayEvent.AlarmAcknowledged
                || event instanceof DayEvent.TestRecorded
                || event instanceof DayEvent.LevelsRecorded
                || event instanceof DayEvent.SwatchRecorded
                || event instanceof DayEvent.StripRecorded
                || event instanceof DayEvent.DayClosed);
    }

    private static Day apply(Day day, StoredEvent stored) {
        var event = stored.event();
        if (event instanceof DayEvent.DayOpened opened) return day.opened(opened.setup());
        if (event instanceof DayEvent.ActionTakenBack) return day;
        if (event instanceof DayEvent.ShiftChanged changed) return day.shift(changed.personId(), changed.onDuty());
        if (event instanceof DayEvent.SetupChanged changed) return setUp(day, changed.piece());
        if (event instanceof DayEvent.AlarmAcknowledged seen) return day.acknowledge(seen.alarmId(), stored.actor());
        if (event instanceof DayEvent.ClientErased erased) return ClientErasure.of(day, erased.clientId());
        if (event instanceof DayEvent.DayClosed) return day.closedNow();
        if (event instanceof DayEvent.PlanDrawn drawn) return show(day, drawn);
        if (event instanceof DayEvent.PlanKept kept) return keep(day, kept);
        if (event instanceof DayEvent.BowlDue due)
            return mark(day, due.bowl(), old -> new ServiceState.DueMark(Optional.of(due.dueAt()), old.lateAt()));
        if (event instanceof DayEvent.BowlLate late)
            return mark(day, late.bowl(), old -> new ServiceState.DueMark(old.dueAt(), Optional.of(late.dueAt())));
        return AllowanceEvents.apply(day, stored)
                .or(() -> BatchEvents.apply(day, stored))
                .orElseGet(() -> applyToService(day, stored));
    }

    /** A change reaches services that have not begun; what is being applied stays as planned. */
    private static Day setUp(Day day, SetupPiece piece) {
        var next = day.inForce(SetupPieces.apply(day.opened(), piece));
        if (piece instanceof SetupPiece.OnePerson one)
            next = next.hoursOfSetup(one.person().personId());
        for (var service : day.services()) if (service.startedAt().isEmpty()) next = next.learned(service);
        return next;
    }

    private static Day applyToService(Day day, StoredEvent stored) {
        var event = stored.event();
        if (event instanceof DayEvent.ServiceBooked booked) return book(day, stored, booked);
        if (event instanceof DayEvent.ServiceMoved moved)
            return day.with(
                    service(day, stored, moved.service()).moved(Bookings.moved(booking(day, stored, moved), moved)));
        if (event instanceof DayEvent.ServiceCancelled cancelled)
            return day.with(service(day, stored, cancelled.service()).cancelled(stored.time()));
        if (event instanceof DayEvent.ServiceStarted started)
            return day.with(service(day, stored, started.service()).started(stored.time()));
        if (event instanceof DayEvent.ZoneFinished done)
            return day.with(service(day, stored, done.service()).zoneDone(done.zone(), stored.time()));
        if (event instanceof DayEvent.SectionRinsed rinse)
            return day.with(service(day, stored, rinse.service()).rinsed(rinse.section(), stored.time()));
        if (event instanceof DayEvent.TestRecorded test) {
            var tested = service(day, stored, test.service());
            var tests = tested.booking().tests().orElse(ClientTests.NONE).with(test.kind(), test.doneAt());
            return day.with(tested.moved(tested.booking().with(tests)));
        }
        if (event instanceof DayEvent.FormulaRepeated again) {
            var service = service(day, stored, again.service());
            var changed = service.moved(service.booking().repeating(again.asLastTime()));
            return day.with(changed).learned(changed);
        }
        if (event instanceof DayEvent.BowlBegun begun)
            return day.with(service(day, stored, begun.service()).begun(fresh(begun, stored.time())));
        return applyToBowl(day, stored);
    }

    private static Day applyToBowl(Day day, StoredEvent stored) {
        var event = stored.event();
        var at = stored.time();
        if (event instanceof DayEvent.BowlWeighed w)
            return change(
                    day,
                    stored,
                    w.bowl(),
                    bowl -> bowl.weighed(new BowlState.Weighed(
                            w.lightenerMilligrams(),
                            w.developerParts(),
                            w.ratioThousandths(),
                            w.insideDirections(),
                            at)));
        if (event instanceof DayEvent.BowlHandedOver over)
            return change(day, stored, over.bowl(), bowl -> bowl.handedOver(at));
        if (event instanceof DayEvent.BowlFinished done)
            return change(day, stored, done.bowl(), bowl -> bowl.closed(new BowlState.Closed(at, 0, Optional.empty())));
        if (event instanceof DayEvent.BowlBinned binned)
            return change(
                    day,
                    stored,
                    binned.bowl(),
                    bowl -> bowl.closed(
                            new BowlState.Closed(at, binned.leftMilligrams(), Optional.of(binned.cause()))));
        if (event instanceof DayEvent.LifeEnding ending)
            return change(day, stored, ending.bowl(), bowl -> bowl.noted(true, false));
        if (event instanceof DayEvent.LifeEnded ended)
            return change(day, stored, ended.bowl(), bowl -> bowl.noted(true, true));
        throw broken(stored, "no rule says what it changes");
    }

    private static Day book(Day day, StoredEvent stored, DayEvent.ServiceBooked booked) {
        if (booked.service() != day.services().size() + 1)
            throw broken(
                    stored,
                    "service " + booked.service() + " does not follow service "
                            + day.services().size());
        var service = ServiceState.booked(booked.service(), booked.booking());
        return day.with(service).learned(service);
    }

    private static Day show(Day day, DayEvent.PlanDrawn drawn) {
        boolean older = day.plan()
                .filter(shown -> shown.basedOnRevision() > drawn.plan().basedOnRevision())
                .isPresent();
        return older ? day : day.show(drawn.plan());
    }

    private static Day keep(Day day, DayEvent.PlanKept kept) {
        return day.plan()
                .filter(shown -> shown.basedOnRevision() == kept.basedOnRevision())
                .map(shown -> day.show(shown.kept(kept.rounds(), kept.waitBound(), kept.bowlBound(), kept.proof())))
                .orElse(day);
    }

    /** A plan may name a bowl of a service whose booking was taken back; there is nothing to mark then. */
    private static Day mark(Day day, String bowl, UnaryOperator<ServiceState.DueMark> change) {
        var number = BowlIds.serviceOf(bowl);
        if (number.isEmpty()) return day;
        return day.service(number.getAsInt())
                .map(service -> day.with(service.marked(bowl, change.apply(service.dueMark(bowl)))))
                .orElse(day);
    }

    private static Day change(Day day, StoredEvent stored, String id, UnaryOperator<BowlState> change) {
        var bowl = day.bowl(id).orElseThrow(() -> broken(stored, "there is no bowl " + id));
        return day.with(service(day, stored, bowl.service()).with(change.apply(bowl)));
    }

    private static BowlState fresh(DayEvent.BowlBegun begun, Instant at) {
        return new BowlState(
                begun.bowl(),
                begun.service(),
                begun.run(),
                begun.personId(),
                begun.scaleId(),
                begun.bowlSizeId(),
                begun.planned(),
                at,
                begun.lifeEnds(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                false,
                false,
                Optional.empty());
    }

    private static stirtide.events.day.Booking booking(Day day, StoredEvent stored, DayEvent.ServiceMoved moved) {
        return service(day, stored, moved.service()).booking();
    }

    private static ServiceState service(Day day, StoredEvent stored, int number) {
        return day.service(number).orElseThrow(() -> broken(stored, "there is no service " + number));
    }

    public static IllegalStateException broken(StoredEvent stored, String why) {
        return new IllegalStateException("the log of " + stored.day() + " cannot be replayed at revision "
                + stored.revision() + " (" + stored.event().getClass().getSimpleName() + "): " + why);
    }
}
