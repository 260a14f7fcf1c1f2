package stirtide.planner.day.state;

import java.util.function.BiFunction;
import stirtide.events.command.DayCommand;

/**
 * How one kind of command is decided.
 *
 * @param type kind of command
 * @param decide the rule
 */
public record CommandRule<C extends DayCommand>(Class<C> type, Decide<C> decide) {

    /** Answers a command on a day as it stands. Pure. */
    @FunctionalInterface
    public interface Decide<C> {
        /** Events, or a refusal. */
        Decision on(Day day, C command, CommandContext context);
    }

    /** A rule that needs neither the time nor the actor. */
    public static <C extends DayCommand> CommandRule<C> of(Class<C> type, BiFunction<Day, C, Decision> decide) {
        return new CommandRule<>(type, (day, command, context) -> decide.apply(day, command));
    }

    /** A rule that needs the time or the actor. */
    public static <C extends DayCommand> CommandRule<C> of(Class<C> type, Decide<C> decide) {
        return new CommandRule<>(type, decide);
    }

    /**
     * The answer to a command of this kind.
     *
     * @throws ClassCastException when it is of another kind
     */
    public Decision answer(Day day, DayCommand command, CommandContext context) {
        return decide.on(day, type.cast(command), context);
    }
}
