package stirtide.planner.day.state;

import java.time.Instant;
import java.util.List;
import stirtide.events.formula.DeveloperPart;

/**
 * What was really weighed into a bowl.
 *
 * @param lightenerMilligrams lightener
 * @param developerParts liquids
 * @param ratioThousandths developer per lightener, rounded, for screens
 * @param insideDirections whether the directions permit it, judged exactly
 * @param at when it was weighed
 */
public record BowlWeights(
        int lightenerMilligrams,
        List<DeveloperPart> developerParts,
        int ratioThousandths,
        boolean insideDirections,
        Instant at) {
    /** Weight of all liquids, in milligrams. */
    public int developerMilligrams() {
        return developerParts.stream().mapToInt(DeveloperPart::milligrams).sum();
    }

    /** Weight of the whole mix, in milligrams. */
    public int totalMilligrams() {
        return lightenerMilligrams + developerMilligrams();
    }
}
