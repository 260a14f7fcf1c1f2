package stirtide.planner.http;

import io.vertx.core.buffer.Buffer;
import io.vertx.ext.web.RoutingContext;
import stirtide.events.json.ContractJson;

/** Bodies in and out. */
final class Responses {
    /** Under this key the untouched body waits; the contract's check consumes the one of the context. */
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

    /** A text in which those who may know who clients are can read it. */
    static void text(RoutingContext ctx, int status, String json) {
        raw(ctx, status, Buffer.buffer(AuthenticationHandler.shown(ctx, json)));
    }

    /** A text as it is kept: client references stay sealed. */
    static void raw(RoutingContext ctx, int status, Buffer json) {
        if (ctx.response().headWritten() || ctx.response().closed()) return;
        ctx.response()
                .setStatusCode(status)
                .putHeader("content-type", "application/json")
                .putHeader("cache-control", "no-store")
                .putHeader("x-content-type-options", "nosniff")
                .end(json);
    }
}
