package stirtide.planner.http;

import io.vertx.core.http.HttpServerResponse;

/** The write side of a feed: knows whether there is room, and gives up on a listener that has read nothing for long. */
final class Line {
    private static final int MOST_FULL_BEATS = 2;

    /** A comment long enough to fill the line, within minutes, of a listener who reads nothing when nothing happens. */
    private static final String BEAT = ": still here" + " ".repeat(2000) + "\n\n";

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
        response.drainHandler(drained -> {
            fullBeats = 0;
            goOn.run();
        });
    }

    /** False when the line has been full for too long. */
    boolean beat() {
        if (response.closed() || response.ended()) return true;
        fullBeats = response.writeQueueFull() ? fullBeats + 1 : 0;
        if (fullBeats == 0) response.write(BEAT);
        return fullBeats <= MOST_FULL_BEATS;
    }

    void end() {
        if (!response.closed() && !response.ended()) response.end();
    }
}
