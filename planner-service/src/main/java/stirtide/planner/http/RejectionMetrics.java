package stirtide.planner.http;

import io.micrometer.core.instrument.Counter;
import io.micrometer.core.instrument.MeterRegistry;
import io.vertx.ext.web.RoutingContext;

/** Counts refused requests by problem code: a fixed set of words, never a day, a client or an id. */
record RejectionMetrics(MeterRegistry registry) {
    private static final String KEY = "stirtide.refusals";

    /** Handler before all routes. */
    void watch(RoutingContext ctx) {
        ctx.put(KEY, this);
        ctx.next();
    }

    /** Counts a refusal on a watched request. */
    static void count(RoutingContext ctx, String code) {
        RejectionMetrics refusals = ctx.get(KEY);
        if (refusals == null) return;
        Counter.builder("stirtide.refused")
                .description("Requests refused, by code")
                .tag("code", code)
                .register(refusals.registry)
                .increment();
    }
}
