package stirtide.planner.planning.stagger;

/**
 * The set of plans without last resort that stay within all three figures. A certificate refutes a claim: it shows that
 * the set is empty.
 *
 * @param waitMinutes most minutes of wait, or {@link #ANY}
 * @param mixCost most of the second level, or {@link #ANY}
 * @param ageMinutes most minutes of age, or {@link #ANY}
 */
public record Claim(long waitMinutes, long mixCost, long ageMinutes) {
    /** Stands for "however much". */
    public static final long ANY = Long.MAX_VALUE;

    /** Most that a plan within the claim can cost under the weights, which are 0 where the claim says "however much". */
    long value(LevelWeights weights) {
        return part(weights.delay(), waitMinutes) + part(weights.mix(), mixCost) + part(weights.age(), ageMinutes);
    }

    private static long part(long weight, long most) {
        return weight == 0 ? 0 : weight * most;
    }
}
