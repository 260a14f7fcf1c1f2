package stirtide.planner.http;

import io.vertx.ext.web.RoutingContext;

/** Export and erasure of a client. References stand in bodies, never in paths, which end up in logs. */
record ClientHandlers(DayOperations days) {
    private static final ProblemDetail UNKNOWN =
            ProblemDetail.of(404, "CLIENT_UNKNOWN", "nothing is kept under this reference; write it as it was booked");

    record Reference(String clientRef) {}

    void export(RoutingContext ctx) {
        String reference = Responses.body(ctx, Reference.class).clientRef();
        days.exportClient(reference, CallerContext.caller(ctx).salonId())
                .onSuccess(kept -> kept.ifPresentOrElse(
                        text -> Responses.text(ctx, 200, text), () -> ProblemResponses.send(ctx, UNKNOWN)))
                .onFailure(ctx::fail);
    }

    /** A manager of one salon cannot erase for all: keys are the service's. */
    void erase(RoutingContext ctx) {
        if (CallerContext.caller(ctx).salonId().isPresent()) {
            ProblemResponses.send(
                    ctx,
                    ProblemDetail.of(
                            403, "NOT_ALLOWED", "erasing reaches all salons: a token without a salon is accepted"));
            return;
        }
        days.eraseClient(Responses.body(ctx, Reference.class).clientRef())
                .onSuccess(known -> {
                    if (known) Responses.noContent(ctx);
                    else ProblemResponses.send(ctx, UNKNOWN);
                })
                .onFailure(ctx::fail);
    }
}
