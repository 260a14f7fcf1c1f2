package stirtide.planner.service;

import io.vertx.core.Future;
import io.vertx.core.Vertx;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import stirtide.events.command.DayCommand.OpenDay;
import stirtide.planner.day.Ticker;
import stirtide.planner.day.history.CarriedDay;
import stirtide.planner.day.history.ClientRecords;
import stirtide.planner.day.history.PastUses;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.DayTime;
import stirtide.planner.eventlog.LogFailure;

/**
 * All days of the service. Those that are not over are whole in memory; of those that are over only a few that were
 * looked at last, the others are read from the log again when somebody asks. A day is over when it was closed, or has
 * passed and nothing can fall due on it any more. Confined to one context.
 */
final class DayRegistry {
    /** Days that are over and still whole in memory. */
    private static final int MOST_LOOKED_AT = 4;

    /** Some months of a busy bar; more would make the opening of a day large and teach little. */
    private static final int MOST_USES = 1000;

    private final Vertx vertx;
    private final AsyncEventLog log;
    private final ClosedDayCache file;
    private final SalonClock clock;
    private final UnaryOperator<KeptDay> prepared;
    private final Function<DayActor, PlanRunner> plans;
    private final SortedMap<String, KeptDay> days = new TreeMap<>();
    private final ClosedDaySummaries resting = new ClosedDaySummaries();
    private final Set<String> lookedAt = new LinkedHashSet<>();
    private final SerialQueue readings = new SerialQueue();

    /** A day with the one who has its plans drawn. */
    record KeptDay(DayActor keeper, PlanRunner plans) {
        Optional<Instant> nextAt() {
            return Ticker.nextAt(keeper.day());
        }

        Day day() {
            return keeper.day();
        }

        boolean over(Instant now) {
            return day().closed()
                    || day().revision() > 0
                            && !now.isBefore(DayTime.of(day().opened()).dayEnd())
                            && nextAt().isEmpty();
        }

        boolean idle() {
            return keeper.idle() && plans.idle();
        }
    }

    /**
     * @param plans draws the plans of a day
     * @param prepared is called once with every day that comes into memory
     */
    DayRegistry(
            Vertx vertx,
            AsyncEventLog log,
            ClosedDayCache file,
            SalonClock clock,
            Function<DayActor, PlanRunner> plans,
            UnaryOperator<KeptDay> prepared) {
        this.vertx = vertx;
        this.file = file;
        this.clock = clock;
        this.log = log;
        this.plans = plans;
        this.prepared = prepared;
    }

    /** How many are whole in memory; may be asked on any thread. */
    int whole() {
        return days.size();
    }

    /** Those whole in memory. */
    Collection<KeptDay> all() {
        return List.copyOf(days.values());
    }

    Optional<KeptDay> find(String name) {
        return Optional.ofNullable(days.get(name));
    }

    Optional<KeptDay> opened(String name) {
        return find(name).filter(kept -> kept.day().revision() > 0);
    }

    /** A day, made when it is not there. */
    KeptDay keep(String name) {
        return days.computeIfAbsent(name, this::made);
    }

    private KeptDay made(String name) {
        DayActor keeper = new DayActor(name, log);
        keeper.listen(() -> {
            if (!keeper.day().closed()) return;
            write(name, ClosedDaySummaries.Resting.of(keeper.day()));
            look(name);
        });
        return prepared.apply(new KeptDay(keeper, plans.apply(keeper)));
    }

    /** Drops a day that was not opened, unless others wait to open it: two keepers would write over each other. */
    void dropUnopened(String name, KeptDay kept) {
        if (kept.day().revision() == 0 && kept.keeper().idle()) days.remove(name, kept);
    }

    /**
     * Reads all days of the log, one after the other. Those that are over are laid to rest at once, and not read at all
     * when the file beside the log knows them as they are.
     */
    Future<Void> readAll() {
        return log.seals().compose(seals -> {
            Future<Void> read = Future.succeededFuture();
            for (var seal : seals.entrySet()) {
                Optional<ClosedDaySummaries.Resting> known = file.find(seal.getKey(), seal.getValue());
                if (known.isPresent()) resting.keep(seal.getKey(), known.get());
                else read = read.compose(before -> readWhole(seal.getKey()));
            }
            return read;
        });
    }

    private Future<Void> readWhole(String name) {
        KeptDay kept = keep(name);
        return kept.keeper().read().map(done -> {
            if (kept.over(clock.now())) layToRest(name);
            return done;
        });
    }

    /** Lays those to rest that nobody closed and that have passed since. To be called now and then, such as once a day. */
    void layPassedToRest() {
        Instant now = clock.now();
        days.entrySet().stream()
                .filter(day ->
                        !lookedAt.contains(day.getKey()) && day.getValue().over(now))
                .map(day -> day.getKey())
                .toList()
                .forEach(this::look);
    }

    /** Holds the events of days that are over against their digests, one day after the other, beside the work. */
    Future<Void> check() {
        Future<Void> checked = Future.succeededFuture();
        for (String name : List.copyOf(resting.all().keySet())) checked = checked.compose(before -> log.check(name));
        return checked;
    }

    /** Completes when a day is whole in memory, at once if it is already or was never opened. */
    Future<Void> atHand(String name) {
        if (days.containsKey(name) && !lookedAt.contains(name)) return Future.succeededFuture();
        return readings.add(() -> {
            if (!resting.holds(name)) {
                if (lookedAt.contains(name)) look(name);
                return Future.succeededFuture();
            }
            // Nobody finds it before it is read whole.
            KeptDay fresh = made(name);
            return fresh.keeper().read().map(read -> {
                days.put(name, fresh);
                resting.forget(name);
                look(name);
                return read;
            });
        });
    }

    /** Remembers that a day that is over was looked at, and lays those to rest that were looked at longest ago. */
    private void look(String name) {
        lookedAt.remove(name);
        lookedAt.add(name);
        if (lookedAt.size() <= MOST_LOOKED_AT) return;
        lookedAt.stream()
                .filter(other -> !other.equals(name) && restful(other))
                .limit(lookedAt.size() - MOST_LOOKED_AT)
                .toList()
                .forEach(this::layToRest);
    }

    private boolean restful(String name) {
        KeptDay kept = days.get(name);
        return kept != null && kept.idle() && kept.over(clock.now());
    }

    private void layToRest(String name) {
        KeptDay kept = days.remove(name);
        lookedAt.remove(name);
        if (kept == null) return;
        ClosedDaySummaries.Resting rest = ClosedDaySummaries.Resting.of(kept.day());
        resting.keep(name, rest);
        write(name, rest);
    }

    /** Writes into the file what stays of a day, if the log has it like that. */
    private void write(String name, ClosedDaySummaries.Resting day) {
        if (log.readOnly().isPresent()) return;
        log.seal(name)
                .compose(seal -> vertx.executeBlocking(() -> {
                    if (seal.startsWith(day.revision() + "-")) file.keep(name, seal, day);
                    return null;
                }));
    }

    /** Newest revision of every opened day. */
    SortedMap<String, Long> revisions() {
        SortedMap<String, Long> revisions = new TreeMap<>();
        resting.all().forEach((name, day) -> revisions.put(name, day.revision()));
        days.forEach((name, kept) -> {
            if (kept.day().revision() > 0) revisions.put(name, kept.day().revision());
        });
        return revisions;
    }

    Optional<Instant> newestTime() {
        return Stream.concat(
                        resting.newestTime().stream(),
                        days.values().stream().map(kept -> kept.day().time()))
                .max(Instant::compareTo);
    }

    /** Name of the newest day of the salon before the one to be opened. */
    Optional<String> newestBefore(OpenDay open) {
        SortedMap<String, Long> earlier = before(open, revisions());
        return earlier.isEmpty() ? Optional.empty() : Optional.of(earlier.lastKey());
    }

    private static <T> SortedMap<String, T> before(OpenDay open, SortedMap<String, T> days) {
        String salon = open.setup().salon().salonId() + "/";
        return days.subMap(salon, salon + open.setup().date());
    }

    /** The opening of a day with what the days before it teach; the newest of them must be at hand. */
    OpenDay taught(OpenDay open) {
        Optional<String> name = newestBefore(open);
        Optional<Day> newest = name.flatMap(this::opened).map(KeptDay::day);
        if (name.isPresent() && newest.isEmpty())
            throw new LogFailure(LogFailure.Kind.UNAVAILABLE, name.get() + " cannot be read; nothing was stored");
        return new OpenDay(
                PastUses.learned(open.setup(), newest, teaching(open), MOST_USES, open.bookings()), open.bookings());
    }

    /** What the days of the salon before this one teach. */
    private List<CarriedDay> teaching(OpenDay open) {
        List<CarriedDay> past = new ArrayList<>();
        before(open, resting.all()).values().forEach(day -> past.add(day.past()));
        before(open, days).values().stream()
                .filter(kept -> kept.day().revision() > 0)
                .forEach(kept -> past.add(CarriedDay.of(kept.day())));
        return past;
    }

    /** Days that hold anything of a client, those at hand before those that must be read first. */
    List<String> knowing(String clientId) {
        return Stream.concat(
                        days.entrySet().stream()
                                .filter(kept ->
                                        ClientRecords.known(kept.getValue().day(), clientId))
                                .map(kept -> kept.getKey()),
                        resting.knowing(clientId).stream())
                .distinct()
                .sorted()
                .toList();
    }

    /** Ids of clients whose erasure a day notes. */
    List<String> erased() {
        return Stream.concat(
                        resting.erased(),
                        days.values().stream().flatMap(kept -> ClientRecords.erasedOn(kept.day()).stream()))
                .distinct()
                .toList();
    }
}
