package stirtide.planner.http;

import io.vertx.core.Future;
import io.vertx.core.Handler;
import io.vertx.core.Vertx;
import io.vertx.core.http.HttpMethod;
import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import io.vertx.ext.web.handler.BodyHandler;
import io.vertx.ext.web.openapi.router.RequestExtractor;
import io.vertx.ext.web.openapi.router.RouterBuilder;
import io.vertx.openapi.contract.OpenAPIContract;
import io.vertx.openapi.contract.Operation;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Builds the routes from the contract: an operation without a handler, or the reverse, is a mistake at start. */
final class ApiRouter {
    private static final long BODY_LIMIT = 256 * 1024;
    private static final long OPEN_DAY_BODY_LIMIT = 2 * 1024 * 1024;

    private final Vertx vertx;
    private final int bodyMillis;
    private final int answerMillis;
    private final AuthenticationHandler door;
    private final DayOperations desk;
    private final RejectionMetrics refusals;
    private final Map<String, Handler<RoutingContext>> handlers;
    private final BodyHandler bodies = BodyHandler.create(false).setBodyLimit(BODY_LIMIT);
    private final BodyHandler openDayBodies = BodyHandler.create(false).setBodyLimit(OPEN_DAY_BODY_LIMIT);

    ApiRouter(Vertx vertx, HttpSecurity door, DayOperations desk, StreamRegistry feeds, RejectionMetrics refusals) {
        this.vertx = vertx;
        this.bodyMillis = door.limits().bodyMillis();
        this.answerMillis = door.limits().answerMillis();
        this.door = new AuthenticationHandler(vertx, door, desk);
        this.desk = desk;
        this.refusals = refusals;
        this.handlers = handlers(vertx, this.door, desk, feeds);
    }

    /** Handlers by operation id. */
    static Map<String, Handler<RoutingContext>> handlers(
            Vertx vertx, AuthenticationHandler door, DayOperations desk, StreamRegistry feeds) {
        DayHandlers days = new DayHandlers(door, desk, feeds);
        SignOnHandlers signOn = new SignOnHandlers(vertx, door.gate());
        ClockHandlers clock = new ClockHandlers(desk);
        WhatIfHandlers whatIf = new WhatIfHandlers(desk);
        GramsHandlers grams = new GramsHandlers(desk);
        Map<String, Handler<RoutingContext>> handlers = new TreeMap<>();
        handlers.put("listDays", days::listDays);
        handlers.put("openDay", days::openDay);
        handlers.put("showDay", days::showDay);
        handlers.put("showSetup", days::showSetup);
        handlers.put("sendCommand", days::sendCommand);
        handlers.put("followDay", days::followDay);
        handlers.put("readEvents", days::readEvents);
        handlers.put("nextPour", days::nextPour);
        handlers.put("showGrams", grams::grams);
        handlers.put("showSwatches", grams::swatches);
        handlers.put("showVisits", grams::visits);
        handlers.put("tryMoves", whatIf::moves);
        handlers.put("tryMove", whatIf::move);
        handlers.put("tryWalkIn", whatIf::walkIn);
        handlers.put("tryExtraAssistant", whatIf::extraAssistant);
        handlers.put("showClock", clock::showClock);
        handlers.put("setClockRate", clock::setClockRate);
        handlers.put("advanceClock", clock::advanceClock);
        ClientHandlers clients = new ClientHandlers(desk);
        handlers.put("exportClient", clients::export);
        handlers.put("eraseClient", clients::erase);
        handlers.put("showSignOn", signOn::show);
        handlers.put("signOn", signOn::signOn);
        handlers.put("signOff", signOn::signOff);
        return handlers;
    }

    /** The routes of the contract, each with its handler. */
    Router route(OpenAPIContract contract) {
        RouterBuilder builder = RouterBuilder.create(vertx, contract, RequestExtractor.withBodyHandler());
        builder.rootHandler(door::identify);
        builder.rootHandler(this::guardBody);
        builder.rootHandler(this::readBody);
        builder.rootHandler(ApiRouter::keepBody);
        Map<String, Handler<RoutingContext>> unused = new TreeMap<>(handlers);
        for (Operation operation : contract.operations()) {
            String id = operation.getOperationId();
            Handler<RoutingContext> handler = Optional.ofNullable(unused.remove(id))
                    .orElseThrow(() -> new IllegalStateException("the contract's operation has no handler: " + id));
            builder.getRoute(id).addHandler(ctx -> {
                answerInTime(ctx);
                if (door.admits(ctx, id)) atHand(ctx, handler);
            });
        }
        if (!unused.isEmpty())
            throw new IllegalStateException("handlers that the contract does not know: " + unused.keySet());
        Router router = builder.createRouter();
        for (int status = 400; status < 600; status++) router.errorHandler(status, ProblemResponses::failed);
        router.route().order(-1).handler(refusals::watch);
        return router;
    }

    /** Nobody who waits for an answer is left with a closed line. */
    private void answerInTime(RoutingContext ctx) {
        long timer = vertx.setTimer(answerMillis, late -> {
            if (!ctx.response().headWritten())
                ProblemResponses.send(ctx, ApiException.late().problem());
        });
        ctx.addEndHandler(ended -> vertx.cancelTimer(timer));
    }

    /** A day that is over may have to be read first. */
    private void atHand(RoutingContext ctx, Handler<RoutingContext> handler) {
        String salon = ctx.pathParam("salonId");
        Future<Void> read = salon == null ? Future.succeededFuture() : desk.atHand(salon + "/" + ctx.pathParam("date"));
        if (read.succeeded()) handle(ctx, handler);
        else read.onSuccess(ready -> handle(ctx, handler)).onFailure(ctx::fail);
    }

    private static void handle(RoutingContext ctx, Handler<RoutingContext> handler) {
        try {
            handler.handle(ctx);
        } catch (IllegalArgumentException badRequest) {
            ProblemResponses.send(ctx, ProblemResponses.notUnderstood(badRequest));
        }
    }

    /** A body that dribbles in never lets the line fall idle: it gets its own deadline. */
    private void guardBody(RoutingContext ctx) {
        long timer = vertx.setTimer(bodyMillis, late -> tooSlow(ctx));
        ctx.put("stirtide.bodyTimer", timer);
        ctx.addEndHandler(ended -> vertx.cancelTimer(timer));
        ctx.next();
    }

    private void tooSlow(RoutingContext ctx) {
        if (ctx.response().headWritten()) ctx.request().connection().close();
        else
            EarlyResponse.refuse(
                    ctx.request(),
                    ProblemDetail.of(408, "BODY_TOO_SLOW", "the body must be complete within " + bodyMillis + " ms"));
    }

    private void readBody(RoutingContext ctx) {
        boolean opensDay = ctx.request().method() == HttpMethod.POST
                && ctx.request().path().equals("/days");
        (opensDay ? openDayBodies : bodies).handle(ctx);
    }

    private static void keepBody(RoutingContext ctx) {
        Long timer = ctx.get("stirtide.bodyTimer");
        ctx.vertx().cancelTimer(timer);
        if (ctx.body().buffer() != null) ctx.put(Responses.RAW_BODY, ctx.body().buffer());
        ctx.next();
    }
}
