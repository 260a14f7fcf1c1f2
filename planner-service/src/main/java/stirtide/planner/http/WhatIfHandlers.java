package stirtide.planner.http;

import io.vertx.ext.web.RoutingContext;
import java.time.DateTimeException;
import java.time.Instant;
import stirtide.planner.planning.whatif.WhatIfAnswer;
import stirtide.planner.planning.whatif.WhatIfQuestion;

/** What would happen if; asking changes nothing. Parameters have passed the contract before they come here. */
final class WhatIfHandlers {
    private final DayOperations desk;

    WhatIfHandlers(DayOperations desk) {
        this.desk = desk;
    }

    void moves(RoutingContext ctx) {
        answer(ctx, new WhatIfQuestion.Moves());
    }

    void move(RoutingContext ctx) {
        int service = Integer.parseInt(ctx.request().getParam("service"));
        answer(ctx, new WhatIfQuestion.OneMove(service, instant(ctx, "start")));
    }

    void walkIn(RoutingContext ctx) {
        var params = ctx.request();
        answer(
                ctx,
                new WhatIfQuestion.WalkIn(
                        params.getParam("menuId"),
                        params.getParam("length"),
                        params.getParam("density"),
                        Integer.parseInt(params.getParam("chair"))));
    }

    void extraAssistant(RoutingContext ctx) {
        answer(ctx, new WhatIfQuestion.ExtraAssistant(instant(ctx, "from"), instant(ctx, "to")));
    }

    private static Instant instant(RoutingContext ctx, String name) {
        String text = ctx.request().getParam(name);
        try {
            return Instant.parse(text);
        } catch (DateTimeException noInstant) {
            throw new IllegalArgumentException(
                    name + " is \"" + text + "\"; write an instant like 2027-03-09T10:00:00Z", noInstant);
        }
    }

    private void answer(RoutingContext ctx, WhatIfQuestion question) {
        desk.whatIf(DayHandlers.day(ctx), question)
                .onSuccess(answer -> answer.ifPresentOrElse(
                        told -> send(ctx, told), () -> ProblemResponses.send(ctx, DayHandlers.unknownDay())))
                .onFailure(ctx::fail);
    }

    private static void send(RoutingContext ctx, WhatIfAnswer answer) {
        if (answer instanceof WhatIfAnswer.Moves moves) Responses.json(ctx, 200, moves.advice());
        if (answer instanceof WhatIfAnswer.WalkIn walkIn) Responses.json(ctx, 200, walkIn.advice());
        if (answer instanceof WhatIfAnswer.ExtraAssistant extra) Responses.json(ctx, 200, extra.advice());
        if (answer instanceof WhatIfAnswer.BrokenOff)
            ProblemResponses.send(
                    ctx,
                    ApiException.notNow(
                                    "the planner found no answer in time; the day is large or much is asked at once")
                            .problem());
        if (answer instanceof WhatIfAnswer.Refused refused)
            ProblemResponses.send(
                    ctx,
                    ProblemDetail.of(
                            409, refused.refusal().code(), refused.refusal().sentence()));
    }
}
