package stirtide.planner.day.setup;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import stirtide.events.setup.Person;
import stirtide.events.setup.Span;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.DayTime;
import stirtide.planner.day.state.Refusal;

/** Who is at work when, changed shifts included. */
public final class People {
    private People() {}

    /** Hours of a person on this day. */
    public static List<Span> shift(Day day, Person person) {
        return day.shifts().getOrDefault(person.personId(), person.onDuty());
    }

    /** Whether a person is on duty at an instant. */
    public static boolean onDuty(Day day, Person person, Instant at) {
        return shift(day, person).stream().anyMatch(span -> !at.isBefore(span.from()) && at.isBefore(span.to()));
    }

    /** What is wrong with hours on this day: they are in order, apart, and on the day. */
    public static Optional<Refusal> hoursObjection(Day day, List<Span> onDuty) {
        for (int i = 1; i < onDuty.size(); i++)
            if (!onDuty.get(i - 1).to().isBefore(onDuty.get(i).from()))
                return Optional.of(new Refusal(
                        "SHIFT_OVERLAPS", "Hours on duty are given in order of time, with a break between two spans."));
        var time = DayTime.of(day.opened());
        for (var span : onDuty)
            if (!time.holds(span.from()) || span.to().isAfter(time.dayEnd()))
                return Optional.of(new Refusal(
                        "SHIFT_OUTSIDE_DAY",
                        "Hours on duty lie on " + day.opened().date() + " in " + time.zone() + "."));
        return Optional.empty();
    }

    /** Name of a person for a sentence; the id itself for somebody the salon does not list. */
    public static String name(Day day, String personId) {
        return day.setup().stream()
                .flatMap(setup -> setup.salon().people().stream())
                .filter(person -> person.personId().equals(personId))
                .map(Person::name)
                .findFirst()
                .orElse(personId);
    }
}
