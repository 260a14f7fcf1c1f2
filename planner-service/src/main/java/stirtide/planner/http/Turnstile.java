package stirtide.planner.http;

import io.vertx.core.Vertx;
import io.vertx.core.http.HttpMethod;
import io.vertx.ext.web.RoutingContext;
import java.util.ArrayDeque;
import java.util.Queue;

/**
 * Lets listeners in one after the other. When a thousand of them come back at once, whatever else is to be done comes
 * between two of them instead of after all. As many can wait as there can be connections. Confined to one context.
 */
final class Turnstile {
    private final Vertx vertx;
    private final Queue<RoutingContext> waiting = new ArrayDeque<>();

    Turnstile(Vertx vertx) {
        this.vertx = vertx;
    }

    void pass(RoutingContext ctx) {
        if (!listens(ctx)) {
            ctx.next();
            return;
        }
        ctx.request().pause();
        waiting.add(ctx);
        if (waiting.size() == 1) vertx.runOnContext(turn -> letIn());
    }

    private static boolean listens(RoutingContext ctx) {
        String path = ctx.request().path();
        return ctx.request().method() == HttpMethod.GET && (path.endsWith("/live") || path.endsWith("/events"));
    }

    private void letIn() {
        RoutingContext ctx = waiting.remove();
        if (!waiting.isEmpty()) vertx.runOnContext(turn -> letIn());
        if (ctx.response().closed()) return;
        ctx.request().resume();
        ctx.next();
    }
}
