package stirtide.planner.planning.floor;

/**
 * One kind of mix.
 *
 * @param mixMinutes time it takes to mix a bowl
 * @param lifeMinutes time from the start of mixing until the last minute of use must be over
 */
public record FloorMix(int mixMinutes, int lifeMinutes) {}
