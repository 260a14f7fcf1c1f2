package stirtide.planner.http;

import io.vertx.ext.web.RoutingContext;

/** What a client may ask for. References stand in bodies, never in paths, which end up in logs. */
final class ClientHandlers {
    private final DayOperations desk;

    ClientHandlers(DayOperations desk) {
        this.desk = desk;
    }

    record Reference(String clientRef) {}

    void export(RoutingContext ctx) {
        String reference = Responses.body(ctx, Reference.class).clientRef();
        desk.clientRecord(reference, AuthenticationHandler.caller(ctx).salonId())
                .onSuccess(kept -> {
                    if (kept.isPresent()) Responses.text(ctx, 200, kept.get());
                    else ProblemResponses.send(ctx, unknown());
                })
                .onFailure(ctx::fail);
    }

    /** A manager of one salon cannot erase for all: keys are the service's. */
    void erase(RoutingContext ctx) {
        if (AuthenticationHandler.caller(ctx).salonId().isPresent()) {
            ProblemResponses.send(
                    ctx,
                    ProblemDetail.of(
                            403, "NOT_ALLOWED", "erasing reaches all salons: a token without a salon is accepted"));
            return;
        }
        desk.eraseClient(Responses.body(ctx, Reference.class).clientRef())
                .onSuccess(known -> {
                    if (known) ctx.response().setStatusCode(204).end();
                    else ProblemResponses.send(ctx, unknown());
                })
                .onFailure(ctx::fail);
    }

    private static ProblemDetail unknown() {
        return ProblemDetail.of(
                404, "CLIENT_UNKNOWN", "nothing is kept under this reference; write it as it was booked");
    }
}
