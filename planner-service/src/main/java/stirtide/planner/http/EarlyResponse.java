package stirtide.planner.http;

import io.vertx.core.http.HttpServerRequest;
import stirtide.events.json.ContractJson;

/** Answers a request before any route sees it, and closes its connection. */
final class EarlyResponse {
    private EarlyResponse() {}

    static void refuse(HttpServerRequest request, ProblemDetail problem) {
        if (problem.status() == 429 || problem.status() == 503)
            request.response().putHeader("retry-after", "5");
        request.response()
                .setStatusCode(problem.status())
                .putHeader("content-type", "application/problem+json")
                .putHeader("connection", "close")
                .end(ContractJson.write(problem))
                .onComplete(sent -> request.connection().close());
    }
}
