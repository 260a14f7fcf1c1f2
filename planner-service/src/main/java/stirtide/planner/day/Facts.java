package stirtide.planner.day;

import java.time.Instant;

/**
 * What a decision may know besides the state of the day.
 *
 * @param now the salon's clock
 * @param actor person id of who asks
 */
public record Facts(Instant now, String actor) {}
