package stirtide.planner.http;

/** Whether the service takes commands. */
public enum Readiness {
    /** Not yet, or no longer. */
    NOT_READY,
    /** Days are shown, commands are refused: nothing can be stored. */
    READ_ONLY,
    /** Yes. */
    READY
}
