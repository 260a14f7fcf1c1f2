package stirtide.bar.model;

import java.util.OptionalInt;

/**
 * What the scale at this terminal shows.
 *
 * @param words its state in words, empty text without a scale
 * @param milligrams weight that may be taken, in milligrams; empty while none is at rest
 * @param turn number of the weight that came to rest; the same number is the same weight
 */
public record ScaleStatus(String words, OptionalInt milligrams, int turn) {
    /** No scale. */
    public static final ScaleStatus NONE = new ScaleStatus("", OptionalInt.empty(), 0);
}
