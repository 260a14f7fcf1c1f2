package stirtide.planner.service;

import io.vertx.core.Vertx;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Supplier;

/**
 * Answers that many listeners ask for in the same moment are made once: without it a thousand of them would read the same
 * event a thousand times. Nothing is kept longer than the task at hand of the one context it is confined to.
 */
final class RequestCoalescer {
    private final Vertx vertx;
    private final Map<Object, Object> answers = new HashMap<>();

    RequestCoalescer(Vertx vertx) {
        this.vertx = vertx;
    }

    /**
     * The answer of this moment.
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

    /** What was answered a moment ago is not so any more. */
    void forget() {
        answers.clear();
    }
}
