package stirtide.planner.service;

import io.vertx.core.Vertx;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Supplier;

/**
 * Computes an answer once that many listeners ask for in the same moment: without it a thousand of them would read the same
 * event a thousand times. Nothing is kept longer than the current task of the context it is confined to.
 */
final class RequestCoalescer {
    private final Vertx vertx;
    private final Map<Object, Object> answers = new HashMap<>();

    RequestCoalescer(Vertx vertx) {
        this.vertx = vertx;
    }

    /**
     * The answer of this moment, computed if it is not known.
     *
     * @param question names the answer and its type; two kinds of questions are never equal
     */
    @SuppressWarnings("unchecked")
    <T> T answer(Object question, Supplier<T> made) {
        Object known = answers.get(question);
        if (known != null) return (T) known;
        if (answers.isEmpty()) vertx.runOnContext(next -> forget());
        T answer = made.get();
        answers.put(question, answer);
        return answer;
    }

    /** Drops all answers, because they are not true any more. */
    void forget() {
        answers.clear();
    }
}
