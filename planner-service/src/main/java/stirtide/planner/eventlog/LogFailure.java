package stirtide.planner.eventlog;

/** The log cannot do what was asked. The message is a sentence for people. */
public final class LogFailure extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final Kind kind;

    /** A failure with its cause. */
    public LogFailure(Kind kind, String sentence, Throwable cause) {
        super(sentence, cause);
        this.kind = kind;
    }

    /** A failure without a cause. */
    public LogFailure(Kind kind, String sentence) {
        super(sentence);
        this.kind = kind;
    }

    /** What sort of failure it is. */
    public Kind kind() {
        return kind;
    }

    /** Sorts of failure. */
    public enum Kind {
        /** Another process has the log. */
        IN_USE,
        /** The folder cannot be made or written, or is of a sort that cannot be trusted with a log. */
        NO_PLACE,
        /** No space is left; nothing of the append was stored. */
        FULL,
        /** Reading or writing failed; nothing of the append was stored. */
        UNAVAILABLE,
        /** Nothing is stored until an operator has looked; what is readable is still given. */
        READ_ONLY,
        /** What is stored is not what was written. */
        DAMAGED
    }
}
