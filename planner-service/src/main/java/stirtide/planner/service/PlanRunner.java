package stirtide.planner.service;

import io.vertx.core.Future;
import io.vertx.core.Promise;
import io.vertx.core.Vertx;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import stirtide.events.plan.Plan;
import stirtide.planner.day.question.PlanQuestions;
import stirtide.planner.day.state.Day;
import stirtide.planner.planning.search.PlanQuestion;

/**
 * Plans one day beside its work, in two steps: after every event that matters a first plan at once, then a
 * better one. Each is stored as its own event if nothing has happened meanwhile that it would have to know. Confined to
 * the context of its day; only planning is elsewhere.
 */
final class PlanRunner {
    private final DayActor actor;
    private final PlanningExecutor planning;
    private final PlanJobQueue first;
    private final PlanJobQueue better;
    private final List<Waiting> waiting = new ArrayList<>();
    private Optional<PlanQuestion> asked = Optional.empty();

    private record Waiting(BooleanSupplier over, Promise<Void> promise) {}

    PlanRunner(Vertx vertx, DayActor actor, PlanningExecutor planning) {
        this.actor = actor;
        this.planning = planning;
        this.first = new PlanJobQueue(vertx, actor, this::firstWanted, this::wake);
        this.better = new PlanJobQueue(vertx, actor, this::betterWanted, this::wake);
        actor.listen(this::wake);
    }

    private Optional<PlanJobQueue.Task> firstWanted(Day day) {
        return PlanQuestions.of(day)
                .map(question -> new PlanJobQueue.Task(question.basedOnRevision(), question.asOf(), outdated -> {
                    asked = Optional.of(question);
                    return planning.first(question);
                }));
    }

    private Optional<PlanJobQueue.Task> betterWanted(Day day) {
        if (!day.betterPlanSought()) return Optional.empty();
        Plan plan = day.plan().orElseThrow();
        return Optional.of(new PlanJobQueue.Task(plan.basedOnRevision(), plan.asOf(), outdated -> {
            Optional<PlanQuestion> known =
                    asked.filter(question -> question.basedOnRevision() == plan.basedOnRevision());
            // After a restart the question is not known any more, but follows from the events.
            return planning.better(
                    actor.name(),
                    () -> known.or(() -> PlanQuestions.toImprove(day)).orElseThrow(),
                    plan,
                    outdated);
        }));
    }

    /** Starts the planning that is due and not running. */
    void wake() {
        first.wake();
        better.wake();
        List<Waiting> over =
                waiting.stream().filter(each -> each.over().getAsBoolean()).toList();
        waiting.removeAll(over);
        over.forEach(each -> each.promise().complete());
    }

    /** Stops planning; completes when no job is running, or after the patience of the queues. */
    Future<?> stop() {
        Future<?> stopped = Future.join(first.stop(), better.stop());
        wake();
        return stopped;
    }

    /** Completes when the plan on show knows every event that matters and no better one is looked for. */
    Future<Void> settled() {
        return when(this::idle);
    }

    /** Completes when the plan on show knows every event that matters. */
    Future<Void> planned() {
        return when(first::idle);
    }

    /** Whether no planning is running or due. */
    boolean idle() {
        return first.idle() && better.idle();
    }

    private Future<Void> when(BooleanSupplier over) {
        Promise<Void> promise = Promise.promise();
        waiting.add(new Waiting(over, promise));
        wake();
        return promise.future();
    }
}
