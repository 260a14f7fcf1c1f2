package stirtide.planner.http;

import io.vertx.core.Vertx;
import io.vertx.core.http.HttpConnection;
import io.vertx.core.http.HttpMethod;
import io.vertx.core.http.HttpServerResponse;
import io.vertx.ext.web.RoutingContext;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.function.Function;

/** All open streams: their number is limited, a timer keeps them alive, and they end before the server does. */
final class StreamRegistry {
    private final DayOperations days;
    private final HttpLimits limits;
    private final Map<SseStream, Opened> open = new LinkedHashMap<>();
    private final Map<String, Integer> byPeer = new HashMap<>();
    private final AtomicInteger count = new AtomicInteger();
    private boolean ending;

    StreamRegistry(Vertx vertx, DayOperations days, HttpLimits limits) {
        this.days = days;
        this.limits = limits;
        vertx.setPeriodic(
                limits.beatMillis(), timer -> List.copyOf(open.keySet()).forEach(this::beat));
    }

    /** Number of open streams; may be called from any thread. */
    int count() {
        return count.get();
    }

    private record Opened(String peer, HttpConnection connection, BooleanSupplier stillGood, Runnable stopListening) {}

    /** A stream ends when its caller is not authenticated any more, or reads nothing. */
    private void beat(SseStream stream) {
        Opened opened = open.get(stream);
        if (opened == null) return;
        if (opened.stillGood.getAsBoolean()) {
            if (stream.line().beat()) return;
            forget(stream);
            ConnectionTracker.cut(opened.connection);
        } else {
            forget(stream);
            stream.line().end();
        }
    }

    private Optional<ProblemDetail> noRoom(String peer) {
        if (ending || open.size() >= limits.listeners())
            return Optional.of(ProblemDetail.of(
                    503, "NO_MORE_LISTENERS", "no more than " + limits.listeners() + " listeners; try again later"));
        if (byPeer.getOrDefault(peer, 0) < limits.listenersPerPeer()) return Optional.empty();
        return Optional.of(ProblemDetail.of(
                429,
                "TOO_MANY_LISTENERS",
                "no more than " + limits.listenersPerPeer() + " listeners of one address; end one first"));
    }

    /**
     * Begins a stream of a day on the response of a request.
     *
     * @param stillGood whether its caller is still authenticated
     */
    void open(RoutingContext ctx, String day, BooleanSupplier stillGood, Function<HttpServerResponse, SseStream> make) {
        HttpConnection connection = ctx.request().connection();
        String peer = ConnectionTracker.peer(connection);
        if (ctx.request().method() == HttpMethod.HEAD) {
            ctx.response().putHeader("content-type", "text/event-stream").end();
            return;
        }
        Optional<ProblemDetail> noRoom = noRoom(peer);
        if (noRoom.isPresent()) {
            ctx.response().putHeader("retry-after", "10");
            ProblemResponses.send(ctx, noRoom.get());
            return;
        }
        HttpServerResponse response = ctx.response();
        response.putHeader("content-type", "text/event-stream")
                .putHeader("cache-control", "no-store")
                .putHeader("x-accel-buffering", "no")
                .setChunked(true);
        SseStream stream = make.apply(response);
        open.put(stream, new Opened(peer, connection, stillGood, days.listen(day, stream::changed)));
        byPeer.merge(peer, 1, Integer::sum);
        count.set(open.size());
        response.closeHandler(closed -> forget(stream));
        response.exceptionHandler(broken -> forget(stream));
        response.write("retry: 2000\n\n");
        stream.changed();
    }

    private void forget(SseStream stream) {
        Opened gone = open.remove(stream);
        if (gone == null) return;
        gone.stopListening.run();
        byPeer.computeIfPresent(gone.peer, (name, opened) -> opened == 1 ? null : opened - 1);
        count.set(open.size());
    }

    /** Ends every stream and accepts no new one. */
    void end() {
        ending = true;
        for (SseStream stream : new ArrayList<>(open.keySet())) {
            forget(stream);
            stream.line().end();
        }
    }
}
