package stirtide.planner.http;

import io.vertx.ext.web.RoutingContext;
import stirtide.planner.planning.whatif.WhatIfAnswer;
import stirtide.planner.planning.whatif.WhatIfQuestion;

/** Hypothetical changes; asking changes nothing. Parameters have passed the contract before they come here. */
record WhatIfHandlers(DayOperations days) {
    void moves(RoutingContext ctx) {
        answer(ctx, new WhatIfQuestion.Moves());
    }

    void move(RoutingContext ctx) {
        int service = Integer.parseInt(ctx.request().getParam("service"));
        answer(ctx, new WhatIfQuestion.OneMove(service, RequestParameters.instant(ctx, "start")));
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
        answer(
                ctx,
                new WhatIfQuestion.ExtraAssistant(
                        RequestParameters.instant(ctx, "from"), RequestParameters.instant(ctx, "to")));
    }

    private void answer(RoutingContext ctx, WhatIfQuestion question) {
        days.whatIf(RequestParameters.day(ctx), question)
                .onSuccess(answer -> answer.ifPresentOrElse(
                        found -> send(ctx, found), () -> ProblemResponses.send(ctx, ProblemDetail.unknownDay())))
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
