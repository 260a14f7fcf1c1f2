package stirtide.planner.http;

import io.vertx.core.Future;
import io.vertx.core.Handler;
import io.vertx.core.Vertx;
import io.vertx.core.buffer.Buffer;
import io.vertx.core.http.HttpMethod;
import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import io.vertx.ext.web.handler.BodyHandler;
import io.vertx.ext.web.openapi.router.RequestExtractor;
import io.vertx.ext.web.openapi.router.RouterBuilder;
import io.vertx.openapi.contract.OpenAPIContract;
import io.vertx.openapi.contract.Operation;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Builds the routes from the contract: an operation without a handler, or the reverse, is a mistake at start. */
final class ApiRouter {
    private static final long BODY_LIMIT = 256 * 1024;
    private static final long OPEN_DAY_BODY_LIMIT = 2 * 1024 * 1024;

    private final Vertx vertx;
    private final int bodyMillis;
    private final int answerMillis;
    private final AuthenticationHandler authentication;
    private final DayOperations days;
    private final RejectionMetrics refusals;
    private final Map<String, Handler<RoutingContext>> handlers;
    private final BodyHandler bodies = BodyHandler.create(false).setBodyLimit(BODY_LIMIT);
    private final BodyHandler openDayBodies = BodyHandler.create(false).setBodyLimit(OPEN_DAY_BODY_LIMIT);

    ApiRouter(
            Vertx vertx, HttpSecurity security, DayOperations days, StreamRegistry streams, RejectionMetrics refusals) {
        this.vertx = vertx;
        this.bodyMillis = security.limits().bodyMillis();
        this.answerMillis = security.limits().answerMillis();
        this.authentication = new AuthenticationHandler(vertx, security, days);
        this.days = days;
        this.refusals = refusals;
        this.handlers = handlers(vertx, this.authentication, days, streams);
    }

    /** Handlers by operation id. */
    static Map<String, Handler<RoutingContext>> handlers(
            Vertx vertx, AuthenticationHandler authentication, DayOperations days, StreamRegistry streams) {
        DayHandlers shown = new DayHandlers(days);
        CommandHandlers commands = new CommandHandlers(authentication, days);
        StreamHandlers listeners = new StreamHandlers(authentication, days, streams);
        WhatIfHandlers whatIf = new WhatIfHandlers(days);
        ClockHandlers clock = new ClockHandlers(days);
        ClientHandlers clients = new ClientHandlers(days);
        SignOnHandlers signOn = new SignOnHandlers(vertx, authentication.authenticator());
        return new TreeMap<>(Map.ofEntries(
                Map.entry("listDays", shown::list),
                Map.entry("showDay", shown::showDay),
                Map.entry("showSetup", shown::showSetup),
                Map.entry("showGrams", shown::showGrams),
                Map.entry("showSwatches", shown::showSwatches),
                Map.entry("showVisits", shown::showVisits),
                Map.entry("nextPour", shown::nextPour),
                Map.entry("openDay", commands::open),
                Map.entry("sendCommand", commands::send),
                Map.entry("followDay", listeners::followDay),
                Map.entry("readEvents", listeners::readEvents),
                Map.entry("tryMoves", whatIf::moves),
                Map.entry("tryMove", whatIf::move),
                Map.entry("tryWalkIn", whatIf::walkIn),
                Map.entry("tryExtraAssistant", whatIf::extraAssistant),
                Map.entry("showClock", clock::showClock),
                Map.entry("setClockRate", clock::setClockRate),
                Map.entry("advanceClock", clock::advanceClock),
                Map.entry("exportClient", clients::export),
                Map.entry("eraseClient", clients::erase),
                Map.entry("showSignOn", signOn::show),
                Map.entry("signOn", signOn::signOn),
                Map.entry("signOff", signOn::signOff)));
    }

    /** The routes of the contract, each with its handler. */
    Router route(OpenAPIContract contract) {
        RouterBuilder builder = RouterBuilder.create(vertx, contract, RequestExtractor.withBodyHandler());
        builder.rootHandler(authentication::identify);
        builder.rootHandler(ctx -> admitOperation(ctx, contract));
        builder.rootHandler(this::guardBody);
        builder.rootHandler(this::readBody);
        builder.rootHandler(this::keepBody);
        Map<String, Handler<RoutingContext>> unused = new TreeMap<>(handlers);
        for (Operation operation : contract.operations()) {
            String id = operation.getOperationId();
            Handler<RoutingContext> handler = Optional.ofNullable(unused.remove(id))
                    .orElseThrow(() -> new IllegalStateException("the contract's operation has no handler: " + id));
            builder.getRoute(id).addHandler(ctx -> {
                answerInTime(ctx);
                if (authentication.admits(ctx, id, ctx.pathParam("salonId"))) load(ctx, handler);
            });
        }
        if (!unused.isEmpty())
            throw new IllegalStateException("handlers that the contract does not know: " + unused.keySet());
        Router router = builder.createRouter();
        router.getRoutes().stream()
                .filter(each -> each.methods() != null && each.methods().contains(HttpMethod.GET))
                .forEach(each -> each.method(HttpMethod.HEAD));
        for (int status = 400; status < 600; status++) router.errorHandler(status, ProblemResponses::failed);
        router.route().order(-1).handler(refusals::watch);
        return router;
    }

    /** Sends a response within the time limit, so that the client does not just see a closed connection. */
    private void answerInTime(RoutingContext ctx) {
        long timer = vertx.setTimer(answerMillis, late -> {
            if (!ctx.response().headWritten())
                ProblemResponses.send(ctx, ApiException.late().problem());
        });
        ctx.addEndHandler(ended -> vertx.cancelTimer(timer));
    }

    /** A day that is over may have to be read first. */
    private void load(RoutingContext ctx, Handler<RoutingContext> handler) {
        String salon = ctx.pathParam("salonId");
        Future<Void> read = salon == null ? Future.succeededFuture() : days.load(salon + "/" + ctx.pathParam("date"));
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

    /** Who may not ask for an operation at all is not told what its body should look like. */
    private void admitOperation(RoutingContext ctx, OpenAPIContract contract) {
        HttpMethod method = ctx.request().method() == HttpMethod.HEAD
                ? HttpMethod.GET
                : ctx.request().method();
        Operation operation = contract.findOperation(ctx.normalizedPath(), method);
        if (operation == null || authentication.admits(ctx, operation.getOperationId(), salon(ctx, operation)))
            ctx.next();
    }

    private static @Nullable String salon(RoutingContext ctx, Operation operation) {
        int at = List.of(operation.getOpenAPIPath().split("/")).indexOf("{salonId}");
        return at < 0 ? null : ctx.normalizedPath().split("/")[at];
    }

    private void keepBody(RoutingContext ctx) {
        Long timer = ctx.get("stirtide.bodyTimer");
        ctx.vertx().cancelTimer(timer);
        Buffer body = ctx.body().buffer();
        if (body != null) {
            Optional<ProblemDetail> problem = BodyTextCheck.problem(body);
            if (problem.isPresent()) {
                ProblemResponses.send(ctx, problem.get());
                return;
            }
            if (!authentication.admitsType(ctx, body)) return;
            ctx.put(Responses.RAW_BODY, body);
        }
        ctx.next();
    }
}
