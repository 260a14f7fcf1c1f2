package stirtide.planner.http;

import io.vertx.ext.web.RoutingContext;
import java.util.function.UnaryOperator;
import stirtide.planner.access.Caller;

/** The caller of a request, as {@link AuthenticationHandler} or {@link AdminServer} has identified it. */
final class CallerContext {
    private static final String CALLER = "stirtide.caller";
    private static final String DISCLOSED = "stirtide.disclosed";

    private CallerContext() {}

    /** Sets the caller, and with it whether client references are disclosed in responses. */
    static void set(RoutingContext ctx, Caller caller, UnaryOperator<String> disclose) {
        ctx.put(CALLER, caller);
        ctx.put(DISCLOSED, caller.seesClients() ? disclose : UnaryOperator.<String>identity());
    }

    /** The caller; never absent once a request has passed the authentication. */
    static Caller caller(RoutingContext ctx) {
        return ctx.get(CALLER);
    }

    /** Opens sealed client references in a text if the caller may see them; else leaves it as it is. */
    static UnaryOperator<String> disclosed(RoutingContext ctx) {
        UnaryOperator<String> disclosed = ctx.get(DISCLOSED);
        return disclosed == null ? UnaryOperator.identity() : disclosed;
    }
}
