package stirtide.planner.http;

import io.vertx.core.http.HttpHeaders;
import io.vertx.ext.web.RoutingContext;
import java.util.List;
import java.util.Optional;
import stirtide.events.day.StoredEvent;
import stirtide.planner.http.DayOperations.View;

/** Events of a day, in pages or as a stream, and live views. */
final class StreamHandlers {
    private static final int DEFAULT_LIMIT = 100;

    private final AuthenticationHandler authentication;
    private final DayOperations days;
    private final StreamRegistry streams;
    private final EventTextCache texts = new EventTextCache();

    StreamHandlers(AuthenticationHandler authentication, DayOperations days, StreamRegistry streams) {
        this.authentication = authentication;
        this.days = days;
        this.streams = streams;
    }

    void followDay(RoutingContext ctx) {
        String day = RequestParameters.day(ctx);
        if (days.show(day, View.DAY).isEmpty()) ProblemResponses.send(ctx, ProblemDetail.unknownDay());
        else
            streams.open(
                    ctx,
                    day,
                    authentication.stillGood(ctx),
                    response -> new ViewStream(days, day, response, CallerContext.disclosed(ctx)));
    }

    void readEvents(RoutingContext ctx) {
        String day = RequestParameters.day(ctx);
        Optional<Long> newest = Optional.ofNullable(days.revisions().get(day));
        if (newest.isEmpty()) {
            ProblemResponses.send(ctx, ProblemDetail.unknownDay());
            return;
        }
        long after = RequestParameters.number(ctx.request().getHeader("last-event-id"))
                .or(() -> RequestParameters.number(ctx.request().getParam("after")))
                .orElse(0L);
        if (after > newest.get())
            ProblemResponses.send(
                    ctx,
                    ProblemDetail.of(409, "REVISION_UNKNOWN", "the newest revision of this day is " + newest.get()));
        else if (wantsStream(ctx))
            streams.open(
                    ctx,
                    day,
                    authentication.stillGood(ctx),
                    response -> new EventStream(days, day, after, texts, response));
        else page(ctx, day, after);
    }

    private static boolean wantsStream(RoutingContext ctx) {
        String accepted = ctx.request().getHeader(HttpHeaders.ACCEPT);
        return accepted != null && accepted.contains("text/event-stream");
    }

    private void page(RoutingContext ctx, String day, long after) {
        int limit = RequestParameters.number(ctx.request().getParam("limit"))
                .map(Math::toIntExact)
                .orElse(DEFAULT_LIMIT);
        days.events(day, after, limit)
                .onSuccess(events -> Responses.raw(ctx, 200, page(day, after, events)))
                .onFailure(ctx::fail);
    }

    private String page(String day, long after, List<StoredEvent> events) {
        String list = String.join(",", events.stream().map(EventTextCache::text).toList());
        long newest = Optional.ofNullable(days.revisions().get(day)).orElse(after);
        return "{\"day\":\"" + day + "\",\"after\":" + after + ",\"newest\":" + newest + ",\"events\":[" + list + "]}";
    }
}
