package stirtide.planner.http;

import io.vertx.core.http.HttpServerResponse;

/** Writes server-sent events: knows whether there is room, and gives up on a listener that reads nothing for long. */
final class SseWriter {
    private static final int MOST_FULL_BEATS = 2;

    /** A comment long enough to fill, within minutes, the connection of a listener who reads nothing. */
    private static final String BEAT = ": still here" + " ".repeat(2000) + "\n\n";

    private final HttpServerResponse response;
    private int fullBeats;

    SseWriter(HttpServerResponse response) {
        this.response = response;
    }

    private boolean open() {
        return !response.closed() && !response.ended();
    }

    boolean hasRoom() {
        return open() && !response.writeQueueFull();
    }

    /** Writes one event, unless the stream has ended. Its data must be one line, as compact JSON is. */
    void send(long id, String name, String data) {
        if (open()) response.write("id: " + id + "\nevent: " + name + "\ndata: " + data + "\n\n");
    }

    void whenRoom(Runnable goOn) {
        response.drainHandler(drained -> {
            fullBeats = 0;
            goOn.run();
        });
    }

    /** Sends a comment, so that a quiet stream stays open; false when the connection has been full for too long. */
    boolean beat() {
        if (!open()) return true;
        fullBeats = response.writeQueueFull() ? fullBeats + 1 : 0;
        if (fullBeats == 0) response.write(BEAT);
        return fullBeats <= MOST_FULL_BEATS;
    }

    void end() {
        if (open()) response.end();
    }
}
