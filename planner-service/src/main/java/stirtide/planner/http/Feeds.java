package stirtide.planner.http;

import io.vertx.core.Vertx;
import io.vertx.core.http.HttpServerResponse;
import io.vertx.ext.web.RoutingContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;

/** All open lines: their number is capped, a timer keeps them alive, and they end before the server does. */
final class Feeds {
    private static final int MOST = 1000;
    private static final long BEAT_MILLIS = 5_000;

    private final DayDesk desk;
    private final Map<Feed, Runnable> open = new LinkedHashMap<>();
    private final AtomicInteger count = new AtomicInteger();
    private boolean ending;

    Feeds(Vertx vertx, DayDesk desk) {
        this.desk = desk;
        vertx.setPeriodic(BEAT_MILLIS, timer -> Set.copyOf(open.keySet()).forEach(Feed::beat));
    }

    /** Number of open lines; may be asked from any thread. */
    int count() {
        return count.get();
    }

    /** Begins a feed of a day on the response of a request. */
    void open(RoutingContext ctx, String day, Function<HttpServerResponse, Feed> make) {
        if (ending || open.size() >= MOST) {
            Problems.send(
                    ctx, Problem.of(503, "NO_MORE_LISTENERS", "no more than " + MOST + " listeners; try again later"));
            return;
        }
        HttpServerResponse response = ctx.response();
        response.putHeader("content-type", "text/event-stream")
                .putHeader("cache-control", "no-store")
                .putHeader("x-accel-buffering", "no")
                .setChunked(true);
        Feed feed = make.apply(response);
        open.put(feed, desk.listen(day, feed::changed));
        count.set(open.size());
        response.closeHandler(closed -> forget(feed));
        response.exceptionHandler(broken -> forget(feed));
        response.write("retry: 2000\n\n");
        feed.changed();
    }

    private void forget(Feed feed) {
        Runnable stopListening = open.remove(feed);
        if (stopListening != null) stopListening.run();
        count.set(open.size());
    }

    /** Ends every line and takes no new one. */
    void end() {
        ending = true;
        for (Feed feed : new ArrayList<>(open.keySet())) {
            forget(feed);
            feed.end();
        }
    }
}
