package stirtide.planner.allowance;

/**
 * Grams planned for a zone.
 *
 * @param plannedMilligrams grams that are enough as often as was set, rounded up to 0.1 g
 * @param medianMilligrams grams that are enough every other time; what is beyond them is carried by the last bowl of a run
 * @param visits earlier visits it is based on
 * @param setAside earlier visits that were too far out to learn from
 * @param source where the grams come from
 * @param sentence why, in one line
 */
public record Allowance(
        int plannedMilligrams, int medianMilligrams, int visits, int setAside, Source source, String sentence) {
    /** Where grams come from. */
    public enum Source {
        /** UsagePosterior from earlier visits. */
        LEARNED,
        /** Pinned by a manager. */
        PINNED,
        /** What the client's last visit used. */
        LAST_TIME
    }

    /** Grams beyond the median, carried by the last bowl of a run. */
    public int safetyMilligrams() {
        return plannedMilligrams - medianMilligrams;
    }
}
