package stirtide.planner.day.state;

import java.time.Instant;

/**
 * What a decision may know besides the state of the day.
 *
 * @param now the salon's clock
 * @param actor person id of who asks
 */
public record CommandContext(Instant now, String actor) {}
