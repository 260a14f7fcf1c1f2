package stirtide.planner.http;

import io.vertx.core.http.HttpHeaders;
import io.vertx.ext.web.RoutingContext;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import stirtide.planner.http.DayOperations.ShownDay;
import stirtide.planner.http.DayOperations.VisitsAnswer;

/** Grams, swatches and visits; asking changes nothing. Parameters have passed the contract before they come here. */
final class GramsHandlers {
    private final DayOperations desk;

    GramsHandlers(DayOperations desk) {
        this.desk = desk;
    }

    void grams(RoutingContext ctx) {
        show(ctx, desk.grams(DayHandlers.day(ctx)));
    }

    void swatches(RoutingContext ctx) {
        show(ctx, desk.swatches(DayHandlers.day(ctx)));
    }

    private static void show(RoutingContext ctx, Optional<ShownDay> shown) {
        if (shown.isEmpty()) {
            ProblemResponses.send(ctx, DayHandlers.unknownDay());
            return;
        }
        ctx.response().putHeader(HttpHeaders.ETAG, "\"" + shown.get().revision() + "\"");
        Responses.text(ctx, 200, shown.get().json());
    }

    void visits(RoutingContext ctx) {
        VisitsAnswer answer = desk.visits(
                DayHandlers.day(ctx),
                Integer.parseInt(ctx.pathParam("service")),
                date(ctx, "first"),
                date(ctx, "second"));
        if (answer instanceof VisitsAnswer.Told told) Responses.text(ctx, 200, told.json());
        else if (answer instanceof VisitsAnswer.Refused refused)
            ProblemResponses.send(ctx, ProblemDetail.of(409, refused.code(), refused.sentence()));
        else ProblemResponses.send(ctx, DayHandlers.unknownDay());
    }

    private static Optional<LocalDate> date(RoutingContext ctx, String name) {
        String text = ctx.request().getParam(name);
        if (text == null) return Optional.empty();
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeException noDate) {
            throw new IllegalArgumentException(name + " is \"" + text + "\"; write a date like 2027-03-09", noDate);
        }
    }
}
