package stirtide.planner.day.state;

import java.util.Collection;
import java.util.Optional;

/**
 * Why a command is not carried out.
 *
 * @param code stable code in capitals, such as {@code "PAST_LIFE"}
 * @param sentence the reason for people, and what would be accepted
 */
public record Refusal(String code, String sentence) {
    /** A refusal, for a chain of checks of which the first that finds something counts. */
    public static Optional<Refusal> of(String code, String sentence) {
        return Optional.of(new Refusal(code, sentence));
    }

    /** What would be accepted, for a sentence: {@code "bo, mika"}, {@code "none"}. */
    public static String listed(Collection<String> values) {
        return values.isEmpty() ? "none" : String.join(", ", values);
    }
}
