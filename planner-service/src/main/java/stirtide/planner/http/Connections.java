package stirtide.planner.http;

import io.vertx.core.Handler;
import io.vertx.core.http.HttpConnection;
import io.vertx.core.http.HttpServerRequest;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;

/** Counts connections, all together and by address. One too many is told so when it asks for something. */
final class Connections {
    private final Limits limits;
    private final Set<HttpConnection> tooMany = new HashSet<>();
    private final Map<String, Integer> byPeer = new HashMap<>();
    private final AtomicInteger all = new AtomicInteger();

    Connections(Limits limits) {
        this.limits = limits;
    }

    void opened(HttpConnection connection) {
        String peer = peer(connection);
        int inAll = all.incrementAndGet();
        int ofPeer = byPeer.merge(peer, 1, Integer::sum);
        connection.closeHandler(closed -> closed(connection, peer));
        // Twice over the limit nobody waits for the question any more.
        if (inAll > 2 * limits.connections() || ofPeer > 2 * limits.connectionsPerPeer()) connection.close();
        else if (inAll > limits.connections() || ofPeer > limits.connectionsPerPeer()) tooMany.add(connection);
    }

    private void closed(HttpConnection connection, String peer) {
        all.decrementAndGet();
        tooMany.remove(connection);
        byPeer.computeIfPresent(peer, (name, count) -> count == 1 ? null : count - 1);
    }

    /** Number of open connections; may be asked from any thread. */
    int count() {
        return all.get();
    }

    static String peer(HttpConnection connection) {
        return connection.remoteAddress() == null
                ? "unknown"
                : String.valueOf(connection.remoteAddress().hostAddress());
    }

    /** Whoever asks on while the answers before are unread would have them pile up: that connection ends. */
    Handler<HttpServerRequest> limited(Handler<HttpServerRequest> next) {
        return request -> {
            if (request.response().writeQueueFull()) request.connection().close();
            else if (!tooMany.contains(request.connection())) next.handle(request);
            else
                Refusing.refuse(
                        request,
                        Problem.of(
                                429,
                                "TOO_MANY_CONNECTIONS",
                                "no more than " + limits.connectionsPerPeer() + " connections of one address and "
                                        + limits.connections() + " in all; close some"));
        };
    }
}
