package stirtide.planner.http;

import io.vertx.ext.web.RoutingContext;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Parameters of requests that have passed the contract. A value that only the calendar refuses fails with
 * {@link IllegalArgumentException}, whose message goes to the sender.
 */
final class RequestParameters {
    private RequestParameters() {}

    /** Stream id of the day in the path. The contract's pattern keeps slashes and quotes out of the salon id. */
    static String day(RoutingContext ctx) {
        String date = ctx.pathParam("date");
        parsed(date, LocalDate::parse, date + " is not a day of the calendar; write it like 2027-03-09");
        return ctx.pathParam("salonId") + "/" + date;
    }

    static Instant instant(RoutingContext ctx, String name) {
        String text = ctx.request().getParam(name);
        return parsed(text, Instant::parse, name + " is \"" + text + "\"; write an instant like 2027-03-09T10:00:00Z");
    }

    static Optional<LocalDate> date(RoutingContext ctx, String name) {
        return Optional.ofNullable(ctx.request().getParam(name))
                .map(text ->
                        parsed(text, LocalDate::parse, name + " is \"" + text + "\"; write a date like 2027-03-09"));
    }

    private static <T> T parsed(String text, Function<String, T> parse, String refusal) {
        try {
            return parse.apply(text);
        } catch (DateTimeException refused) {
            throw new IllegalArgumentException(refusal, refused);
        }
    }

    static Optional<Long> number(@Nullable String text) {
        return Optional.ofNullable(text).map(Long::valueOf);
    }
}
