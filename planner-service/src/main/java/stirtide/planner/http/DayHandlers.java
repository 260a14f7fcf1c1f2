package stirtide.planner.http;

import io.vertx.ext.web.RoutingContext;
import java.util.List;
import java.util.Optional;
import stirtide.planner.http.DayOperations.View;

/** Questions about days. Parameters have passed the contract before they come here. */
record DayHandlers(DayOperations days) {
    record DayList(List<Known> days) {}

    record Known(String day, long revision) {}

    void list(RoutingContext ctx) {
        List<Known> known = days.revisions().entrySet().stream()
                .filter(day -> CallerContext.caller(ctx).sees(salon(day.getKey())))
                .map(day -> new Known(day.getKey(), day.getValue()))
                .toList();
        Responses.json(ctx, 200, new DayList(known));
    }

    static String salon(String day) {
        return day.substring(0, day.lastIndexOf('/'));
    }

    void showDay(RoutingContext ctx) {
        show(ctx, View.DAY);
    }

    void showSetup(RoutingContext ctx) {
        show(ctx, View.SETUP);
    }

    void showGrams(RoutingContext ctx) {
        show(ctx, View.GRAMS);
    }

    void showSwatches(RoutingContext ctx) {
        show(ctx, View.SWATCHES);
    }

    private void show(RoutingContext ctx, View view) {
        Responses.shown(ctx, days.show(RequestParameters.day(ctx), view));
    }

    void nextPour(RoutingContext ctx) {
        String poured = Optional.ofNullable(ctx.request().getParam("poured")).orElse("");
        Responses.answer(ctx, days.nextPour(RequestParameters.day(ctx), ctx.pathParam("bowl"), poured));
    }

    void showVisits(RoutingContext ctx) {
        Responses.answer(
                ctx,
                days.visits(
                        RequestParameters.day(ctx),
                        Integer.parseInt(ctx.pathParam("service")),
                        RequestParameters.date(ctx, "first"),
                        RequestParameters.date(ctx, "second")));
    }
}
