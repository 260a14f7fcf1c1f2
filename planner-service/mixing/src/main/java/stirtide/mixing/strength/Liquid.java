package stirtide.mixing.strength;

import stirtide.events.formula.DeveloperPart;
import stirtide.events.setup.Developer;

/**
 * A liquid that may go into a bowl.
 *
 * @param id developer id, or that of water
 * @param strengthHundredths hydrogen peroxide in hundredths of a per cent by weight, 0 for water
 * @param mostMilligrams most there is of it, by the last count
 */
public record Liquid(String id, int strengthHundredths, int mostMilligrams) {
    public static final Liquid WATER = new Liquid(DeveloperPart.WATER, 0, Integer.MAX_VALUE);

    public static Liquid of(Developer developer) {
        return new Liquid(
                developer.developerId(),
                developer.strengthHundredths(),
                developer.countedMilligrams().orElse(Integer.MAX_VALUE));
    }
}
