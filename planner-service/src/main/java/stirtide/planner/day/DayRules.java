package stirtide.planner.day;

import java.util.List;
import stirtide.events.command.DayCommand;
import stirtide.events.day.DayEvent;
import stirtide.planner.day.setup.People;
import stirtide.planner.day.state.BowlState;
import stirtide.planner.day.state.CommandContext;
import stirtide.planner.day.state.CommandRule;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.Decision;
import stirtide.planner.day.state.Refusal;

/** Alarms that are acknowledged, and the end of the day. */
final class DayRules {
    /** A rule for each command of this folder, except that which takes an action back. */
    static final List<CommandRule<?>> RULES = List.of(
            CommandRule.of(DayCommand.AcknowledgeAlarm.class, DayRules::acknowledge),
            CommandRule.of(DayCommand.CloseDay.class, DayRules::close));

    private DayRules() {}

    private static Decision acknowledge(Day day, DayCommand.AcknowledgeAlarm command, CommandContext context) {
        var alarm = Alarms.of(day, context.now()).stream()
                .filter(one -> one.id().equals(command.alarmId()))
                .findFirst();
        if (alarm.isEmpty())
            return Decision.refuse(
                    "ALARM_UNKNOWN", "There is no alarm \"" + command.alarmId() + "\" now. Name one that is shown.");
        var seenBy = alarm.get().acknowledgedBy();
        if (seenBy.isPresent())
            return Decision.refuse(
                    "ALARM_ACKNOWLEDGED",
                    People.name(day, seenBy.get()) + " has acknowledged this alarm already. Nothing is left to do.");
        return Decision.accept(new DayEvent.AlarmAcknowledged(command.alarmId()));
    }

    private static Decision close(Day day, DayCommand.CloseDay command) {
        var live = day.liveBowls().map(BowlState::bowl).toList();
        if (live.isEmpty()) return Decision.accept(new DayEvent.DayClosed());
        return Decision.refuse(
                "BOWLS_IN_USE",
                "Bowls are still in use: " + Refusal.listed(live) + ". Finish or bin each, then close the day.");
    }
}
