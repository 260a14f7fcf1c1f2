package stirtide.planner.service;

import io.vertx.core.Future;
import io.vertx.core.Vertx;
import io.vertx.core.WorkerExecutor;
import java.time.Instant;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import stirtide.events.day.DayEvent;
import stirtide.events.plan.Plan;
import stirtide.planner.day.state.Day;
import stirtide.planner.http.ApiException;
import stirtide.planner.planning.bounds.TwoStepPlanner;
import stirtide.planner.planning.search.PlanQuestion;
import stirtide.planner.planning.whatif.WhatIf;
import stirtide.planner.planning.whatif.WhatIfAnswer;
import stirtide.planner.planning.whatif.WhatIfQuestion;

/**
 * The planner on its own threads. First plans, better plans and hypothetical changes have a thread each, so that no first
 * plan waits for what takes long. One thread keeps the order; a queue of the library in front of it would be left behind
 * when the service stops.
 *
 * @param first thread of first plans
 * @param better thread of better plans
 * @param beside thread of what-if questions
 * @param asked what-if questions not answered yet
 * @param rounds rounds granted to a better plan
 * @param meters where the times are counted
 */
record PlanningExecutor(
        WorkerExecutor first,
        WorkerExecutor better,
        WorkerExecutor beside,
        AtomicInteger asked,
        int rounds,
        ServiceMetrics meters) {
    /** A question may take seconds, and they are answered one after the other. */
    private static final int MOST_ASKED = 16;

    /** From the request, waiting included; shorter than the time limit of any response. */
    private static final long LONGEST_NANOS = TimeUnit.SECONDS.toNanos(20);

    static PlanningExecutor of(Vertx vertx, int rounds, ServiceMetrics meters) {
        return new PlanningExecutor(
                vertx.createSharedWorkerExecutor("planner", 1, 30, TimeUnit.SECONDS),
                vertx.createSharedWorkerExecutor("better-plans", 1, 60, TimeUnit.SECONDS),
                vertx.createSharedWorkerExecutor("what-if", 1, 60, TimeUnit.SECONDS),
                new AtomicInteger(),
                rounds,
                meters);
    }

    /** Plans at once; the answer is the event with the first plan. */
    Future<DayEvent> first(PlanQuestion question) {
        return first.executeBlocking(
                () -> {
                    long began = System.nanoTime();
                    Plan plan = TwoStepPlanner.first(question, rounds);
                    meters.firstPlan().record(System.nanoTime() - began, TimeUnit.NANOSECONDS);
                    return new DayEvent.PlanDrawn(plan);
                },
                false);
    }

    /**
     * Searches for a better plan; the answer is the event with its result.
     *
     * @param question the question the first plan answers; asked for on the thread
     * @param breakOff whether the result is not wanted any more; called on the thread. The future fails then.
     */
    Future<DayEvent> better(Supplier<PlanQuestion> question, Plan firstPlan, BooleanSupplier breakOff) {
        return better.executeBlocking(
                () -> {
                    long began = System.nanoTime();
                    DayEvent event = TwoStepPlanner.second(question.get(), firstPlan, breakOff);
                    boolean kept = event instanceof DayEvent.PlanKept;
                    meters.betterPlan(kept).record(System.nanoTime() - began, TimeUnit.NANOSECONDS);
                    return event;
                },
                false);
    }

    /** Answers what-if questions on a thread of their own, so that no plan waits for them, or breaks them off. */
    Future<WhatIfAnswer> ask(Day day, WhatIfQuestion question, Instant now) {
        if (asked.get() >= MOST_ASKED)
            return Future.failedFuture(ApiException.notNow("too many questions what would happen if; try again"));
        asked.incrementAndGet();
        long began = System.nanoTime();
        BooleanSupplier tooLong = () -> System.nanoTime() - began > LONGEST_NANOS;
        return beside.executeBlocking(() -> WhatIf.answer(day, question, now, tooLong), false)
                .onComplete(answered -> asked.decrementAndGet());
    }
}
