package stirtide.planner.day.setup;

import java.time.Instant;
import java.util.List;
import stirtide.events.setup.Person;
import stirtide.events.setup.Span;
import stirtide.planner.day.state.Day;

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

    /** Name of a person for a sentence; the id itself for a person the salon does not list. */
    public static String name(Day day, String personId) {
        return day.setup().stream()
                .flatMap(setup -> setup.salon().person(personId).stream())
                .map(Person::name)
                .findFirst()
                .orElse(personId);
    }
}
