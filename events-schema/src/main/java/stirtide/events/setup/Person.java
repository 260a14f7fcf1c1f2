package stirtide.events.setup;

import java.util.List;

/**
 * A person who works at the salon on the day.
 *
 * @param personId short id, unique in the salon, such as {@code "ora"}
 * @param name name shown on screens
 * @param role what the person does
 * @param onDuty when the person is at work on this day, breaks already cut out; sorted, not touching
 */
public record Person(String personId, String name, Role role, List<Span> onDuty) {
    public Person {
        onDuty = List.copyOf(onDuty);
    }

    /** What a person does at the salon. Only assistants mix at the bar. */
    public enum Role {
        ASSISTANT,
        STYLIST,
        COLORIST,
        MANAGER
    }
}
