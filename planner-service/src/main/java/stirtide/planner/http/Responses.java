package stirtide.planner.http;

import io.vertx.core.buffer.Buffer;
import io.vertx.core.http.HttpHeaders;
import io.vertx.ext.web.RoutingContext;
import java.util.Optional;
import stirtide.events.json.ContractJson;
import stirtide.planner.http.DayOperations.QueryAnswer;
import stirtide.planner.http.DayOperations.ShownDay;

/** Request bodies as records, and records as response bodies. */
final class Responses {
    /** Key of the unparsed body; the contract's check consumes the one of the context. */
    static final String RAW_BODY = "stirtide.rawBody";

    private Responses() {}

    /**
     * The request's body as a record of the contract.
     *
     * @throws IllegalArgumentException with the reason when it is not such a record
     */
    static <T> T body(RoutingContext ctx, Class<T> type) {
        Buffer raw = ctx.get(RAW_BODY);
        return ContractJson.read(raw.toString(), type);
    }

    static void json(RoutingContext ctx, int status, Object body) {
        text(ctx, status, ContractJson.write(body));
    }

    /** A text in which client references are disclosed if the caller may see them. */
    static void text(RoutingContext ctx, int status, String json) {
        raw(ctx, status, CallerContext.disclosed(ctx).apply(json));
    }

    /** A text as it is stored: client references stay sealed. */
    static void raw(RoutingContext ctx, int status, String json) {
        if (ctx.response().headWritten() || ctx.response().closed()) return;
        ctx.response()
                .setStatusCode(status)
                .putHeader("content-type", "application/json")
                .putHeader("cache-control", "no-store")
                .putHeader("x-content-type-options", "nosniff")
                .end(json);
    }

    static void noContent(RoutingContext ctx) {
        ctx.response().setStatusCode(204).end();
    }

    static void revision(RoutingContext ctx, long revision) {
        ctx.response().putHeader(HttpHeaders.ETAG, "\"" + revision + "\"");
    }

    static void shown(RoutingContext ctx, Optional<ShownDay> shown) {
        if (shown.isEmpty()) {
            ProblemResponses.send(ctx, ProblemDetail.unknownDay());
            return;
        }
        revision(ctx, shown.get().revision());
        text(ctx, 200, shown.get().json());
    }

    static void answer(RoutingContext ctx, QueryAnswer answer) {
        if (answer instanceof QueryAnswer.Found found) text(ctx, 200, found.json());
        else if (answer instanceof QueryAnswer.Refused refused)
            ProblemResponses.send(ctx, ProblemDetail.of(409, refused.code(), refused.sentence()));
        else ProblemResponses.send(ctx, ProblemDetail.unknownDay());
    }
}
