package stirtide.mixing.weighing;

/** Exact arithmetic of ratios, developer per lightener in thousandths. */
public final class Ratios {
    private Ratios() {}

    /** The ratio of two weights in thousandths, rounded to nearest; lightener more than 0. */
    public static int thousandths(long lightenerMilligrams, long developerMilligrams) {
        return (int) ((2000 * developerMilligrams + lightenerMilligrams) / (2 * lightenerMilligrams));
    }

    /**
     * Compares how far two ratios are from a wanted one by |ln(ratio / wanted)|, exactly.
     *
     * @return negative if the first pair is closer, positive if the second is, 0 if both are as close
     */
    public static int compareCloseness(
            long lightenerA, long developerA, long lightenerB, long developerB, int wantedThousandths) {
        long a = 1000 * developerA;
        long wantedA = wantedThousandths * lightenerA;
        long b = 1000 * developerB;
        long wantedB = wantedThousandths * lightenerB;
        return compareProducts(Math.max(a, wantedA), Math.min(b, wantedB), Math.max(b, wantedB), Math.min(a, wantedA));
    }

    /** Compares a*b with c*d for factors of 0 or more, in 128 bits. */
    private static int compareProducts(long a, long b, long c, long d) {
        int high = Long.compare(Math.multiplyHigh(a, b), Math.multiplyHigh(c, d));
        return high != 0 ? high : Long.compareUnsigned(a * b, c * d);
    }
}
