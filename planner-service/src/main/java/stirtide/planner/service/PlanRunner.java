package stirtide.planner.service;

import io.vertx.core.Future;
import io.vertx.core.Promise;
import io.vertx.core.Vertx;
import io.vertx.core.WorkerExecutor;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import stirtide.events.day.DayEvent.PlanDrawn;
import stirtide.events.plan.Plan;
import stirtide.planner.day.Day;
import stirtide.planner.day.PlanQuestions;
import stirtide.planner.http.Declined;
import stirtide.planner.log.LogFailure;
import stirtide.planner.plan.PlanQuestion;
import stirtide.planner.proof.ProvenPlanner;
import stirtide.planner.whatif.WhatIf;
import stirtide.planner.whatif.WhatIfAnswer;
import stirtide.planner.whatif.WhatIfQuestion;

/**
 * Has plans of one day drawn beside its work. A plan is stored only if it still stands on the newest event that matters;
 * else it is dropped and the newest question is asked. Confined to the context of its day; only drawing is elsewhere.
 */
final class PlanRunner {
    private static final Logger LOG = LoggerFactory.getLogger("stirtide.plan");
    private static final long RETRY_MILLIS = 2_000;
    private static final long STOP_PATIENCE_MILLIS = 2_000;

    private final Vertx vertx;
    private final DayKeeper keeper;
    private final Drawing drawing;
    private final List<Promise<Void>> waiting = new ArrayList<>();
    private Future<?> inHand = Future.succeededFuture();
    private boolean busy;
    private boolean stopped;
    private long hopelessRevision;

    PlanRunner(Vertx vertx, DayKeeper keeper, Drawing drawing) {
        this.vertx = vertx;
        this.keeper = keeper;
        this.drawing = drawing;
        keeper.listen(this::wake);
    }

    /** The planner on its own thread, with the rounds of improvement it is granted. */
    record Drawing(WorkerExecutor thread, WorkerExecutor beside, AtomicInteger asked, int rounds, Meters meters) {
        /** A question may take seconds, and they are answered one after the other. */
        private static final int MOST_ASKED = 16;

        static Drawing of(Vertx vertx, int rounds, Meters meters) {
            return new Drawing(
                    vertx.createSharedWorkerExecutor("planner", 1, 30, TimeUnit.SECONDS),
                    vertx.createSharedWorkerExecutor("what-if", 1, 60, TimeUnit.SECONDS),
                    new AtomicInteger(),
                    rounds,
                    meters);
        }

        /** One thread is order enough; a queue of the library's before it would be left in the air when the service stops. */
        Future<Plan> draw(PlanQuestion question) {
            return thread.executeBlocking(() -> measured(question), false);
        }

        private Plan measured(PlanQuestion question) {
            long began = System.nanoTime();
            Plan plan = ProvenPlanner.draw(question, rounds);
            boolean proven = plan.totals()
                    .waitBound()
                    .filter(least -> least == plan.totals().waitMinutes())
                    .isPresent();
            meters.plan(proven).record(System.nanoTime() - began, TimeUnit.NANOSECONDS);
            return plan;
        }

        /** Answers what-if questions on a thread of their own, so that no plan waits for them. */
        Future<WhatIfAnswer> ask(Day day, WhatIfQuestion question, Instant now) {
            if (asked.get() >= MOST_ASKED)
                return Future.failedFuture(Declined.notNow("too many questions what would happen if; try again"));
            asked.incrementAndGet();
            return beside.executeBlocking(() -> WhatIf.answer(day, question, now), false)
                    .onComplete(answered -> asked.decrementAndGet());
        }
    }

    /** Draws a plan if the day wants one and none is being drawn. */
    void wake() {
        if (busy || stopped) return;
        Optional<PlanQuestion> question = question();
        if (question.isEmpty()) {
            settle();
            return;
        }
        busy = true;
        Future<Plan> drawn = drawing.draw(question.get());
        inHand = drawn;
        drawn.compose(plan -> stopped ? Future.succeededFuture() : keeper.step(() -> keepIfNewest(plan)))
                .onSuccess(kept -> goOn())
                .onFailure(failed -> giveUpOn(question.get(), failed));
    }

    private Optional<PlanQuestion> question() {
        return PlanQuestions.of(keeper.day()).filter(open -> open.basedOnRevision() != hopelessRevision);
    }

    private Future<Void> keepIfNewest(Plan plan) {
        boolean newest = PlanQuestions.of(keeper.day())
                .filter(open -> open.basedOnRevision() == plan.basedOnRevision())
                .isPresent();
        if (!newest) return Future.succeededFuture();
        Instant at = plan.asOf();
        return keeper.append(List.of(new PlanDrawn(plan)), at).mapEmpty();
    }

    private void goOn() {
        busy = false;
        wake();
    }

    /**
     * Draws no more; a plan that is being drawn is dropped, for the next start draws the same.
     *
     * @return when nothing is being drawn any more, or it has taken long enough
     */
    Future<?> stop() {
        stopped = true;
        settle();
        if (inHand.isComplete()) return Future.succeededFuture();
        return Future.any(inHand, vertx.timer(STOP_PATIENCE_MILLIS, TimeUnit.MILLISECONDS))
                .otherwiseEmpty();
    }

    /** A log that failed is tried again; a planner that failed would fail again on the same question. */
    private void giveUpOn(PlanQuestion question, Throwable failed) {
        if (stopped) return;
        if (failed instanceof LogFailure log) {
            if (log.kind() == LogFailure.Kind.READ_ONLY) {
                stop();
                return;
            }
            LOG.warn("{}: plan not stored: {}", keeper.name(), failed.getMessage());
            vertx.setTimer(RETRY_MILLIS, timer -> goOn());
            return;
        }
        LOG.error("{}: no plan for revision {}", keeper.name(), question.basedOnRevision(), failed);
        hopelessRevision = question.basedOnRevision();
        goOn();
    }

    /** Completes when the plan on show knows every event that matters. */
    Future<Void> settled() {
        if (stopped || !busy && question().isEmpty()) return Future.succeededFuture();
        Promise<Void> promise = Promise.promise();
        waiting.add(promise);
        wake();
        return promise.future();
    }

    private void settle() {
        List<Promise<Void>> done = List.copyOf(waiting);
        waiting.clear();
        done.forEach(Promise::complete);
    }
}
