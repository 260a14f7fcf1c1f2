package stirtide.planner.http;

import io.vertx.core.Future;
import io.vertx.core.http.HttpHeaders;
import io.vertx.ext.web.RoutingContext;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stirtide.events.command.CommandRequest;
import stirtide.events.command.DayCommand.OpenDay;
import stirtide.planner.access.Role;
import stirtide.planner.http.DayOperations.CommandAnswer;

/** Commands. Bodies have passed the contract before they come here. */
record CommandHandlers(AuthenticationHandler authentication, DayOperations days) {
    private static final Pattern ENTITY_TAG = Pattern.compile("\"(\\d{1,18})\"");

    void open(RoutingContext ctx) {
        CommandRequest request = Responses.body(ctx, CommandRequest.class);
        OpenDay open = (OpenDay) request.command();
        String day = open.setup().salon().salonId() + "/" + open.setup().date();
        if (authentication.admitsCommand(ctx, "OpenDay", request.actor(), DayHandlers.salon(day)))
            answer(ctx, days.command(day, request, Optional.empty(), role(ctx)), 201);
    }

    void send(RoutingContext ctx) {
        CommandRequest request = Responses.body(ctx, CommandRequest.class);
        String type = request.command().getClass().getSimpleName();
        if (authentication.admitsCommand(ctx, type, request.actor(), ctx.pathParam("salonId")))
            answer(ctx, days.command(RequestParameters.day(ctx), request, ifMatch(ctx), role(ctx)), 200);
    }

    private static Optional<String> role(RoutingContext ctx) {
        return CallerContext.caller(ctx).role().map(Role::word);
    }

    private static Optional<Long> ifMatch(RoutingContext ctx) {
        String header = ctx.request().getHeader(HttpHeaders.IF_MATCH);
        if (header == null || header.equals("*")) return Optional.empty();
        Matcher tag = ENTITY_TAG.matcher(header);
        if (!tag.matches())
            throw new IllegalArgumentException("If-Match must be one revision in double quotes, such as \"17\", or *");
        return Optional.of(Long.valueOf(tag.group(1)));
    }

    private static void answer(RoutingContext ctx, Future<CommandAnswer> answer, int freshStatus) {
        answer.onSuccess(known -> answer(ctx, known, freshStatus)).onFailure(ctx::fail);
    }

    private static void answer(RoutingContext ctx, CommandAnswer answer, int freshStatus) {
        if (answer instanceof CommandAnswer.Done done) {
            Responses.revision(ctx, done.result().lastRevision());
            Responses.json(ctx, done.result().repeated() ? 200 : freshStatus, done.result());
        } else {
            ProblemResponses.send(ctx, problem(answer));
        }
    }

    private static ProblemDetail problem(CommandAnswer answer) {
        if (answer instanceof CommandAnswer.Refused refused)
            return ProblemDetail.of(409, refused.code(), refused.sentence());
        if (answer instanceof CommandAnswer.Stale stale) return ProblemDetail.stale(stale.currentRevision());
        if (answer instanceof CommandAnswer.Reused)
            return ProblemDetail.of(
                    422, "COMMAND_ID_REUSED", "this command id belongs to another request; choose a new id");
        return ProblemDetail.unknownDay();
    }
}
