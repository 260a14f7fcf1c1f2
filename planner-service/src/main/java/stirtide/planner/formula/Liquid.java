package stirtide.planner.formula;

import stirtide.events.day.DeveloperPart;
import stirtide.events.setup.Developer;

/**
 * A liquid that may go into a bowl.
 *
 * @param id developer id, or that of water
 * @param strengthHundredths hydrogen peroxide in hundredths of a per cent by weight, 0 for water
 * @param mostMilligrams most there is of it, by the last count
 */
record Liquid(String id, int strengthHundredths, int mostMilligrams) {
    static final Liquid WATER = new Liquid(DeveloperPart.WATER, 0, Integer.MAX_VALUE);

    static Liquid of(Developer developer) {
        return new Liquid(
                developer.developerId(),
                developer.strengthHundredths(),
                developer.countedMilligrams().orElse(Integer.MAX_VALUE));
    }
}
