package stirtide.planner.day;

import stirtide.events.command.DayCommand;
import stirtide.events.day.StoredEvent;
import stirtide.planner.day.allowance.AllowanceRules;
import stirtide.planner.day.batch.BatchBeginRules;
import stirtide.planner.day.batch.BatchRules;
import stirtide.planner.day.booking.BookingRules;
import stirtide.planner.day.booking.OpeningRules;
import stirtide.planner.day.bowl.BowlBeginRules;
import stirtide.planner.day.bowl.BowlRules;
import stirtide.planner.day.bowl.BowlWeighRules;
import stirtide.planner.day.chair.ChairRules;
import stirtide.planner.day.history.ClientHistoryRules;
import stirtide.planner.day.setup.SetupChangeRules;
import stirtide.planner.day.state.CommandContext;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.Decision;

/**
 * Answers a command with events or with a refusal. The rules stand in the classes named below, one for each part of the
 * work. A refusal that protects (a life that has ended, weights outside the directions) has no exception.
 *
 * <p>Time never runs backwards: should the clock be behind the newest event, the time of that event counts as now.
 */
public final class Decider {
    private static final int LONGEST_ACTOR = 64;

    private Decider() {}

    /** What a command brings about on a day as it stands. */
    public static Decision decide(Day day, DayCommand command, CommandContext facts) {
        var actor = facts.actor();
        if (actor.isBlank() || actor.length() > LONGEST_ACTOR || actor.equals(StoredEvent.SERVICE))
            return Decision.refuse(
                    "ACTOR_UNKNOWN",
                    "A command names the person who asks, in 1 to 64 characters, and nobody may be called \"service\".");
        var now = facts.now().isBefore(day.time()) ? day.time() : facts.now();
        return decideNow(day, command, new CommandContext(now, actor));
    }

    private static Decision decideNow(Day day, DayCommand command, CommandContext facts) {
        if (command instanceof DayCommand.OpenDay open) return OpeningRules.open(day, open);
        if (day.setup().isEmpty())
            return Decision.refuse("DAY_NOT_OPEN", "The day is not open yet. Open it with its setup first.");
        if (day.closed())
            return Decision.refuse("DAY_CLOSED", "The day is closed; nothing more can happen on it. Use another day.");
        if (command instanceof DayCommand.BookService book) return BookingRules.book(day, book);
        if (command instanceof DayCommand.MoveService move) return BookingRules.move(day, move);
        if (command instanceof DayCommand.CancelService cancel) return BookingRules.cancel(day, cancel);
        if (command instanceof DayCommand.StartService start) return ChairRules.start(day, start, facts);
        if (command instanceof DayCommand.FinishZone finish) return ChairRules.finishZone(day, finish);
        if (command instanceof DayCommand.RinseSection rinse) return ChairRules.rinse(day, rinse);
        if (command instanceof DayCommand.BeginBowl begin) return BowlBeginRules.begin(day, begin, facts);
        if (command instanceof DayCommand.WeighBowl weigh) return BowlWeighRules.weigh(day, weigh);
        if (command instanceof DayCommand.HandOverBowl over) return BowlRules.handOver(day, over, facts);
        if (command instanceof DayCommand.FinishBowl finish) return BowlRules.finish(day, finish);
        if (command instanceof DayCommand.BinBowl bin) return BowlRules.bin(day, bin, facts);
        if (command instanceof DayCommand.BeginBatch begin) return BatchBeginRules.begin(day, begin, facts);
        if (command instanceof DayCommand.WeighBatch weigh) return BatchRules.weigh(day, weigh);
        if (command instanceof DayCommand.DivideBatch divide) return BatchRules.divide(day, divide, facts);
        if (command instanceof DayCommand.BinBatch bin) return BatchRules.bin(day, bin, facts);
        if (command instanceof DayCommand.ChangeShift change) return DayRules.changeShift(day, change);
        if (command instanceof DayCommand.ChangeSetup change) return SetupChangeRules.change(day, change, facts);
        if (command instanceof DayCommand.PinAllowance pin) return AllowanceRules.pin(day, pin, facts);
        if (command instanceof DayCommand.ResetAllowance reset) return AllowanceRules.reset(day, reset, facts);
        if (command instanceof DayCommand.CountStock count) return AllowanceRules.count(day, count);
        if (command instanceof DayCommand.ReceiveGoods goods) return AllowanceRules.receive(day, goods);
        if (command instanceof DayCommand.SetAllowanceFraction set) return AllowanceRules.fraction(day, set, facts);
        if (command instanceof DayCommand.RecordTest test) return ClientHistoryRules.test(day, test, facts);
        if (command instanceof DayCommand.RepeatFormula repeat) return ClientHistoryRules.repeat(day, repeat);
        if (command instanceof DayCommand.RecordLevels levels) return ClientHistoryRules.levels(day, levels);
        if (command instanceof DayCommand.RecordSwatch swatch) return ClientHistoryRules.swatch(day, swatch);
        if (command instanceof DayCommand.RecordStrip strip) return ClientHistoryRules.strip(day, strip);
        if (command instanceof DayCommand.TakeBack back) return TakeBackRules.takeBack(day, back, facts);
        if (command instanceof DayCommand.AcknowledgeAlarm seen) return DayRules.acknowledge(day, seen, facts);
        if (command instanceof DayCommand.CloseDay) return DayRules.close(day);
        throw new IllegalStateException("no rule for " + command.getClass().getSimpleName());
    }
}
