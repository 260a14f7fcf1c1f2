package stirtide.planner.allowance;

/**
 * Grams planned for a zone.
 *
 * @param plannedMilligrams grams that are enough as often as was set, rounded up to 0.1 g
 * @param medianMilligrams grams that are enough every other time; what is beyond them rides on the last bowl of a run
 * @param visits earlier visits it stands on
 * @param setAside earlier visits that were too far out to learn from
 * @param sentence why, in one line
 */
public record Allowance(int plannedMilligrams, int medianMilligrams, int visits, int setAside, String sentence) {
    /** Grams beyond the median, carried by the last bowl of a run. */
    public int safetyMilligrams() {
        return plannedMilligrams - medianMilligrams;
    }
}
