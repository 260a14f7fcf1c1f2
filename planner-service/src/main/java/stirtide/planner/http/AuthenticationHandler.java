package stirtide.planner.http;

import io.vertx.core.Vertx;
import io.vertx.ext.web.RoutingContext;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.UnaryOperator;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import stirtide.planner.access.Authenticator;
import stirtide.planner.access.Caller;
import stirtide.planner.access.Rights;

/** Asks every request who sends it and whether that one may. */
final class AuthenticationHandler {
    private static final Logger LOG = LoggerFactory.getLogger("stirtide.access");
    private static final String CALLER = "stirtide.caller";
    private static final String SHOWN = "stirtide.shown";
    private static final long LOOK_MILLIS = 1000;

    private final Vertx vertx;
    private final DayOperations desk;
    private final Authenticator gate;
    private final RateLimiter pace;

    AuthenticationHandler(Vertx vertx, HttpSecurity door, DayOperations desk) {
        this.desk = desk;
        this.vertx = vertx;
        this.gate = door.gate();
        this.pace = new RateLimiter(door.limits().commandsPerMinute());
        vertx.setPeriodic(LOOK_MILLIS, timer -> look());
    }

    /** A token that was taken back is refused from the next second on. */
    private void look() {
        String stamp = gate.stamp();
        Optional<java.util.Map<String, java.time.Instant>> uses = gate.unwrittenUses();
        vertx.executeBlocking(() -> {
                    uses.ifPresent(gate::write);
                    return gate.readAgain(stamp);
                })
                .onSuccess(reading -> reading.ifPresent(gate::renew))
                .onFailure(failed -> LOG.warn("the access files: {}", failed.getMessage()));
    }

    /** First handler of every route. */
    void identify(RoutingContext ctx) {
        Authenticator.Verdict verdict = gate.check(ctx.request().getHeader("authorization"));
        if (verdict instanceof Authenticator.Verdict.Known known) {
            ctx.put(CALLER, known.caller());
            ctx.put(SHOWN, shown(known.caller()));
            ctx.next();
            return;
        }
        Authenticator.Verdict.Unknown unknown = (Authenticator.Verdict.Unknown) verdict;
        ctx.response().putHeader("www-authenticate", "Bearer");
        ProblemResponses.send(ctx, ProblemDetail.of(401, unknown.code(), unknown.sentence()));
    }

    private UnaryOperator<String> shown(Caller caller) {
        return caller.seesClients() ? desk::shown : UnaryOperator.identity();
    }

    /** What makes a text readable for the caller. */
    static UnaryOperator<String> shown(RoutingContext ctx) {
        UnaryOperator<String> shown = ctx.get(SHOWN);
        return shown == null ? UnaryOperator.identity() : shown;
    }

    static String shown(RoutingContext ctx, String text) {
        return shown(ctx).apply(text);
    }

    /** Whoever was identified. */
    static Caller caller(RoutingContext ctx) {
        return ctx.get(CALLER);
    }

    /** Whether the caller may ask for an operation, on the salon of the path if it names one; else it is answered. */
    boolean admits(RoutingContext ctx, String operationId) {
        Caller caller = caller(ctx);
        if (caller.role().isEmpty()) return true;
        if (!Rights.operation(caller.role().get(), operationId)) {
            ProblemResponses.send(ctx, notAllowed(caller));
            return false;
        }
        String salon = ctx.pathParam("salonId");
        if (salon == null || caller.sees(salon)) return true;
        ProblemResponses.send(ctx, DayHandlers.unknownDay());
        return false;
    }

    /** Whether the caller may send a command under that name, and not too fast; else it is answered. */
    boolean admitsCommand(RoutingContext ctx, String type, String actor, String salon) {
        Caller caller = caller(ctx);
        if (caller.role().isEmpty()) return true;
        long wait = pace.take(caller.key(), System.nanoTime());
        if (wait > 0) {
            ctx.response().putHeader("retry-after", Long.toString(wait));
            ProblemResponses.send(
                    ctx, ProblemDetail.of(429, "TOO_FAST", "too many commands in a minute; wait " + wait + " seconds"));
        } else if (!Rights.command(caller.role().get(), type)) {
            ProblemResponses.send(ctx, notAllowed(caller));
        } else if (!caller.actsAs(actor)) {
            ProblemResponses.send(
                    ctx,
                    ProblemDetail.of(
                            403, "NOT_YOU", "the actor must be \"" + caller.actor() + "\", who the token is for"));
        } else if (!caller.sees(salon)) {
            ProblemResponses.send(ctx, DayHandlers.unknownDay());
        } else {
            return true;
        }
        return false;
    }

    private static ProblemDetail notAllowed(Caller caller) {
        String role = caller.role().orElseThrow().word();
        String help = caller.role().get() == stirtide.planner.access.Role.TERMINAL ? "; sign on first" : "";
        return ProblemDetail.of(403, "NOT_ALLOWED", "the role " + role + " may not do this" + help);
    }

    /** Whether the sender of a request that is still open would be let in now. */
    BooleanSupplier stillGood(RoutingContext ctx) {
        Caller caller = caller(ctx);
        return () -> gate.stillGood(caller);
    }

    Authenticator gate() {
        return gate;
    }
}
