package stirtide.planner.planning.floor;

/**
 * One bowl of a plan.
 *
 * @param service number of the service it feeds
 * @param from first minute of application it feeds
 * @param to minute of application after the last it feeds
 * @param size index of its size
 * @param mixStart minute of the day at which mixing begins
 * @param assistant index of who mixes and carries it
 */
public record BowlAssignment(int service, int from, int to, int size, int mixStart, int assistant) {}
