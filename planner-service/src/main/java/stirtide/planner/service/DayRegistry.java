package stirtide.planner.service;

import io.vertx.core.Future;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;
import stirtide.planner.day.history.ClientRecords;

/**
 * All days of the service. Days that are not over are in memory; of those that are over only the few that were used last,
 * of the others a summary, and they are read from the log when they are asked for. Confined to one context.
 */
final class DayRegistry {
    private final AsyncEventLog log;
    private final SalonClock clock;
    private final Function<DayActor, LoadedDay> prepared;
    private final SortedMap<String, LoadedDay> loaded = new TreeMap<>();
    private final ClosedDaySummaries evicted;
    private final RecentDays recent = new RecentDays();
    private final SerialQueue readings = new SerialQueue();

    /** {@code prepared} is called once with every day that comes into memory. */
    DayRegistry(
            AsyncEventLog log, ClosedDaySummaries evicted, SalonClock clock, Function<DayActor, LoadedDay> prepared) {
        this.log = log;
        this.evicted = evicted;
        this.clock = clock;
        this.prepared = prepared;
    }

    /** Number of days in memory; may be called on any thread. */
    int loadedCount() {
        return loaded.size();
    }

    /** Days in memory. */
    Collection<LoadedDay> loaded() {
        return List.copyOf(loaded.values());
    }

    /** Days in memory by name. */
    SortedMap<String, LoadedDay> loadedByName() {
        return loaded;
    }

    /** Summaries of the days that are not in memory. */
    ClosedDaySummaries evicted() {
        return evicted;
    }

    Optional<LoadedDay> find(String name) {
        return Optional.ofNullable(loaded.get(name));
    }

    /** A day in memory that was opened. */
    Optional<LoadedDay> opened(String name) {
        return find(name).filter(LoadedDay::opened);
    }

    /** A day in memory, created when it is not there. */
    LoadedDay findOrCreate(String name) {
        return loaded.computeIfAbsent(name, this::created);
    }

    private LoadedDay created(String name) {
        DayActor actor = new DayActor(name, log);
        actor.listen(() -> {
            if (!actor.day().closed()) return;
            evicted.store(name, ClosedDaySummary.of(actor.day()));
            use(name);
        });
        return prepared.apply(actor);
    }

    /** Drops a day that was not opened, unless others wait to open it: two actors would overwrite each other. */
    void dropUnopened(String name, LoadedDay day) {
        if (!day.opened() && day.actor().idle()) loaded.remove(name, day);
    }

    /** Reads all days of the log, one after the other, except those that are over and in the cache as the log has them. */
    Future<Void> readAll() {
        return log.seals().compose(seals -> {
            Future<Void> read = Future.succeededFuture();
            for (Map.Entry<String, String> seal : seals.entrySet())
                if (!evicted.restore(seal.getKey(), seal.getValue()))
                    read = read.compose(before -> readNew(seal.getKey()));
            return read;
        });
    }

    private Future<Void> readNew(String name) {
        LoadedDay day = findOrCreate(name);
        return day.actor().read().map(done -> {
            if (day.over(clock.now())) evict(name);
            return done;
        });
    }

    /** Evicts days that were never closed and have passed; to be called about once a day. */
    void evictPassed() {
        Instant now = clock.now();
        loaded.entrySet().stream()
                .filter(day -> !recent.contains(day.getKey()) && day.getValue().over(now))
                .map(Map.Entry::getKey)
                .toList()
                .forEach(this::use);
    }

    /** Completes when a day is in memory, at once if it is already or was never opened. */
    Future<Void> load(String name) {
        if (loaded.containsKey(name) && !recent.contains(name)) return Future.succeededFuture();
        return readings.add(() -> {
            if (!evicted.contains(name)) {
                if (recent.contains(name)) use(name);
                return Future.succeededFuture();
            }
            // Not to be found before it is read to its end.
            LoadedDay fresh = created(name);
            return fresh.actor().read().map(read -> {
                loaded.put(name, fresh);
                evicted.remove(name);
                use(name);
                return read;
            });
        });
    }

    private void use(String name) {
        recent.use(name, this::evictable).forEach(this::evict);
    }

    private boolean evictable(String name) {
        LoadedDay day = loaded.get(name);
        return day != null && day.idle() && day.over(clock.now());
    }

    private void evict(String name) {
        LoadedDay day = loaded.remove(name);
        recent.remove(name);
        if (day != null) evicted.add(name, ClosedDaySummary.of(day.day()));
    }

    /** Newest revision of every opened day. */
    SortedMap<String, Long> revisions() {
        SortedMap<String, Long> revisions = new TreeMap<>();
        evicted.all().forEach((name, day) -> revisions.put(name, day.revision()));
        loaded.forEach((name, day) -> {
            if (day.opened()) revisions.put(name, day.day().revision());
        });
        return revisions;
    }

    /** Time of the newest event of all days. */
    Optional<Instant> newestTime() {
        return Stream.concat(
                        evicted.times(),
                        loaded.values().stream().map(day -> day.day().time()))
                .max(Instant::compareTo);
    }

    /** Names of the days that hold anything of a client, sorted. */
    List<String> knowing(String clientId) {
        Stream<String> here = loaded.entrySet().stream()
                .filter(day -> ClientRecords.known(day.getValue().day(), clientId))
                .map(Map.Entry::getKey);
        return Stream.concat(here, evicted.knowing(clientId))
                .distinct()
                .sorted()
                .toList();
    }

    /** Ids of all clients that any day names, those of erased ones too. */
    List<String> clientIds() {
        Stream<String> here = loaded.values().stream().flatMap(day -> ClientRecords.idsOn(day.day()).stream());
        return Stream.of(here, evicted.clients(), erased().stream())
                .flatMap(ids -> ids)
                .distinct()
                .toList();
    }

    /** Ids of clients whose erasure a day records. */
    List<String> erased() {
        Stream<String> here = loaded.values().stream().flatMap(day -> ClientRecords.erasedOn(day.day()).stream());
        return Stream.concat(evicted.erased(), here).distinct().toList();
    }
}
