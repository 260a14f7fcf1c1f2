package stirtide.planner.visits;

/**
 * Whether a zone gets the formula of the last visit again.
 *
 * @param zone zone of the menu entry
 * @param answer exactly, the nearest that is allowed, or nothing is remembered
 * @param lightenerId lightener to plan with
 * @param strengthHundredths strength to plan with, in hundredths of a per cent by weight
 * @param ratioThousandths ratio to plan with, in thousandths
 * @param usedMilligrams grams used last time, 0 when nothing is remembered
 * @param sentence the same for people; with what no longer allows the last formula
 */
public record RepeatedZone(
        String zone,
        Answer answer,
        String lightenerId,
        int strengthHundredths,
        int ratioThousandths,
        int usedMilligrams,
        String sentence) {
    /** How near it is to the last visit. */
    public enum Answer {
        /** The formula of the last visit, unchanged. */
        EXACT,
        /** Something no longer allows it; the nearest allowed formula. */
        NEAREST,
        /** The zone is not among what is remembered: the menu's formula. */
        NEW
    }
}
