package stirtide.planner.day.state;

import java.util.List;
import java.util.function.Function;
import stirtide.events.command.DayCommand;
import stirtide.events.day.DayEvent;
import stirtide.events.day.StoredEvent;
import stirtide.planner.day.state.CommandRule.Decide;

/** Whether an event could have happened on a day from which an earlier action was left out. */
@FunctionalInterface
public interface Recheck<E extends DayEvent> {

    /** Whether the event holds on the day; {@code decide} answers commands. */
    boolean holds(Day day, E event, StoredEvent stored, Decide<DayCommand> decide);

    /** An event that holds whatever happened before it. */
    static <E extends DayEvent> Recheck<E> always() {
        return (day, event, stored, decide) -> true;
    }

    /** An event that holds while its bowl exists. */
    static <E extends DayEvent> Recheck<E> whileBowl(Function<E, String> bowl) {
        return (day, event, stored, decide) -> day.bowl(bowl.apply(event)).isPresent();
    }

    /** An event that holds when its command, given again, causes exactly this event. */
    static <E extends DayEvent> Recheck<E> byCommand(Function<E, DayCommand> command) {
        return (day, event, stored, decide) ->
                answer(day, command.apply(event), stored, decide) instanceof Decision.Accepted accepted
                        && accepted.events().equals(List.of(event));
    }

    /**
     * An event that holds when its command is accepted again. For the begin of a bowl: its life was set by a clock finer
     * than the log keeps, so the events need not be equal.
     */
    static <E extends DayEvent> Recheck<E> byAcceptedCommand(Function<E, DayCommand> command) {
        return (day, event, stored, decide) ->
                answer(day, command.apply(event), stored, decide) instanceof Decision.Accepted;
    }

    private static Decision answer(Day day, DayCommand command, StoredEvent stored, Decide<DayCommand> decide) {
        return decide.on(day, command, new CommandContext(stored.time(), stored.actor()));
    }
}
