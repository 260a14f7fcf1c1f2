package stirtide.planner.http;

/** An open stream of server-sent events to one listener. Confined to the context of its response. */
interface SseStream {
    /** Sends what has changed, as far as the connection takes it. */
    void changed();

    /** Where the events are written. */
    SseWriter line();
}
