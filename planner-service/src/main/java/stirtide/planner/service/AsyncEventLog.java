package stirtide.planner.service;

import io.micrometer.core.instrument.Timer;
import io.vertx.core.Future;
import io.vertx.core.Vertx;
import io.vertx.core.WorkerExecutor;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import stirtide.events.day.StoredEvent;
import stirtide.planner.eventlog.EventLog;
import stirtide.planner.eventlog.EventLog.Append;
import stirtide.planner.eventlog.EventLog.KnownCommand;

/** The log on its one thread, in the order of the calls, so that no event loop waits for a disk. */
class AsyncEventLog {
    private static final int MOST_SECONDS = 60;

    private final EventLog log;
    private final WorkerExecutor thread;
    private final Timer appendTimer;

    AsyncEventLog(Vertx vertx, EventLog log, Timer appendTimer) {
        this.log = log;
        this.thread = vertx.createSharedWorkerExecutor("log", 1, MOST_SECONDS, TimeUnit.SECONDS);
        this.appendTimer = appendTimer;
    }

    Future<Append> append(
            String day, long expectedRevision, String commandId, byte[] requestDigest, List<StoredEvent> events) {
        return ask(
                open -> appendTimer.record(() -> open.append(day, expectedRevision, commandId, requestDigest, events)));
    }

    Future<Optional<KnownCommand>> command(String day, String commandId) {
        return ask(open -> open.command(day, commandId));
    }

    Future<List<StoredEvent>> read(String day, long after, int limit) {
        return ask(open -> open.read(day, after, limit));
    }

    /** All days, sorted, each with its seal. */
    Future<SortedMap<String, String>> seals() {
        return ask(EventLog::seals);
    }

    Future<String> seal(String day) {
        return ask(open -> open.seal(day));
    }

    Future<Void> check(String day) {
        return ask(open -> {
            open.check(day);
            return null;
        });
    }

    /** Looks whether the log is still where it was opened; {@link #readOnly} tells if it is not. */
    Future<Void> checkPlace() {
        return ask(open -> {
            open.checkPlace();
            return null;
        });
    }

    /** Why nothing can be stored any more; empty while all is well. */
    Optional<String> readOnly() {
        return log.readOnly();
    }

    /** Other work on the log, between two calls. */
    <T> Future<T> between(Callable<T> work) {
        return thread.executeBlocking(work);
    }

    private <T> Future<T> ask(Function<EventLog, T> question) {
        return thread.executeBlocking(() -> question.apply(log));
    }
}
