package stirtide.planner.day;

import java.util.List;
import stirtide.events.command.DayCommand;
import stirtide.events.day.StoredEvent;
import stirtide.planner.day.allowance.AllowanceRules;
import stirtide.planner.day.batch.BatchRules;
import stirtide.planner.day.booking.BookingRules;
import stirtide.planner.day.bowl.BowlRules;
import stirtide.planner.day.chair.ChairRules;
import stirtide.planner.day.history.ClientHistoryRules;
import stirtide.planner.day.setup.SetupChangeRules;
import stirtide.planner.day.state.CommandContext;
import stirtide.planner.day.state.CommandRule;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.Decision;
import stirtide.planner.day.state.RuleTable;
import stirtide.planner.day.stock.StockRules;

/**
 * Answers a command with events or with a refusal, by the rules of the folders. A refusal that protects (a life that has
 * ended, weights outside the directions) has no exception.
 *
 * <p>Time never runs backwards: should the clock be behind the newest event, the time of that event counts as now.
 */
public final class Decider {
    private static final int LONGEST_ACTOR = 64;

    static final RuleTable<CommandRule<?>> RULES = new RuleTable<>(
            DayCommand.class,
            CommandRule::type,
            List.of(
                    DayRules.RULES,
                    List.of(CommandRule.of(DayCommand.TakeBack.class, Decider::takeBack)),
                    BookingRules.RULES,
                    ChairRules.RULES,
                    BowlRules.RULES,
                    BatchRules.RULES,
                    SetupChangeRules.RULES,
                    AllowanceRules.RULES,
                    StockRules.RULES,
                    ClientHistoryRules.RULES));

    private Decider() {}

    /** What a command brings about on a day as it stands. */
    public static Decision decide(Day day, DayCommand command, CommandContext context) {
        var actor = context.actor();
        if (actor.isBlank() || actor.length() > LONGEST_ACTOR || actor.equals(StoredEvent.SERVICE))
            return Decision.refuse(
                    "ACTOR_UNKNOWN",
                    "A command names the person who asks, in 1 to 64 characters, and no person is called \"service\".");
        if (!(command instanceof DayCommand.OpenDay)) {
            if (day.setup().isEmpty())
                return Decision.refuse("DAY_NOT_OPEN", "The day is not open yet. Open it with its setup first.");
            if (day.closed())
                return Decision.refuse(
                        "DAY_CLOSED", "The day is closed; nothing more can happen on it. Use another day.");
        }
        var now = context.now().isBefore(day.time()) ? day.time() : context.now();
        return RULES.of(command).answer(day, command, new CommandContext(now, actor));
    }

    private static Decision takeBack(Day day, DayCommand.TakeBack command, CommandContext context) {
        return TakeBackRules.takeBack(day, command, context, Decider::decide);
    }
}
