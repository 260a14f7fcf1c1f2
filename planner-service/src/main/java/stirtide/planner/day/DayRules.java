package stirtide.planner.day;

import java.util.List;
import stirtide.events.command.DayCommand;
import stirtide.events.day.DayEvent;
import stirtide.events.setup.Person;
import stirtide.events.setup.Span;

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
        if (!inOrder(command.onDuty()))
            return Decision.refuse(
                    "SHIFT_OVERLAPS", "Hours on duty are given in order of time, with a break between two spans.");
        var time = SalonTime.of(day.opened());
        for (var span : command.onDuty())
            if (!time.holds(span.from()) || span.to().isAfter(time.dayEnd()))
                return Decision.refuse(
                        "SHIFT_OUTSIDE_DAY",
                        "Hours on duty lie on " + day.opened().date() + " in " + time.zone() + ".");
        return Decision.accept(new DayEvent.ShiftChanged(command.personId(), command.onDuty()));
    }

    private static boolean inOrder(List<Span> spans) {
        for (int i = 1; i < spans.size(); i++)
            if (!spans.get(i - 1).to().isBefore(spans.get(i).from())) return false;
        return true;
    }

    static Decision acknowledge(Day day, DayCommand.AcknowledgeAlarm command, Facts facts) {
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
