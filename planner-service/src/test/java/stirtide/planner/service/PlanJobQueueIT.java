package stirtide.planner.service;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import io.micrometer.core.instrument.simple.SimpleMeterRegistry;
import io.vertx.core.Future;
import io.vertx.core.Vertx;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stirtide.events.day.DayEvent;
import stirtide.planner.eventlog.EventLog;
import stirtide.planner.eventlog.SqliteEventLog;
import stirtide.planner.planning.stagger.SearchRounds;

/** A task that would never end of its own is broken off as soon as the day wants another, or the service stops. */
class PlanJobQueueIT {
    private static final long NOTHING = 0;

    @TempDir
    Path folder;

    private final Vertx vertx = Vertx.vertx();
    private final AtomicLong newest = new AtomicLong(1);
    private final List<String> told = new CopyOnWriteArrayList<>();

    private Optional<PlanJobQueue.Task> wanted() {
        long revision = newest.get();
        if (revision == NOTHING) return Optional.empty();
        return Optional.of(new PlanJobQueue.Task(revision, Instant.EPOCH, outdated -> endless(revision, outdated)));
    }

    private Future<DayEvent> endless(long revision, BooleanSupplier outdated) {
        told.add("began " + revision);
        return vertx.<DayEvent>executeBlocking(
                        () -> {
                            while (true) {
                                SearchRounds.stillWanted(outdated);
                                Thread.onSpinWait();
                            }
                        },
                        false)
                .onFailure(broken -> told.add("ended " + revision));
    }

    private PlanJobQueue lane(EventLog log) {
        AsyncEventLog thread = new AsyncEventLog(vertx, log, new SimpleMeterRegistry().timer("append"));
        DayActor keeper = new DayActor(SmallSalon.DAY, thread);
        return new PlanJobQueue(vertx, keeper, day -> wanted(), () -> told.add("over"));
    }

    private void awaitTold(String... lines) {
        await().untilAsserted(() -> assertThat(told).containsExactly(lines));
    }

    @Test
    void what_is_outdated_is_broken_off_and_the_newest_is_taken_up() throws Exception {
        try (EventLog log = SqliteEventLog.open(folder)) {
            PlanJobQueue lane = lane(log);
            lane.wake();
            lane.wake();
            awaitTold("began 1");
            newest.set(2);
            lane.wake();
            awaitTold("began 1", "ended 1", "over");
            lane.wake();
            awaitTold("began 1", "ended 1", "over", "began 2");
            newest.set(NOTHING);
            lane.wake();
            awaitTold("began 1", "ended 1", "over", "began 2", "ended 2", "over");
            assertThat(lane.idle()).isTrue();
        } finally {
            vertx.close().await();
        }
    }

    @Test
    void what_is_in_hand_is_broken_off_when_the_service_stops() throws Exception {
        try (EventLog log = SqliteEventLog.open(folder)) {
            PlanJobQueue lane = lane(log);
            lane.wake();
            awaitTold("began 1");
            lane.stop();
            awaitTold("began 1", "ended 1");
            lane.wake();
            assertThat(told).containsExactly("began 1", "ended 1");
        } finally {
            vertx.close().await();
        }
    }
}
