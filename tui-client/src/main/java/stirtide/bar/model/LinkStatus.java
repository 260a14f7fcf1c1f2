package stirtide.bar.model;

/**
 * The connection to the service as the header shows it.
 *
 * @param state how fresh the picture is
 * @param ageSeconds seconds since the service was last heard, 0 or more; with no message yet, since the start
 * @param waitingEntries entries kept on disk until the service takes them
 * @param why why the connection is down, empty text when it is up or the reason is unknown
 */
public record LinkStatus(State state, long ageSeconds, int waitingEntries, String why) {
    /** Seconds without a message after which the picture counts as stale. */
    public static final int STALE_SECONDS = 10;

    /** Seconds without a message after which the link counts as lost. */
    public static final int LOST_SECONDS = 30;

    /** A connection without a known reason for being down. */
    public LinkStatus(State state, long ageSeconds, int waitingEntries) {
        this(state, ageSeconds, waitingEntries, "");
    }

    /** How fresh the picture is. */
    public enum State {
        /** Nothing heard since the start. */
        CONNECTING,
        /** Heard within seconds. */
        LIVE,
        /** The connection is down, or nothing was heard for a while. */
        STALE,
        /** Nothing was heard for long. */
        LOST
    }

    /** The state that follows from what was heard. */
    public static State state(boolean everHeard, boolean cut, long ageSeconds) {
        if (ageSeconds >= LOST_SECONDS) return State.LOST;
        if (!everHeard) return State.CONNECTING;
        return cut || ageSeconds >= STALE_SECONDS ? State.STALE : State.LIVE;
    }
}
