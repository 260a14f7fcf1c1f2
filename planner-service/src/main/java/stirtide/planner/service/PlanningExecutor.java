package stirtide.planner.service;

import io.vertx.core.Future;
import io.vertx.core.Vertx;
import io.vertx.core.WorkerExecutor;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.TimeUnit;
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
 * The planner on its own threads. First plans, better plans and hypothetical changes do not wait for one another. First plans
 * of large days have a thread of their own; better plans take turns, and so do what-if questions, so that no salon waits for
 * more than a part of the work on the large day of another. Confined to the context of the days; only planning is elsewhere.
 */
final class PlanningExecutor {
    /** A day of more services is large: its search may take minutes, and tens of megabytes while it waits. */
    private static final int LARGE_SERVICES = 100;

    private static final int SMALL_AT_ONCE = 24;
    private static final int LARGE_AT_ONCE = 4;

    /** The second step of a day of forty services takes about a second. */
    private static final long BUDGET_NANOS = TimeUnit.SECONDS.toNanos(5);

    private static final int MOST_ASKED = 32;
    private static final int MOST_ASKED_OF_A_DAY = 4;

    /** From the request, waiting included; shorter than the time limit of any response. */
    private static final long LONGEST_NANOS = TimeUnit.SECONDS.toNanos(20);

    /** Threads for days that are not large, and for those that are. */
    private record Threads(WorkerExecutor small, WorkerExecutor large) {
        static Threads of(Vertx vertx, String name, int small, int large) {
            return new Threads(
                    vertx.createSharedWorkerExecutor(name, small, 60, TimeUnit.SECONDS),
                    vertx.createSharedWorkerExecutor(name + "-large", large, 60, TimeUnit.SECONDS));
        }

        WorkerExecutor of(int services) {
            return services > LARGE_SERVICES ? large : small;
        }
    }

    private final Threads first;
    private final Threads better;
    private final WorkerExecutor beside;
    private final PlanningTurns betterTurns = new PlanningTurns(BUDGET_NANOS, System::nanoTime);
    private final PlanningTurns besideTurns = new PlanningTurns(BUDGET_NANOS, System::nanoTime);
    private final Map<String, Integer> asked = new HashMap<>();
    private final int rounds;
    private final ServiceMetrics meters;

    /**
     * @param rounds rounds granted to a better plan
     * @param meters where the times are counted
     */
    PlanningExecutor(Vertx vertx, int rounds, ServiceMetrics meters) {
        this.first = Threads.of(vertx, "planner", 1, 1);
        this.better = Threads.of(vertx, "better-plans", SMALL_AT_ONCE, LARGE_AT_ONCE);
        this.beside = vertx.createSharedWorkerExecutor("what-if", MOST_ASKED, 60, TimeUnit.SECONDS);
        this.rounds = rounds;
        this.meters = meters;
    }

    /** Plans at once; the answer is the event with the first plan. */
    Future<DayEvent> first(PlanQuestion question) {
        return first.of(question.services().size())
                .executeBlocking(
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
     * @param day name of the day
     * @param question the question the first plan answers; asked for on the thread
     * @param breakOff whether the result is not wanted any more; called on the thread. The future fails then.
     */
    Future<DayEvent> better(String day, Supplier<PlanQuestion> question, Plan firstPlan, BooleanSupplier breakOff) {
        int services = firstPlan.services().size();
        return better.of(services)
                .executeBlocking(
                        () -> {
                            try (PlanningTurns.Turn turn = betterTurns.begin(day, services)) {
                                DayEvent event =
                                        TwoStepPlanner.second(question.get(), firstPlan, pausing(turn, breakOff));
                                boolean kept = event instanceof DayEvent.PlanKept;
                                meters.betterPlan(kept).record(turn.workedNanos(), TimeUnit.NANOSECONDS);
                                return event;
                            }
                        },
                        false);
    }

    /** Answers what-if questions, so that no plan waits for them, or breaks them off. */
    Future<WhatIfAnswer> ask(String name, Day day, WhatIfQuestion question, Instant now) {
        int all = asked.values().stream().mapToInt(Integer::intValue).sum();
        if (all >= MOST_ASKED || asked.getOrDefault(name, 0) >= MOST_ASKED_OF_A_DAY)
            return Future.failedFuture(ApiException.notNow("too many questions what would happen if; try again"));
        asked.merge(name, 1, Integer::sum);
        long began = System.nanoTime();
        BooleanSupplier tooLong = () -> System.nanoTime() - began > LONGEST_NANOS;
        return beside.executeBlocking(
                        () -> {
                            try (PlanningTurns.Turn turn =
                                    besideTurns.begin(name, day.services().size())) {
                                return WhatIf.answer(day, question, now, pausing(turn, tooLong));
                            }
                        },
                        false)
                .onComplete(answered -> asked.computeIfPresent(name, (same, count) -> count == 1 ? null : count - 1));
    }

    /** The planner asks between two parts of its work whether to go on: there the turn may pass to another day. */
    private static BooleanSupplier pausing(PlanningTurns.Turn turn, BooleanSupplier breakOff) {
        return () -> {
            turn.pause();
            return breakOff.getAsBoolean();
        };
    }
}
