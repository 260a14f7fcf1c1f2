package stirtide.planner.planning.stagger;

import java.util.List;

/**
 * A plan with what is proved about it.
 *
 * @param score its objective
 * @param mixes its bowls, by run and time
 * @param bound per level the least that any plan can reach that is as good as this one on the levels before
 * @param provenLevels how many levels, from the first, are proven best: 0 to 3
 * @param certificates the proofs of the bounds, empty where a bound needs none
 * @param rounds rounds of work spent on it
 */
public record StaggerPlan(
        StaggerScore score,
        List<StaggerMix> mixes,
        StaggerScore bound,
        int provenLevels,
        List<Certificate> certificates,
        long rounds) {
    /** Copies the lists. */
    public StaggerPlan {
        mixes = List.copyOf(mixes);
        certificates = List.copyOf(certificates);
    }
}
