package stirtide.planner.http;

import io.vertx.core.Vertx;
import io.vertx.core.buffer.Buffer;
import io.vertx.ext.web.RoutingContext;
import java.io.IOException;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import stirtide.events.json.ContractJson;
import stirtide.planner.access.AuthenticationResult;
import stirtide.planner.access.Authenticator;
import stirtide.planner.access.Caller;
import stirtide.planner.access.Rights;
import stirtide.planner.access.Role;

/** Authenticates the caller of every request and checks rights and rate. */
final class AuthenticationHandler {
    private static final Logger LOG = LoggerFactory.getLogger("stirtide.access");
    private static final long LOOK_MILLIS = 1000;

    private final Vertx vertx;
    private final DayOperations days;
    private final Authenticator authenticator;
    private final RateLimiter limiter;

    AuthenticationHandler(Vertx vertx, HttpSecurity security, DayOperations days) {
        this.days = days;
        this.vertx = vertx;
        this.authenticator = security.authenticator();
        this.limiter = new RateLimiter(security.limits().commandsPerMinute());
        vertx.setPeriodic(LOOK_MILLIS, timer -> look());
    }

    /** A token that was taken back is refused from the next second on. */
    private void look() {
        String stamp = authenticator.stamp();
        Optional<java.util.Map<String, java.time.Instant>> uses = authenticator.unwrittenUses();
        vertx.executeBlocking(() -> {
                    uses.ifPresent(authenticator::write);
                    return authenticator.readAgain(stamp);
                })
                .onSuccess(reading -> reading.ifPresent(authenticator::renew))
                .onFailure(failed -> LOG.warn("the access files: {}", failed.getMessage()));
    }

    /** First handler of every route. */
    void identify(RoutingContext ctx) {
        AuthenticationResult verdict = authenticator.check(ctx.request().getHeader("authorization"));
        if (verdict instanceof AuthenticationResult.Known known) {
            CallerContext.set(ctx, known.caller(), days::shown);
            ctx.next();
            return;
        }
        AuthenticationResult.Unknown unknown = (AuthenticationResult.Unknown) verdict;
        ctx.response().putHeader("www-authenticate", "Bearer");
        ProblemResponses.send(ctx, ProblemDetail.of(401, unknown.code(), unknown.sentence()));
    }

    /** Whether the caller may ask for an operation, on the salon of the path if it names one; else it is answered. */
    boolean admits(RoutingContext ctx, String operationId, @Nullable String salon) {
        Caller caller = CallerContext.caller(ctx);
        if (caller.role().isEmpty()) return true;
        if (!Rights.operation(caller.role().get(), operationId)) {
            ProblemResponses.send(ctx, notAllowed(caller));
            return false;
        }
        if (salon == null || caller.sees(salon)) return true;
        ProblemResponses.send(ctx, ProblemDetail.unknownDay());
        return false;
    }

    /** Whether the caller may send commands of the type a body names, if it names one; else it is answered. */
    boolean admitsType(RoutingContext ctx, Buffer body) {
        Caller caller = CallerContext.caller(ctx);
        if (caller.role().isEmpty()) return true;
        String type;
        try {
            type = ContractJson.mapper()
                    .readTree(body.getBytes())
                    .at("/command/type")
                    .asText();
        } catch (IOException notJson) {
            return true;
        }
        if (!Rights.commands().contains(type) || Rights.command(caller.role().get(), type)) return true;
        ProblemResponses.send(ctx, notAllowed(caller));
        return false;
    }

    /** Whether the caller may send a command under that name, and not too fast; else it is answered. */
    boolean admitsCommand(RoutingContext ctx, String type, String actor, String salon) {
        Caller caller = CallerContext.caller(ctx);
        if (caller.role().isEmpty()) return true;
        long wait = limiter.take(caller.key(), System.nanoTime());
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
            ProblemResponses.send(ctx, ProblemDetail.unknownDay());
        } else {
            return true;
        }
        return false;
    }

    private static ProblemDetail notAllowed(Caller caller) {
        String role = caller.role().orElseThrow().word();
        String help = caller.role().get() == Role.TERMINAL ? "; sign on first" : "";
        return ProblemDetail.of(403, "NOT_ALLOWED", "the role " + role + " may not do this" + help);
    }

    /** Whether the sender of a request that is still open is still authenticated. */
    BooleanSupplier stillGood(RoutingContext ctx) {
        Caller caller = CallerContext.caller(ctx);
        return () -> authenticator.stillGood(caller);
    }

    Authenticator authenticator() {
        return authenticator;
    }
}
