package stirtide.planner.http;

import io.vertx.core.http.HttpServerResponse;
import io.vertx.core.json.DecodeException;
import io.vertx.ext.web.RoutingContext;
import io.vertx.json.schema.OutputUnit;
import io.vertx.openapi.validation.SchemaValidationException;
import io.vertx.openapi.validation.ValidatorException;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import stirtide.events.json.ContractJson;

/** Turns everything that goes wrong on a route into a problem document. */
final class ProblemResponses {
    private static final Logger LOG = LoggerFactory.getLogger("stirtide.http");
    private static final String ACCEPTED = "; openapi.yaml says what is accepted";
    private static final int LONGEST_REASON = 300;

    private ProblemResponses() {}

    /** Sends a problem, unless an answer has begun already. */
    static void send(RoutingContext ctx, ProblemDetail problem) {
        HttpServerResponse response = ctx.response();
        if (response.ended()) return;
        if (response.headWritten() || response.closed()) {
            ctx.request().connection().close();
            return;
        }
        RejectionMetrics.count(ctx, problem.code());
        if (problem.status() == 503 && !response.headers().contains("retry-after"))
            response.putHeader("retry-after", "1");
        response.setStatusCode(problem.status())
                .putHeader("content-type", "application/problem+json")
                .putHeader("cache-control", "no-store")
                .end(ContractJson.write(problem));
    }

    /** Answers a failed route. */
    static void failed(RoutingContext ctx) {
        send(ctx, translate(ctx));
    }

    private static ProblemDetail translate(RoutingContext ctx) {
        if (ctx.failure() instanceof ApiException declined) return declined.problem();
        return switch (ctx.statusCode()) {
            case 400 -> notUnderstood(ctx.failure());
            case 404 ->
                ProblemDetail.of(
                        404,
                        "PATH_UNKNOWN",
                        "nothing is at " + ctx.request().path() + "; openapi.yaml lists all paths");
            case 405 ->
                ProblemDetail.of(
                        405,
                        "METHOD_UNKNOWN",
                        ctx.request().method() + " is not known here; openapi.yaml lists all methods");
            case 413 ->
                ProblemDetail.of(
                        413, "BODY_TOO_LARGE", "the body is too large: 256 KiB at most, 2 MiB for opening a day");
            case 415 -> notJson();
            default -> isValidators(ctx.failure()) ? notUnderstood(ctx.failure()) : unexpected(ctx);
        };
    }

    /** Some of what its check finds the router calls an error of the service, such as a value it cannot decode. */
    private static boolean isValidators(@Nullable Throwable failure) {
        for (Throwable cause = failure; cause != null; cause = cause.getCause())
            if (cause instanceof ValidatorException) return true;
        return false;
    }

    /** The body is of another kind. */
    static ProblemDetail notJson() {
        return ProblemDetail.of(415, "NOT_JSON", "the body must be JSON in UTF-8, with content-type application/json");
    }

    private static ProblemDetail unexpected(RoutingContext ctx) {
        String errorId = UUID.randomUUID().toString();
        String route = ctx.currentRoute() == null
                ? "no route"
                : String.valueOf(ctx.currentRoute().getPath());
        LOG.error("{}: {} {}", errorId, ctx.request().method(), route, ctx.failure());
        return ProblemDetail.unexpected(errorId);
    }

    /** 400, or 415 when the body is of another kind than JSON. The reason is the innermost one that is known. */
    static ProblemDetail notUnderstood(@Nullable Throwable failure) {
        for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
            if (cause instanceof SchemaValidationException schema)
                return ProblemDetail.of(400, "NOT_UNDERSTOOD", deepest(schema));
            if (cause instanceof ValidatorException validator) return of(validator);
            if (cause instanceof NumberFormatException)
                return ProblemDetail.of(400, "NOT_UNDERSTOOD", "a number is none, or too large" + ACCEPTED);
            if (cause instanceof DecodeException || cause instanceof IllegalArgumentException)
                return ProblemDetail.of(400, "NOT_UNDERSTOOD", shortened(cause.getMessage()));
        }
        return ProblemDetail.of(400, "NOT_UNDERSTOOD", "the request cannot be read" + ACCEPTED);
    }

    private static ProblemDetail of(ValidatorException validator) {
        return switch (validator.type()) {
            case MISSING_REQUIRED_PARAMETER, INVALID_VALUE, INVALID_VALUE_FORMAT, ILLEGAL_VALUE ->
                ProblemDetail.of(400, "NOT_UNDERSTOOD", shortened(validator.getMessage()) + ACCEPTED);
            case UNSUPPORTED_VALUE_FORMAT -> notJson();
            default -> ProblemDetail.of(400, "NOT_UNDERSTOOD", shortened(validator.getMessage()) + ACCEPTED);
        };
    }

    /** The error deepest in the body is the one the sender can correct. A parameter is named instead. */
    private static String deepest(SchemaValidationException schema) {
        List<OutputUnit> errors =
                Optional.ofNullable(schema.getOutputUnit().getErrors()).orElse(List.of());
        String whole = String.valueOf(schema.getMessage());
        if (whole.contains(" parameter ")) return shortened(whole) + ACCEPTED;
        return errors.stream()
                .max(Comparator.<OutputUnit>comparingInt(error -> slashes(error.getInstanceLocation()))
                        .thenComparingInt(error -> slashes(error.getKeywordLocation())))
                .map(error -> shortened(error.getError()) + " at " + error.getInstanceLocation())
                .orElse("the body does not fit the contract" + ACCEPTED);
    }

    private static int slashes(@Nullable String place) {
        return place == null
                ? 0
                : (int) place.chars().filter(letter -> letter == '/').count();
    }

    private static String shortened(@Nullable String reason) {
        if (reason == null) return "the request cannot be read";
        String line = reason.lines().findFirst().orElse("");
        return line.length() <= LONGEST_REASON ? line : line.substring(0, LONGEST_REASON) + " ...";
    }
}
