package stirtide.planner.service;

import io.vertx.core.Future;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Supplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import stirtide.events.command.CommandRequest;
import stirtide.events.day.DayEvent;
import stirtide.events.day.StoredEvent;
import stirtide.planner.day.Evolver;
import stirtide.planner.day.Ticker;
import stirtide.planner.day.state.Day;
import stirtide.planner.eventlog.EventLog;
import stirtide.planner.eventlog.EventLog.Append;
import stirtide.planner.eventlog.LogFailure;

/**
 * One day and its changes: its state is the replay of its stream, and every change is decided, appended, applied and
 * announced before the next begins. Confined to one context.
 */
final class DayActor {
    private static final Logger LOG = LoggerFactory.getLogger("stirtide.day");

    private final String name;
    private final AsyncEventLog log;
    private final SerialQueue steps = new SerialQueue();
    private final Set<Runnable> listeners = new LinkedHashSet<>();
    private Day day = Day.UNOPENED;
    private boolean doubtful;
    private int followers;

    DayActor(String name, AsyncEventLog log) {
        this.name = name;
        this.log = log;
    }

    String name() {
        return name;
    }

    Day day() {
        return day;
    }

    /** Reads the stream to its end, as a step of its own: steps added meanwhile wait for it. */
    Future<Void> read() {
        return steps.add(this::readOn);
    }

    private Future<Void> readOn() {
        return log.read(name, day.revision(), EventLog.READ_LIMIT).compose(events -> {
            if (events.isEmpty()) {
                doubtful = false;
                return Future.succeededFuture();
            }
            day = day == Day.UNOPENED ? Evolver.replay(events) : evolved(events);
            return readOn();
        });
    }

    private Day evolved(List<StoredEvent> events) {
        Day next = day;
        for (StoredEvent event : events) next = Evolver.evolve(next, event);
        return next;
    }

    /** Runs a step after all before it, on a state that agrees with the log. */
    <T> Future<T> step(Supplier<Future<T>> step) {
        return steps.add(() -> doubtful ? readOn().compose(read -> step.get()) : step.get());
    }

    /** Whether no step is waiting and there is no follower. */
    boolean idle() {
        return followers == 0 && steps.empty();
    }

    boolean busy() {
        return steps.full();
    }

    Future<Void> drained() {
        return steps.drained();
    }

    /**
     * Notes everything that fell due up to now, each at the instant it fell due. To be called within a step.
     *
     * @return whether anything was noted
     */
    Future<Boolean> noteDue(Instant now) {
        Optional<Instant> next = Ticker.nextAt(day).filter(at -> !at.isAfter(now));
        if (next.isEmpty()) return Future.succeededFuture(false);
        List<DayEvent> due = Ticker.due(day, next.get());
        if (due.isEmpty()) return Future.failedFuture(new IllegalStateException("nothing is due at " + next.get()));
        return append(due, next.get()).compose(appended -> noteDue(now)).map(true);
    }

    /** Stores events of the service itself. To be called within a step. */
    Future<Append> append(List<DayEvent> events, Instant at) {
        return store(stored(events, at, StoredEvent.SERVICE, EventLog.NO_COMMAND), EventLog.NO_COMMAND, new byte[0]);
    }

    /** Stores the events of a command. To be called within a step. */
    Future<Append> append(
            List<DayEvent> events, Instant at, CommandRequest request, byte[] digest, Optional<String> role) {
        List<StoredEvent> stored = stored(events, at, request.actor(), request.commandId()).stream()
                .map(event -> event.by(role))
                .toList();
        return store(stored, request.commandId(), digest);
    }

    private Future<Append> store(List<StoredEvent> events, String commandId, byte[] digest) {
        // One listener, not one after another: when the log answers between two, the later one is called first, and the
        // next step would begin before the day has changed.
        return log.append(name, day.revision(), commandId, digest, events)
                .compose(answer -> taken(answer, events), failed -> {
                    doubtful = true;
                    return Future.failedFuture(failed);
                });
    }

    private Future<Append> taken(Append answer, List<StoredEvent> events) {
        if (answer instanceof Append.Appended) day = evolved(events);
        else doubtful = true;
        announce();
        return answer instanceof Append.Conflict conflict
                ? Future.failedFuture(new LogFailure(
                        LogFailure.Kind.UNAVAILABLE, "the log was ahead at revision " + conflict.actual()))
                : Future.succeededFuture(answer);
    }

    private List<StoredEvent> stored(Collection<DayEvent> events, Instant at, String actor, String commandId) {
        Instant time = at.isBefore(day.time()) ? day.time() : at;
        List<StoredEvent> stored = new ArrayList<>();
        long revision = day.revision();
        for (DayEvent event : events) {
            revision++;
            stored.add(new StoredEvent(idOf(revision), name, revision, time, actor, commandId, event));
        }
        return List.copyOf(stored);
    }

    /** Derived from the place in the stream, so that the same day played twice has the same ids. */
    private String idOf(long revision) {
        return UUID.nameUUIDFromBytes((name + "#" + revision).getBytes(StandardCharsets.UTF_8))
                .toString();
    }

    /** Calls every listener after a change of the day or the clock. One that fails does not affect the others. */
    void announce() {
        for (Runnable listener : Set.copyOf(listeners)) {
            try {
                listener.run();
            } catch (RuntimeException broken) {
                LOG.error("{}: a listener failed", name, broken);
            }
        }
    }

    Runnable listen(Runnable listener) {
        // A fresh object, so that the same listener may listen twice.
        Runnable own = () -> listener.run();
        listeners.add(own);
        return () -> listeners.remove(own);
    }

    /** The same for a caller outside the service, for whom the day stays in memory. */
    Runnable follow(Runnable listener) {
        Runnable end = listen(listener);
        followers++;
        return () -> {
            followers--;
            end.run();
        };
    }
}
