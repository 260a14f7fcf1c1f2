package stirtide.mixing.strength;

/**
 * Alligation by weight: of two strengths around a wanted one, stronger : weaker = (wanted - weaker) : (stronger -
 * wanted). Any one unit of strength by weight will do.
 */
public final class Alligation {
    private Alligation() {}

    /**
     * Weight of the stronger in a mix of both, rounded down to a step.
     *
     * @param total weight of both together
     * @param excess weight times strength above the wanted one that other liquids bring, negative if they are weaker
     */
    public static long strongOf(long total, long excess, long strong, long weak, long wanted, int step) {
        return Math.floorDiv(total * (wanted - weak) - excess, (strong - weak) * step) * step;
    }
}
