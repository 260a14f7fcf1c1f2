package stirtide.mixing.weighing;

/** How far the readings of one scale may be from the truth. */
public interface ReadingErrors {
    /** Farthest the true load may be from a reading, in half milligrams; reading in milligrams. */
    long errorHalfMilligrams(long reading);

    /** Whether parts are weighed on top of each other to a running total; if not, the scale is tared between them. */
    boolean runningTotal();
}
