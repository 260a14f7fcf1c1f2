package stirtide.planner.day.state;

import java.util.function.Function;
import stirtide.events.command.DayCommand;
import stirtide.events.day.DayEvent;
import stirtide.events.day.StoredEvent;
import stirtide.planner.day.state.CommandRule.Decide;

/**
 * All that has to be said about one kind of event. Every question has an answer for every kind: there are no defaults.
 *
 * @param type kind of event
 * @param relevance what it means for the plan
 * @param effect what it changes
 * @param text what was done, for a list: {@code "weighed bowl 7b"}
 * @param recheck whether it still holds when an earlier action is taken back
 */
public record EventRule<E extends DayEvent>(
        Class<E> type, PlanRelevance relevance, Effect<E> effect, Function<E, String> text, Recheck<E> recheck) {

    /** What an event means for the plan on show. */
    public enum PlanRelevance {
        /** A plan drawn before it has to be drawn anew. */
        REPLAN,
        /** The plan stays as it is. */
        NONE,
        /** It is the planner's answer; it does not move the time of the day either. */
        ANSWER
    }

    /** The change an event makes. Pure. */
    @FunctionalInterface
    public interface Effect<E> {
        /**
         * The day after an event.
         *
         * @param stored the event as it stands in the log, with its time and actor
         * @throws ImpossibleEventException when the event cannot have happened on this day
         */
        Day on(Day day, E event, StoredEvent stored);
    }

    /** The day after an event of this kind. */
    public Day apply(Day day, StoredEvent stored) {
        return effect.on(day, type.cast(stored.event()), stored);
    }

    /** What was done. */
    public String textOf(DayEvent event) {
        return text.apply(type.cast(event));
    }

    /** Whether an event of this kind could have happened on a day; {@code decide} answers commands. */
    public boolean holds(Day day, StoredEvent stored, Decide<DayCommand> decide) {
        return recheck.holds(day, type.cast(stored.event()), stored, decide);
    }
}
