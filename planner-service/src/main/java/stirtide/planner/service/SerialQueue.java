package stirtide.planner.service;

import io.vertx.core.Future;
import java.util.function.Supplier;

/** Runs steps one after the other, each when the one before is done or has failed. Confined to one context. */
final class SerialQueue {
    private static final int MOST_WAITING = 256;

    private Future<?> last = Future.succeededFuture();
    private int waiting;

    /** Whether one more step would be one too many. */
    boolean full() {
        return waiting >= MOST_WAITING;
    }

    boolean empty() {
        return waiting == 0;
    }

    /** Adds a step; the answer is the step's. */
    <T> Future<T> add(Supplier<Future<T>> step) {
        waiting++;
        // Part of the answer, not beside it: once the answer is there the step is gone.
        Future<T> answer = last.transform(before -> step.get()).transform(done -> {
            waiting--;
            return done.succeeded() ? Future.succeededFuture(done.result()) : Future.failedFuture(done.cause());
        });
        last = answer;
        return answer;
    }

    /** Completes when all steps added so far are done. */
    Future<Void> drained() {
        return last.transform(done -> Future.succeededFuture());
    }
}
