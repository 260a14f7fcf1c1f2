package stirtide.planner.day.bowl;

import stirtide.events.setup.BowlSize;
import stirtide.planner.day.state.BowlState;
import stirtide.planner.day.state.Day;

/**
 * Where the grams of a bowl went: mixed = applied + residue + left, to the milligram.
 *
 * @param mixedMilligrams what was mixed
 * @param appliedMilligrams what went on hair
 * @param residueMilligrams what stayed on bowl and brush
 * @param leftMilligrams what was thrown away
 */
public record BowlBalance(int mixedMilligrams, int appliedMilligrams, int residueMilligrams, int leftMilligrams) {

    /** The balance of a closed bowl. */
    public static BowlBalance of(Day day, BowlState bowl) {
        int mixed = bowl.mixedMilligrams();
        int left = bowl.closed().orElseThrow().leftMilligrams();
        int residue = Math.min(residueMilligrams(day, bowl), mixed - left);
        return new BowlBalance(mixed, mixed - left - residue, residue, left);
    }

    /** What stays on bowl and brush of this size of bowl, in milligrams. */
    public static int residueMilligrams(Day day, BowlState bowl) {
        return day.opened()
                .salon()
                .bowlSize(bowl.bowlSizeId())
                .map(BowlSize::residueMilligrams)
                .orElse(0);
    }
}
