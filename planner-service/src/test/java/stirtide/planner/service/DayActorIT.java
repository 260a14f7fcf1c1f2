package stirtide.planner.service;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.micrometer.core.instrument.simple.SimpleMeterRegistry;
import io.vertx.core.Future;
import io.vertx.core.Promise;
import io.vertx.core.Vertx;
import io.vertx.core.internal.ContextInternal;
import java.lang.reflect.Proxy;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.LongStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import stirtide.events.day.DayEvent;
import stirtide.events.day.StoredEvent;
import stirtide.planner.eventlog.EventLog;
import stirtide.planner.eventlog.EventLog.Append;
import stirtide.planner.eventlog.LogFailure;
import stirtide.planner.eventlog.MemoryEventLog;

/** No step begins before the day knows what the step before it has stored, however soon the log answers. */
class DayActorIT {
    private static final int STEPS = 20;
    private static final Instant AT = Instant.parse("2027-03-09T08:00:00Z");
    private static final DayEvent EVENT = new DayEvent.AlarmAcknowledged("late-1");

    private final Vertx vertx = Vertx.vertx();
    private final EventLog log = new MemoryEventLog();

    @AfterEach
    void end() throws Exception {
        vertx.close().await(20, TimeUnit.SECONDS);
    }

    /** Answers from another thread as soon as the first listens, before the same thread can add a second. */
    private final class Hasty extends AsyncEventLog {
        private boolean fails;

        Hasty() {
            super(vertx, log, new SimpleMeterRegistry().timer("append"));
        }

        @Override
        Future<Append> append(
                String day, long expectedRevision, String commandId, byte[] digest, List<StoredEvent> events) {
            if (fails) return hastened(promise -> promise.fail(new LogFailure(LogFailure.Kind.UNAVAILABLE, "no")));
            Append answer = log.append(day, expectedRevision, commandId, digest, events);
            return hastened(promise -> promise.complete(answer));
        }

        @SuppressWarnings("unchecked")
        private Future<Append> hastened(Consumer<Promise<Append>> end) {
            // Of a context, as those of the log are: listeners of another thread's answer are called later.
            Promise<Append> promise = ContextInternal.current().promise();
            Future<Append> future = promise.future();
            return (Future<Append>) Proxy.newProxyInstance(
                    Future.class.getClassLoader(), new Class<?>[] {Future.class}, (proxy, method, arguments) -> {
                        Object listening = method.invoke(future, arguments);
                        CompletableFuture.runAsync(() -> end.accept(promise)).join();
                        return listening;
                    });
        }
    }

    private <T> T onContext(Supplier<Future<T>> work) throws Exception {
        Promise<T> done = Promise.promise();
        vertx.runOnContext(begun -> work.get().onComplete(done));
        return done.future().await(20, TimeUnit.SECONDS);
    }

    @Test
    void every_step_begins_where_the_one_before_it_ended() throws Exception {
        List<Long> begunAt = new ArrayList<>();
        onContext(() -> {
            DayActor keeper = new DayActor(SmallSalon.DAY, new Hasty());
            Future<?> last = Future.succeededFuture();
            for (int number = 0; number < STEPS; number++)
                last = keeper.step(() -> {
                    begunAt.add(keeper.day().revision());
                    return keeper.append(List.of(EVENT), AT);
                });
            return last.mapEmpty();
        });
        assertThat(begunAt).isEqualTo(LongStream.range(0, STEPS).boxed().toList());
        assertThat(log.head(SmallSalon.DAY)).isEqualTo(STEPS);
    }

    @Test
    void after_a_failed_append_the_next_step_reads_the_log_first() throws Exception {
        Hasty thread = new Hasty();
        DayActor keeper = new DayActor(SmallSalon.DAY, thread);
        thread.fails = true;
        assertThatThrownBy(() -> onContext(() -> {
                    Future<Append> failing = keeper.step(() -> keeper.append(List.of(EVENT), AT));
                    thread.fails = false;
                    return failing;
                }))
                .isInstanceOf(LogFailure.class);
        log.append(SmallSalon.DAY, 0, EventLog.NO_COMMAND, new byte[0], List.of(storedElsewhere()));
        assertThat(onContext(() ->
                        keeper.step(() -> Future.succeededFuture(keeper.day().revision()))))
                .isEqualTo(1);
    }

    private static StoredEvent storedElsewhere() {
        return new StoredEvent("id-1", SmallSalon.DAY, 1, AT, StoredEvent.SERVICE, EventLog.NO_COMMAND, EVENT);
    }

    @Test
    void a_listener_that_fails_keeps_nobody_from_hearing_nor_from_an_answer() throws Exception {
        DayActor keeper = new DayActor(SmallSalon.DAY, new Hasty());
        List<Long> heard = new ArrayList<>();
        for (int listener = 0; listener < 4; listener++) {
            keeper.listen(() -> {
                throw new IllegalStateException("a listener that fails");
            });
            keeper.listen(() -> heard.add(keeper.day().revision()));
        }
        assertThat(onContext(() -> keeper.step(() -> keeper.append(List.of(EVENT), AT))))
                .isEqualTo(new Append.Appended(1, 1));
        assertThat(heard).containsExactly(1L, 1L, 1L, 1L);
    }
}
