package stirtide.planner.planning.floor;

/**
 * One kind of mix.
 *
 * @param mixMinutes time it takes to mix a bowl
 * @param lifeMinutes time from the start of mixing until the last minute of use must be over
 */
public record FloorMix(int mixMinutes, int lifeMinutes) {
    /** Refuses a mix that takes no time. */
    public FloorMix {
        if (mixMinutes < 1) {
            throw new IllegalArgumentException("mixing takes at least one minute");
        }
    }
}
