package stirtide.planner.planning.stagger;

/**
 * The objective of a plan, compared in the order of its parts.
 *
 * @param lastResorts bowls that no assistant can mix
 * @param waitMinutes minutes that clients wait
 * @param mixCost second level: bowls in the plain model
 * @param ageMinutes minutes from the start of mixing to first use, summed over bowls
 */
public record StaggerScore(long lastResorts, long waitMinutes, long mixCost, long ageMinutes)
        implements Comparable<StaggerScore> {

    @Override
    public int compareTo(StaggerScore other) {
        int byLastResorts = Long.compare(lastResorts, other.lastResorts);
        if (byLastResorts != 0) {
            return byLastResorts;
        }
        int byWait = Long.compare(waitMinutes, other.waitMinutes);
        if (byWait != 0) {
            return byWait;
        }
        int byMix = Long.compare(mixCost, other.mixCost);
        return byMix != 0 ? byMix : Long.compare(ageMinutes, other.ageMinutes);
    }
}
