package stirtide.planner.http;

import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import io.vertx.core.Vertx;
import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import java.util.function.BooleanSupplier;

/** Health, readiness and metrics. */
final class ManagementRoutes {
    private ManagementRoutes() {}

    static Router router(Vertx vertx, PrometheusMeterRegistry registry, BooleanSupplier ready) {
        Router router = Router.router(vertx);
        router.get("/health").handler(ctx -> state(ctx, true, "up", "down"));
        router.get("/ready").handler(ctx -> state(ctx, ready.getAsBoolean(), "ready", "not ready"));
        router.get("/metrics")
                .handler(ctx -> ctx.response()
                        .putHeader("content-type", "text/plain; version=0.0.4; charset=utf-8")
                        .end(registry.scrape()));
        for (int status = 400; status < 600; status++) router.errorHandler(status, Problems::failed);
        return router;
    }

    private static void state(RoutingContext ctx, boolean good, String yes, String no) {
        Answers.json(ctx, good ? 200 : 503, new State(good ? yes : no));
    }

    record State(String state) {}
}
