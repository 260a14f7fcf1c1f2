package stirtide.planner.day;

import stirtide.events.command.DayCommand;
import stirtide.events.day.DayEvent;
import stirtide.events.setup.Person;
import stirtide.planner.day.booking.BookingRules;
import stirtide.planner.day.setup.People;
import stirtide.planner.day.state.BowlState;
import stirtide.planner.day.state.CommandContext;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.Decision;

/** Changed shifts, alarms that were seen, the end of the day. */
final class DayRules {
    private DayRules() {}

    static Decision changeShift(Day day, DayCommand.ChangeShift command) {
        var people =
                day.opened().salon().people().stream().map(Person::personId).toList();
        if (!people.contains(command.personId()))
            return Decision.refuse(
                    "PERSON_UNKNOWN",
                    "\"" + command.personId() + "\" does not work here on this day. Accepted: "
                            + BookingRules.listed(people) + ".");
        return People.hoursObjection(day, command.onDuty())
                .<Decision>map(Decision.Refused::new)
                .orElseGet(() -> Decision.accept(new DayEvent.ShiftChanged(command.personId(), command.onDuty())));
    }

    static Decision acknowledge(Day day, DayCommand.AcknowledgeAlarm command, CommandContext facts) {
        var alarm = Alarms.of(day, facts.now()).stream()
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

    static Decision close(Day day) {
        var live = day.liveBowls().map(BowlState::bowl).toList();
        if (live.isEmpty()) return Decision.accept(new DayEvent.DayClosed());
        return Decision.refuse(
                "BOWLS_IN_USE",
                "Bowls are still in use: " + BookingRules.listed(live) + ". Finish or bin each, then close the day.");
    }
}
