package stirtide.planner.service;

import io.vertx.core.Future;
import io.vertx.core.Vertx;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The summaries of days that are over and not in memory, and their cache beside the log. Confined to one context. */
final class ClosedDaySummaries {
    private final Vertx vertx;
    private final AsyncEventLog log;
    private final ClosedDayCache cache;
    private final SortedMap<String, ClosedDaySummary> days = new TreeMap<>();

    ClosedDaySummaries(Vertx vertx, AsyncEventLog log, ClosedDayCache cache) {
        this.vertx = vertx;
        this.log = log;
        this.cache = cache;
    }

    /** Takes the summary of a day from the cache; false when it holds none of the day as the log has it. */
    boolean restore(String name, String seal) {
        Optional<ClosedDaySummary> cached = cache.find(name, seal);
        cached.ifPresent(summary -> days.put(name, summary));
        return cached.isPresent();
    }

    void add(String name, ClosedDaySummary summary) {
        days.put(name, summary);
        store(name, summary);
    }

    /** Writes a summary into the cache, unless the log has moved on meanwhile. */
    void store(String name, ClosedDaySummary summary) {
        if (log.readOnly().isPresent()) return;
        log.seal(name)
                .compose(seal -> vertx.executeBlocking(() -> {
                    if (seal.startsWith(summary.revision() + "-")) cache.store(name, seal, summary);
                    return null;
                }));
    }

    boolean contains(String name) {
        return days.containsKey(name);
    }

    void remove(String name) {
        days.remove(name);
    }

    SortedMap<String, ClosedDaySummary> all() {
        return days;
    }

    /** Verifies the events of these days in the log, one day after the other, beside the work. */
    Future<Void> verify() {
        Future<Void> verified = Future.succeededFuture();
        for (String name : List.copyOf(days.keySet())) verified = verified.compose(before -> log.check(name));
        return verified;
    }

    /** Names of the days that hold anything of a client. */
    Stream<String> knowing(String clientId) {
        return days.entrySet().stream()
                .filter(day -> day.getValue().knows(clientId))
                .map(Map.Entry::getKey);
    }

    /** Ids of clients these days hold anything of. */
    Stream<String> clients() {
        return days.values().stream().flatMap(day -> day.clients().stream());
    }

    /** Ids of clients whose erasure these days record. */
    Stream<String> erased() {
        return days.values().stream().flatMap(day -> day.erased().stream());
    }

    /** Times of the newest events of these days. */
    Stream<Instant> times() {
        return days.values().stream().map(ClosedDaySummary::time);
    }
}
