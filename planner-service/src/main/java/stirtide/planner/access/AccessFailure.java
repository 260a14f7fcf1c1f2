package stirtide.planner.access;

/** The access files cannot be read or written; the message is for the operator. */
public final class AccessFailure extends RuntimeException {
    private static final long serialVersionUID = 1L;

    AccessFailure(String message, Throwable cause) {
        super(message, cause);
    }
}
