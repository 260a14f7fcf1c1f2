package stirtide.planner.day.state;

/**
 * Why a command is not carried out.
 *
 * @param code stable code in capitals, such as {@code "PAST_LIFE"}
 * @param sentence the reason for people, and what would be accepted
 */
public record Refusal(String code, String sentence) {}
