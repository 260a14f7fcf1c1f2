package stirtide.planner.http;

import com.fasterxml.jackson.annotation.JsonInclude;
import io.vertx.core.Vertx;
import io.vertx.ext.web.RoutingContext;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import stirtide.planner.access.Authenticator;
import stirtide.planner.access.Caller;
import stirtide.planner.access.CodeAttempt;
import stirtide.planner.access.Role;
import stirtide.planner.access.SignOnResult;

/** Sign-on of a person at a terminal with a short code, and sign-off. */
record SignOnHandlers(Vertx vertx, Authenticator authenticator) {
    record Code(String personId, String code) {}

    /** Who the sender is; {@code needed} is whether a person must sign on before anything can be changed. */
    @JsonInclude(JsonInclude.Include.NON_ABSENT)
    record SignedOn(
            boolean needed,
            Optional<String> actor,
            Optional<String> role,
            Optional<String> salonId,
            Optional<Instant> expiresAt,
            Optional<String> terminal,
            Optional<String> token) {}

    private static SignedOn of(Caller caller, Optional<String> token) {
        boolean atTerminal = caller.role().filter(role -> role == Role.TERMINAL).isPresent();
        return new SignedOn(
                atTerminal,
                Optional.of(caller.actor()).filter(actor -> !actor.isEmpty() && !atTerminal),
                caller.role().map(Role::word),
                caller.salonId(),
                caller.expires(),
                atTerminal ? Optional.of(caller.actor()) : caller.terminal(),
                token);
    }

    void show(RoutingContext ctx) {
        Responses.json(ctx, 200, of(CallerContext.caller(ctx), Optional.empty()));
    }

    void signOn(RoutingContext ctx) {
        Caller terminal = CallerContext.caller(ctx);
        if (terminal.role().isEmpty()) {
            ProblemResponses.send(
                    ctx,
                    ProblemDetail.of(409, "NO_SIGN_ON", "this service knows no tokens: no sign-on is needed here"));
            return;
        }
        Code typed = Responses.body(ctx, Code.class);
        CodeAttempt tried = authenticator.tryCode(terminal, typed.personId(), typed.code());
        if (!tried.waiting().isZero()) answer(ctx, authenticator.signOn(tried, false));
        else
            vertx.executeBlocking(tried::right)
                    .onSuccess(right -> answer(ctx, authenticator.signOn(tried, right)))
                    .onFailure(ctx::fail);
    }

    private static void answer(RoutingContext ctx, SignOnResult answer) {
        if (answer instanceof SignOnResult.SignedOn welcome)
            Responses.json(ctx, 201, of(welcome.caller(), Optional.of(welcome.token())));
        else if (answer instanceof SignOnResult.Wrong wrong)
            ProblemResponses.send(ctx, ProblemDetail.of(401, "SIGN_ON_WRONG", wrong.sentence()));
        else locked(ctx, ((SignOnResult.Locked) answer).waiting());
    }

    private static void locked(RoutingContext ctx, Duration wait) {
        long seconds = wait.toSeconds() + 1;
        ctx.response().putHeader("retry-after", Long.toString(seconds));
        ProblemResponses.send(
                ctx,
                ProblemDetail.of(
                        429,
                        "SIGN_ON_LOCKED",
                        "too many wrong codes; no code is looked at for " + seconds + " seconds"));
    }

    void signOff(RoutingContext ctx) {
        Caller caller = CallerContext.caller(ctx);
        if (caller.terminal().isEmpty()) {
            ProblemResponses.send(
                    ctx, ProblemDetail.of(409, "NOT_SIGNED_ON", "only who signed on at a terminal can sign off"));
            return;
        }
        authenticator.signOff(caller);
        Responses.noContent(ctx);
    }
}
