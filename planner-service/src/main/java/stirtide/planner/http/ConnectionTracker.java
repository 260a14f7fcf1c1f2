package stirtide.planner.http;

import io.vertx.core.Handler;
import io.vertx.core.Vertx;
import io.vertx.core.http.HttpConnection;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.core.http.HttpServerResponse;
import io.vertx.core.net.impl.ConnectionBase;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;

/**
 * Counts connections, all together and by address. One too many gets a refusal for its first request. One on
 * which no complete request arrives in time is closed, also when its headers arrive in drops or its last response is unread.
 */
final class ConnectionTracker {
    /** Looks at all connections so often within the seconds that one may be quiet. */
    private static final int LOOKS = 12;

    /** A large answer may take longer: so many bytes a second must be read. */
    private static final int BYTES_READ_A_SECOND = 64 * 1024;

    private final HttpLimits limits;
    private final Map<HttpConnection, Quiet> open = new HashMap<>();
    private final Set<HttpConnection> tooMany = new HashSet<>();
    private final Map<String, Integer> byPeer = new HashMap<>();
    private final AtomicInteger all = new AtomicInteger();

    ConnectionTracker(Vertx vertx, HttpLimits limits) {
        this.limits = limits;
        vertx.setPeriodic(limits.quietSeconds() * 1000L / LOOKS, timer -> closeQuiet());
    }

    /** How long nothing was asked on a connection, and whether an answer is still being made. */
    private static final class Quiet {
        private @Nullable HttpServerResponse inTheMaking;
        private long secondsToRead;
        private int looks;

        void asked(HttpServerResponse response) {
            inTheMaking = response;
            looks = 0;
        }

        /** Lets go of an answer that is complete: what hangs on it may be of a client. */
        boolean tooLong(int seconds) {
            HttpServerResponse answer = inTheMaking;
            if (answer != null) {
                if (!answer.ended()) return false;
                secondsToRead = answer.bytesWritten() / BYTES_READ_A_SECOND;
                inTheMaking = null;
            }
            looks++;
            return looks > LOOKS + secondsToRead * LOOKS / seconds;
        }
    }

    private void closeQuiet() {
        for (Map.Entry<HttpConnection, Quiet> each : List.copyOf(open.entrySet()))
            if (each.getValue().tooLong(limits.quietSeconds())) cut(each.getKey());
    }

    /**
     * Closes a connection at once. Every public way of the library to close one, its idle timeout included, writes what is
     * pending first and waits for that, so a client that reads nothing would keep its connection and its buffers. Only the
     * channel of the connection, which is internal, closes without waiting. {@code SlowClientsTest} finds it out if an
     * upgrade changes that; until then the fallback is the public close.
     */
    static void cut(HttpConnection connection) {
        if (connection instanceof ConnectionBase base)
            base.channelHandlerContext().close();
        else connection.close();
    }

    void opened(HttpConnection connection) {
        String peer = peer(connection);
        int inAll = all.incrementAndGet();
        int ofPeer = byPeer.merge(peer, 1, Integer::sum);
        open.put(connection, new Quiet());
        connection.closeHandler(closed -> closed(connection, peer));
        // Twice over the limit it is closed without waiting for a request.
        if (inAll > 2 * limits.connections() || ofPeer > 2 * limits.connectionsPerPeer()) connection.close();
        else if (inAll > limits.connections() || ofPeer > limits.connectionsPerPeer()) tooMany.add(connection);
    }

    private void closed(HttpConnection connection, String peer) {
        all.decrementAndGet();
        open.remove(connection);
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

    /** A client that sends requests without reading the responses would let them pile up: its connection is closed. */
    Handler<HttpServerRequest> limited(Handler<HttpServerRequest> next) {
        return request -> {
            Quiet quiet = open.get(request.connection());
            if (quiet != null) quiet.asked(request.response());
            if (request.response().writeQueueFull()) cut(request.connection());
            else if (!tooMany.contains(request.connection())) next.handle(request);
            else
                EarlyResponse.refuse(
                        request,
                        ProblemDetail.of(
                                429,
                                "TOO_MANY_CONNECTIONS",
                                "no more than " + limits.connectionsPerPeer() + " connections of one address and "
                                        + limits.connections() + " in all; close some"));
        };
    }
}
