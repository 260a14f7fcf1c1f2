package stirtide.planner.http;

import io.vertx.core.buffer.Buffer;
import io.vertx.core.http.HttpHeaders;
import io.vertx.ext.web.RoutingContext;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stirtide.events.command.CommandRequest;
import stirtide.events.command.CommandResult;
import stirtide.events.command.DayCommand.OpenDay;
import stirtide.events.day.StoredEvent;
import stirtide.planner.access.Role;
import stirtide.planner.http.DayOperations.CommandAnswer;
import stirtide.planner.http.DayOperations.PourAnswer;
import stirtide.planner.http.DayOperations.ShownDay;

/** Operations on days. Bodies and parameters have passed the contract before they come here. */
final class DayHandlers {
    private static final Pattern ENTITY_TAG = Pattern.compile("\"(\\d{1,18})\"");
    private static final int DEFAULT_LIMIT = 100;

    private final AuthenticationHandler door;
    private final DayOperations desk;
    private final StreamRegistry feeds;
    private final EventTextCache texts = new EventTextCache();

    DayHandlers(AuthenticationHandler door, DayOperations desk, StreamRegistry feeds) {
        this.door = door;
        this.desk = desk;
        this.feeds = feeds;
    }

    void listDays(RoutingContext ctx) {
        List<Known> days = desk.revisions().entrySet().stream()
                .filter(day -> AuthenticationHandler.caller(ctx).sees(salon(day.getKey())))
                .map(day -> new Known(day.getKey(), day.getValue()))
                .toList();
        Responses.json(ctx, 200, new DayList(days));
    }

    record DayList(List<Known> days) {}

    record Known(String day, long revision) {}

    void openDay(RoutingContext ctx) {
        CommandRequest request = Responses.body(ctx, CommandRequest.class);
        OpenDay open = (OpenDay) request.command();
        String day = open.setup().salon().salonId() + "/" + open.setup().date();
        if (!door.admitsCommand(ctx, "OpenDay", request.actor(), salon(day))) return;
        desk.command(day, request, Optional.empty(), role(ctx))
                .onSuccess(answer -> answer(ctx, answer, 201))
                .onFailure(ctx::fail);
    }

    void sendCommand(RoutingContext ctx) {
        CommandRequest request = Responses.body(ctx, CommandRequest.class);
        String type = request.command().getClass().getSimpleName();
        if (!door.admitsCommand(ctx, type, request.actor(), ctx.pathParam("salonId"))) return;
        desk.command(day(ctx), request, ifMatch(ctx), role(ctx))
                .onSuccess(answer -> answer(ctx, answer, 200))
                .onFailure(ctx::fail);
    }

    private static Optional<String> role(RoutingContext ctx) {
        return AuthenticationHandler.caller(ctx).role().map(Role::word);
    }

    private static String salon(String day) {
        return day.substring(0, day.lastIndexOf('/'));
    }

    private static void answer(RoutingContext ctx, CommandAnswer answer, int freshStatus) {
        if (answer instanceof CommandAnswer.Done done) done(ctx, done.result(), freshStatus);
        else ProblemResponses.send(ctx, problem(answer));
    }

    private static void done(RoutingContext ctx, CommandResult result, int freshStatus) {
        ctx.response().putHeader(HttpHeaders.ETAG, "\"" + result.lastRevision() + "\"");
        Responses.json(ctx, result.repeated() ? 200 : freshStatus, result);
    }

    private static ProblemDetail problem(CommandAnswer answer) {
        if (answer instanceof CommandAnswer.Refused refused)
            return ProblemDetail.of(409, refused.code(), refused.sentence());
        if (answer instanceof CommandAnswer.Stale stale) return ProblemDetail.stale(stale.currentRevision());
        if (answer instanceof CommandAnswer.Reused)
            return ProblemDetail.of(
                    422, "COMMAND_ID_REUSED", "this command id belongs to another request; choose a new id");
        if (answer instanceof CommandAnswer.Unknown) return unknownDay();
        if (answer instanceof CommandAnswer.ReadOnly)
            return ApiException.readOnly().problem();
        CommandAnswer.NotNow later = (CommandAnswer.NotNow) answer;
        ApiException why = later.full() ? ApiException.full(later.sentence()) : ApiException.notNow(later.sentence());
        return why.problem();
    }

    static ProblemDetail unknownDay() {
        return ProblemDetail.of(
                404, "DAY_UNKNOWN", "this day was not opened; POST /days opens one, GET /days lists them");
    }

    void showDay(RoutingContext ctx) {
        show(ctx, desk.show(day(ctx)));
    }

    void showSetup(RoutingContext ctx) {
        show(ctx, desk.setup(day(ctx)));
    }

    private static void show(RoutingContext ctx, Optional<ShownDay> shown) {
        if (shown.isEmpty()) {
            ProblemResponses.send(ctx, unknownDay());
            return;
        }
        ctx.response().putHeader(HttpHeaders.ETAG, "\"" + shown.get().revision() + "\"");
        Responses.text(ctx, 200, shown.get().json());
    }

    void nextPour(RoutingContext ctx) {
        String poured = Optional.ofNullable(ctx.request().getParam("poured")).orElse("");
        PourAnswer answer = desk.nextPour(day(ctx), ctx.pathParam("bowl"), poured);
        if (answer instanceof PourAnswer.Advised advised) Responses.text(ctx, 200, advised.json());
        else if (answer instanceof PourAnswer.Refused refused)
            ProblemResponses.send(ctx, ProblemDetail.of(409, refused.code(), refused.sentence()));
        else ProblemResponses.send(ctx, unknownDay());
    }

    void followDay(RoutingContext ctx) {
        String day = day(ctx);
        if (desk.show(day).isEmpty()) ProblemResponses.send(ctx, unknownDay());
        else
            feeds.open(
                    ctx,
                    day,
                    door.stillGood(ctx),
                    response -> new ViewStream(desk, day, response, AuthenticationHandler.shown(ctx)));
    }

    void readEvents(RoutingContext ctx) {
        String day = day(ctx);
        Optional<Long> newest = Optional.ofNullable(desk.revisions().get(day));
        if (newest.isEmpty()) {
            ProblemResponses.send(ctx, unknownDay());
            return;
        }
        long after = number(ctx.request().getHeader("last-event-id"))
                .or(() -> number(ctx.request().getParam("after")))
                .orElse(0L);
        if (after > newest.get()) {
            ProblemResponses.send(
                    ctx,
                    ProblemDetail.of(409, "REVISION_UNKNOWN", "the newest revision of this day is " + newest.get()));
        } else if (wantsStream(ctx)) {
            feeds.open(ctx, day, door.stillGood(ctx), response -> new EventStream(desk, day, after, texts, response));
        } else {
            page(ctx, day, after);
        }
    }

    private void page(RoutingContext ctx, String day, long after) {
        int limit =
                number(ctx.request().getParam("limit")).map(Math::toIntExact).orElse(DEFAULT_LIMIT);
        desk.events(day, after, limit)
                .onSuccess(events -> Responses.raw(ctx, 200, Buffer.buffer(pageJson(day, after, events))))
                .onFailure(ctx::fail);
    }

    private String pageJson(String day, long after, List<StoredEvent> events) {
        String list = String.join(",", events.stream().map(EventJson::of).toList());
        long newest = Optional.ofNullable(desk.revisions().get(day)).orElse(after);
        return "{\"day\":\"" + day + "\",\"after\":" + after + ",\"newest\":" + newest + ",\"events\":[" + list + "]}";
    }

    private static boolean wantsStream(RoutingContext ctx) {
        String accepted = ctx.request().getHeader(HttpHeaders.ACCEPT);
        return accepted != null && accepted.contains("text/event-stream");
    }

    private static Optional<Long> number(@org.jspecify.annotations.Nullable String text) {
        return Optional.ofNullable(text).map(Long::valueOf);
    }

    /** The pattern lets no slash or quote into the id; only a date that is none can still be wrong. */
    static String day(RoutingContext ctx) {
        String date = ctx.pathParam("date");
        try {
            LocalDate.parse(date);
        } catch (DateTimeException noDate) {
            throw new IllegalArgumentException(
                    date + " is not a day of the calendar; write it like 2027-03-09", noDate);
        }
        return ctx.pathParam("salonId") + "/" + date;
    }

    private static Optional<Long> ifMatch(RoutingContext ctx) {
        String header = ctx.request().getHeader(HttpHeaders.IF_MATCH);
        if (header == null || header.equals("*")) return Optional.empty();
        Matcher tag = ENTITY_TAG.matcher(header);
        if (!tag.matches())
            throw new IllegalArgumentException("If-Match must be one revision in double quotes, such as \"17\", or *");
        return Optional.of(Long.valueOf(tag.group(1)));
    }
}
