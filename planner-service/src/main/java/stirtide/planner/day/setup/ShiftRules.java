package stirtide.planner.day.setup;

import java.util.List;
import java.util.Optional;
import stirtide.events.command.DayCommand;
import stirtide.events.day.DayEvent;
import stirtide.events.setup.Person;
import stirtide.events.setup.Span;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.DayTime;
import stirtide.planner.day.state.Decision;
import stirtide.planner.day.state.Refusal;

/** Hours on duty that change while the day is open. */
final class ShiftRules {
    private ShiftRules() {}

    static Decision change(Day day, DayCommand.ChangeShift command) {
        var salon = day.opened().salon();
        if (salon.person(command.personId()).isEmpty())
            return Decision.refuse(
                    "PERSON_UNKNOWN",
                    "\"" + command.personId() + "\" does not work here on this day. Accepted: "
                            + Refusal.listed(salon.people().stream()
                                    .map(Person::personId)
                                    .toList()) + ".");
        return Decision.acceptUnless(
                hoursObjection(day, command.onDuty()),
                () -> new DayEvent.ShiftChanged(command.personId(), command.onDuty()));
    }

    /** What is wrong with hours on this day: they are in order, apart, and on the day. */
    static Optional<Refusal> hoursObjection(Day day, List<Span> onDuty) {
        for (int i = 1; i < onDuty.size(); i++)
            if (!onDuty.get(i - 1).to().isBefore(onDuty.get(i).from()))
                return Refusal.of(
                        "SHIFT_OVERLAPS", "Hours on duty are given in order of time, with a break between two spans.");
        var time = DayTime.of(day.opened());
        for (var span : onDuty)
            if (!time.holds(span.from()) || span.to().isAfter(time.dayEnd()))
                return Refusal.of(
                        "SHIFT_OUTSIDE_DAY",
                        "Hours on duty lie on " + day.opened().date() + " in " + time.zone() + ".");
        return Optional.empty();
    }
}
