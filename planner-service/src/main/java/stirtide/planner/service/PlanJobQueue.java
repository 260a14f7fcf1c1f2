package stirtide.planner.service;

import io.vertx.core.Future;
import io.vertx.core.Vertx;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import stirtide.events.day.DayEvent;
import stirtide.planner.day.state.Day;
import stirtide.planner.eventlog.LogFailure;
import stirtide.planner.planning.stagger.SearchRounds;

/**
 * One of the steps in which a day is planned, one task after the other. What a task has found is stored only if the day
 * still wants just that. As soon as it does not, the task is told to break off, and the newest one is taken up. Confined to the context of its day.
 */
final class PlanJobQueue {
    private static final Logger LOG = LoggerFactory.getLogger("stirtide.plan");
    private static final long RETRY_MILLIS = 2_000;
    private static final long STOP_PATIENCE_MILLIS = 2_000;

    private final Vertx vertx;
    private final DayActor keeper;
    private final Function<Day, Optional<Task>> wanted;
    private final Runnable done;
    private Optional<Hand> inHand = Optional.empty();
    private boolean stopped;
    private long hopelessRevision;

    /**
     * A plan to be drawn.
     *
     * @param revision newest event the plan is to know; tells tasks apart
     * @param asOf time of that event
     * @param draw draws on another thread and gives what is to be stored; may ask whether it is outdated and break off
     */
    record Task(long revision, Instant asOf, Function<BooleanSupplier, Future<DayEvent>> draw) {}

    /** The task in hand, with what is being drawn; whoever draws it asks on another thread whether it is outdated. */
    private record Hand(Task task, AtomicBoolean outdated, Future<DayEvent> drawn) {
        void breakOff() {
            outdated.set(true);
        }
    }

    /**
     * @param wanted the task a day wants done, if any
     * @param done is called when there is nothing to be done, or a task is over
     */
    PlanJobQueue(Vertx vertx, DayActor keeper, Function<Day, Optional<Task>> wanted, Runnable done) {
        this.vertx = vertx;
        this.keeper = keeper;
        this.wanted = wanted;
        this.done = done;
    }

    /** Takes up the task the day wants done, if it has none in hand; has one in hand that is outdated broken off. */
    void wake() {
        if (stopped) return;
        inHand.filter(hand -> !stillWanted(hand.task())).ifPresent(Hand::breakOff);
        if (inHand.isEmpty()) task().ifPresent(this::take);
    }

    /** Whether nothing is in hand and nothing wanted that could be done. */
    boolean idle() {
        return stopped || inHand.isEmpty() && task().isEmpty();
    }

    private Optional<Task> task() {
        return wanted.apply(keeper.day()).filter(task -> task.revision() != hopelessRevision);
    }

    private boolean stillWanted(Task task) {
        return wanted.apply(keeper.day())
                .filter(newest -> newest.revision() == task.revision())
                .isPresent();
    }

    private void take(Task task) {
        AtomicBoolean outdated = new AtomicBoolean();
        Future<DayEvent> drawn = task.draw().apply(outdated::get);
        inHand = Optional.of(new Hand(task, outdated, drawn));
        drawn.compose(event -> stopped ? Future.succeededFuture() : keeper.step(() -> keepIfWanted(task, event)))
                .onSuccess(kept -> goOn())
                .onFailure(failed -> giveUpOn(task, failed));
    }

    private Future<Void> keepIfWanted(Task task, DayEvent event) {
        return stillWanted(task) ? keeper.append(List.of(event), task.asOf()).mapEmpty() : Future.succeededFuture();
    }

    private void goOn() {
        inHand = Optional.empty();
        done.run();
    }

    /**
     * Draws no more; what is in hand is dropped, for the next start draws the same.
     *
     * @return when nothing is in hand any more, or it has taken long enough
     */
    Future<?> stop() {
        stopped = true;
        inHand.ifPresent(Hand::breakOff);
        Optional<Future<DayEvent>> unfinished = inHand.map(Hand::drawn).filter(drawn -> !drawn.isComplete());
        if (unfinished.isEmpty()) return Future.succeededFuture();
        return Future.any(unfinished.get(), vertx.timer(STOP_PATIENCE_MILLIS, TimeUnit.MILLISECONDS))
                .otherwiseEmpty();
    }

    /** A log that failed is tried again; a planner that failed would fail again on the same question. */
    private void giveUpOn(Task task, Throwable failed) {
        if (stopped) return;
        if (failed instanceof SearchRounds.BrokenOff) {
            goOn();
            return;
        }
        if (failed instanceof LogFailure log) {
            if (log.kind() == LogFailure.Kind.READ_ONLY) {
                stop();
                done.run();
                return;
            }
            LOG.warn("{}: plan not stored: {}", keeper.name(), failed.getMessage());
            vertx.setTimer(RETRY_MILLIS, timer -> goOn());
            return;
        }
        LOG.error("{}: no plan for revision {}", keeper.name(), task.revision(), failed);
        hopelessRevision = task.revision();
        goOn();
    }
}
