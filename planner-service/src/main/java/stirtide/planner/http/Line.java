package stirtide.planner.http;

import io.vertx.core.http.HttpServerResponse;

/** The write side of a feed: knows whether there is room, and gives up on a listener that has read nothing for long. */
final class Line {
    private static final int MOST_FULL_BEATS = 6;

    private final HttpServerResponse response;
    private int fullBeats;

    Line(HttpServerResponse response) {
        this.response = response;
    }

    boolean hasRoom() {
        return !response.closed() && !response.ended() && !response.writeQueueFull();
    }

    /** Writes one event. Its data must be one line, which compact JSON is. */
    void send(long id, String name, String data) {
        response.write("id: " + id + "\nevent: " + name + "\ndata: " + data + "\n\n");
    }

    void whenRoom(Runnable goOn) {
        response.drainHandler(drained -> goOn.run());
    }

    void beat() {
        if (response.closed() || response.ended()) return;
        fullBeats = response.writeQueueFull() ? fullBeats + 1 : 0;
        if (fullBeats > MOST_FULL_BEATS) response.reset();
        else if (fullBeats == 0) response.write(": still here\n\n");
    }

    void end() {
        if (!response.closed() && !response.ended()) response.end();
    }
}
