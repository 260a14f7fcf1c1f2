package stirtide.events.json;

/**
 * An event that this release cannot read: a type or version from a newer one, or text that is no event. Reading a log
 * stops here; an event is never skipped.
 */
public final class UnreadableEvent extends RuntimeException {
    private static final long serialVersionUID = 1L;

    UnreadableEvent(String message) {
        super(message);
    }

    UnreadableEvent(String message, Throwable cause) {
        super(message, cause);
    }
}
