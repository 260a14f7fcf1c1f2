package stirtide.planner.day;

import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import stirtide.events.day.DayEvent;
import stirtide.events.day.StoredEvent;
import stirtide.planner.day.allowance.AllowanceEvents;
import stirtide.planner.day.batch.BatchEvents;
import stirtide.planner.day.booking.BookingEvents;
import stirtide.planner.day.bowl.BowlEvents;
import stirtide.planner.day.chair.ChairEvents;
import stirtide.planner.day.history.ClientHistoryEvents;
import stirtide.planner.day.setup.SetupEvents;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.EventRule;
import stirtide.planner.day.state.EventRule.PlanRelevance;
import stirtide.planner.day.state.ImpossibleEventException;
import stirtide.planner.day.state.RuleTable;
import stirtide.planner.day.stock.StockEvents;

/**
 * The next state of a day after an event, by the rules of the folders. Total for every history that {@link Decider} and
 * {@link Ticker} can have written; anything else is a broken log and stops the replay with the place where it broke.
 */
public final class Evolver {
    static final RuleTable<EventRule<?>> RULES = new RuleTable<>(
            DayEvent.class,
            EventRule::type,
            List.of(
                    DayEvents.RULES,
                    BookingEvents.RULES,
                    ChairEvents.RULES,
                    BowlEvents.RULES,
                    BatchEvents.RULES,
                    SetupEvents.RULES,
                    AllowanceEvents.RULES,
                    StockEvents.RULES,
                    ClientHistoryEvents.RULES));

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

    /**
     * The state after all the events of a stream, in time proportional to their number. Calling {@link #evolve} for each
     * gives the same, but replays again at every action taken back.
     *
     * @throws IllegalStateException when the events cannot have happened in this order
     */
    public static Day replay(List<StoredEvent> events) {
        return replayWithout(events, takenBack(events));
    }

    /** What was done, for a list: {@code "weighed bowl 7b"}. */
    public static String text(DayEvent event) {
        return RULES.of(event).textOf(event);
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
        var rule = RULES.of(event.event());
        boolean counts = !leftOut.contains(event.revision());
        var next = counts ? apply(rule, day, event) : day;
        return next.with(marks -> {
            marks.revision(event.revision());
            marks.history(day.history().plus(event));
            if (rule.relevance() != PlanRelevance.ANSWER) marks.time(later(day.time(), event.time()));
            if (counts && rule.relevance() == PlanRelevance.REPLAN) marks.relevantRevision(event.revision());
        });
    }

    private static Day apply(EventRule<?> rule, Day day, StoredEvent event) {
        try {
            return rule.apply(day, event);
        } catch (ImpossibleEventException impossible) {
            throw broken(event, String.valueOf(impossible.getMessage()));
        }
    }

    /** The salon's clock may be set back by a second; the day itself never runs backwards. */
    private static Instant later(Instant one, Instant other) {
        return one.isAfter(other) ? one : other;
    }

    private static IllegalStateException broken(StoredEvent stored, String why) {
        return new IllegalStateException("the log of " + stored.day() + " cannot be replayed at revision "
                + stored.revision() + " (" + stored.event().getClass().getSimpleName() + "): " + why);
    }
}
