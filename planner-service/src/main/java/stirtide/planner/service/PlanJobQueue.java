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
 * Runs the planning tasks of one day, one after the other. The result of a task is stored only if the day still wants
 * that task. As soon as it does not, the job is cancelled, and the newest task is started. Confined to the
 * context of its day.
 */
final class PlanJobQueue {
    private static final Logger LOG = LoggerFactory.getLogger("stirtide.plan");
    private static final long RETRY_MILLIS = 2_000;
    private static final long STOP_PATIENCE_MILLIS = 2_000;

    private final Vertx vertx;
    private final DayActor actor;
    private final Function<Day, Optional<Task>> wanted;
    private final Runnable done;
    private Optional<RunningJob> running = Optional.empty();
    private boolean stopped;
    private long hopelessRevision;

    /**
     * A planning task.
     *
     * @param revision newest event the plan takes into account; identifies the task
     * @param asOf time of that event
     * @param draw plans on another thread and gives the event to store; may ask whether it is outdated and stop
     */
    record Task(long revision, Instant asOf, Function<BooleanSupplier, Future<DayEvent>> draw) {}

    /** A running task. The planner asks on its own thread whether it is outdated. */
    private record RunningJob(Task task, AtomicBoolean outdated, Future<DayEvent> result) {
        void cancel() {
            outdated.set(true);
        }
    }

    /**
     * @param wanted the task a day wants done, if any
     * @param done is called when there is nothing to be done, or a task is over
     */
    PlanJobQueue(Vertx vertx, DayActor actor, Function<Day, Optional<Task>> wanted, Runnable done) {
        this.vertx = vertx;
        this.actor = actor;
        this.wanted = wanted;
        this.done = done;
    }

    /** Cancels the running job if it is outdated, and starts the task the day wants if no job is running. */
    void wake() {
        if (stopped) return;
        running.filter(job -> !stillWanted(job.task())).ifPresent(RunningJob::cancel);
        if (running.isEmpty()) task().ifPresent(this::take);
    }

    /** Whether no job is running and no task is wanted that could be run. */
    boolean idle() {
        return stopped || running.isEmpty() && task().isEmpty();
    }

    private Optional<Task> task() {
        return wanted.apply(actor.day()).filter(task -> task.revision() != hopelessRevision);
    }

    private boolean stillWanted(Task task) {
        return wanted.apply(actor.day())
                .filter(newest -> newest.revision() == task.revision())
                .isPresent();
    }

    private void take(Task task) {
        AtomicBoolean outdated = new AtomicBoolean();
        Future<DayEvent> drawn = task.draw().apply(outdated::get);
        running = Optional.of(new RunningJob(task, outdated, drawn));
        drawn.compose(event -> stopped ? Future.succeededFuture() : actor.step(() -> keepIfWanted(task, event)))
                .onSuccess(kept -> goOn())
                .onFailure(failed -> giveUpOn(task, failed));
    }

    private Future<Void> keepIfWanted(Task task, DayEvent event) {
        return stillWanted(task) ? actor.append(List.of(event), task.asOf()).mapEmpty() : Future.succeededFuture();
    }

    private void goOn() {
        running = Optional.empty();
        done.run();
    }

    /**
     * Starts no more jobs and drops the result of the running one: the next start of the service plans the same.
     *
     * @return completes when no job is running, or after the patience
     */
    Future<?> stop() {
        stopped = true;
        running.ifPresent(RunningJob::cancel);
        Optional<Future<DayEvent>> unfinished = running.map(RunningJob::result).filter(drawn -> !drawn.isComplete());
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
            LOG.warn("{}: plan not stored: {}", actor.name(), failed.getMessage());
            vertx.setTimer(RETRY_MILLIS, timer -> goOn());
            return;
        }
        LOG.error("{}: no plan for revision {}", actor.name(), task.revision(), failed);
        hopelessRevision = task.revision();
        goOn();
    }
}
