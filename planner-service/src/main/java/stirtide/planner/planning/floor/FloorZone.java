package stirtide.planner.planning.floor;

/**
 * One zone of a service.
 *
 * @param gapMinutes time between the zone before and this one; means nothing on the first zone
 * @param applyMinutes minutes of application
 * @param decigrams what the whole zone uses
 * @param mix index of the mix
 * @param processMinutes time it wants between its last minute and the rinse
 * @param longestMinutes most time between its first minute and the rinse
 */
public record FloorZone(
        int gapMinutes, int applyMinutes, int decigrams, int mix, int processMinutes, int longestMinutes) {}
