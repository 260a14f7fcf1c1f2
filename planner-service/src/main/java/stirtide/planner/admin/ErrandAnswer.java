package stirtide.planner.admin;

/**
 * What became of an errand.
 *
 * @param outcome how it went
 * @param text what was asked for, or why it could not be had
 */
public record ErrandAnswer(Outcome outcome, String text) {
    /** How an errand goes. */
    public enum Outcome {
        /** Carried out. */
        DONE,
        /** There is no such thing. */
        UNKNOWN,
        /** The log or the place for the answer does not allow it. */
        NOT_POSSIBLE
    }
}
