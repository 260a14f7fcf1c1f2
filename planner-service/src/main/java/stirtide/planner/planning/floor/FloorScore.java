package stirtide.planner.planning.floor;

/**
 * What a plan costs, the first figure before the second before the third.
 *
 * @param lateness minutes clients wait, over late ends and late rinses
 * @param handling decigrams of residue and of what small, awkward or aging bowls stand for
 * @param standing minutes bowls stand ready before their first use
 */
public record FloorScore(int lateness, int handling, int standing) implements Comparable<FloorScore> {
    @Override
    public int compareTo(FloorScore other) {
        int order = Integer.compare(lateness, other.lateness);
        if (order == 0) {
            order = Integer.compare(handling, other.handling);
        }
        return order != 0 ? order : Integer.compare(standing, other.standing);
    }
}
