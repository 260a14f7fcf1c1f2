package stirtide.planner.http;

/** One open line to a listener. Confined to the context of its response. */
interface SseStream {
    /** Something changed: send what is new, as far as the line takes it. */
    void changed();

    /**
     * Sends a comment so that a quiet line stays open and a dead one is noticed.
     *
     * @return false when the listener has read nothing for long
     */
    boolean beat();

    /** Ends the line. */
    void end();
}
