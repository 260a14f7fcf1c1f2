package stirtide.planner.http;

import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import io.vertx.core.Vertx;
import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import java.util.Locale;
import java.util.function.Supplier;

/** Health, readiness and metrics. */
final class ManagementRoutes {
    private ManagementRoutes() {}

    static Router router(Vertx vertx, PrometheusMeterRegistry registry, Supplier<Readiness> ready) {
        Router router = Router.router(vertx);
        router.get("/health").handler(ctx -> Responses.json(ctx, 200, new State("up")));
        router.get("/ready").handler(ctx -> state(ctx, ready.get()));
        router.get("/metrics")
                .handler(ctx -> ctx.response()
                        .putHeader("content-type", "text/plain; version=0.0.4; charset=utf-8")
                        .end(registry.scrape()));
        for (int status = 400; status < 600; status++) router.errorHandler(status, ProblemResponses::failed);
        return router;
    }

    private static void state(RoutingContext ctx, Readiness readiness) {
        Responses.json(
                ctx,
                readiness == Readiness.READY ? 200 : 503,
                new State(readiness.name().toLowerCase(Locale.ROOT).replace('_', ' ')));
    }

    record State(String state) {}
}
