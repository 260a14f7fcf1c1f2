package stirtide.mixing.strength;

/**
 * Alligation by weight: of two strengths around a wanted one, stronger : weaker = (wanted - weaker) : (stronger -
 * wanted). Any one unit of strength by weight will do.
 *
 * @param strongParts parts of the stronger, reduced
 * @param weakParts parts of the weaker, reduced
 */
public record Alligation(long strongParts, long weakParts) {
    /**
     * Parts of two strengths.
     *
     * @throws IllegalArgumentException if the wanted strength is not between them
     */
    public static Alligation of(long strong, long weak, long wanted) {
        if (wanted > strong || wanted < weak || strong == weak)
            throw new IllegalArgumentException(wanted + " is not between " + weak + " and " + strong);
        long divisor = divisor(wanted - weak, strong - wanted);
        return new Alligation((wanted - weak) / divisor, (strong - wanted) / divisor);
    }

    /**
     * Weight of the stronger in a mix of both, rounded down to a step.
     *
     * @param total weight of both together
     * @param excess weight times strength above the wanted one that other liquids bring, negative if they are weaker
     */
    public static long strongOf(long total, long excess, long strong, long weak, long wanted, int step) {
        return Math.floorDiv(total * (wanted - weak) - excess, (strong - weak) * step) * step;
    }

    private static long divisor(long a, long b) {
        return b == 0 ? a : divisor(b, a % b);
    }
}
