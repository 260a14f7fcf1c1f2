package stirtide.planner.access;

/** The access files cannot be read or written; the message is for the operator. */
public final class AccessFailure extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final boolean unwritable;

    AccessFailure(String message) {
        super(message);
        unwritable = false;
    }

    AccessFailure(String message, Throwable cause) {
        this(message, cause, false);
    }

    private AccessFailure(String message, Throwable cause, boolean unwritable) {
        super(message, cause);
        this.unwritable = unwritable;
    }

    static AccessFailure unwritable(String message, Throwable cause) {
        return new AccessFailure(message, cause, true);
    }

    /** Whether a file cannot be written; else it cannot be read, or is lost. */
    public boolean isUnwritable() {
        return unwritable;
    }
}
