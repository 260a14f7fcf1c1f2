package stirtide.planner.http;

/** An open stream of server-sent events to one listener. Confined to the context of its response. */
interface SseStream {
    /** Sends what has changed, as far as the connection takes it. */
    void changed();

    /**
     * Sends a comment, so that a quiet stream stays open and a dead one is noticed.
     *
     * @return false when the listener has read nothing for long
     */
    boolean beat();

    /** Ends the stream. */
    void end();
}
