package stirtide.planner.planning.floor;

/**
 * A bowl with its place on the floor. The bowls of a service come in the order of their use.
 *
 * @param service place of the service in the day
 * @param from first minute of application it feeds, -1 if it cannot be used as shown any more
 * @param to minute of application after the last it feeds
 * @param size place of its size
 * @param scale kind of its scale
 * @param mixStart minute of the day at which mixing begins
 * @param useStart minute of the day of its first use
 * @param assistant place of who mixes it, -1 if that person does not mix any more
 * @param pinned whether its mix is about to begin and keeps minute and scale
 */
public record PlacedBowl(
        int service, int from, int to, int size, int scale, int mixStart, int useStart, int assistant, boolean pinned) {
    /** The same, mixed by another assistant. */
    public PlacedBowl mixedBy(int other) {
        return new PlacedBowl(service, from, to, size, scale, mixStart, useStart, other, pinned);
    }
}
