package stirtide.planner.http;

import io.vertx.ext.web.RoutingContext;
import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import stirtide.planner.http.DayOperations.ClockReading;

/** Operations on the salon's clock. */
record ClockHandlers(DayOperations days) {
    /** Shorter than what an idle connection is granted, so that the answer still arrives. */
    private static final int LONGEST_SECONDS = 20;

    private static final ApiException ON_ITS_WAY =
            ApiException.notNow("the clock is on its way; send the same again to wait for its end");

    record Rate(int ratePermille) {}

    record Advance(Instant to) {}

    void showClock(RoutingContext ctx) {
        Responses.json(ctx, 200, days.clock());
    }

    void setClockRate(RoutingContext ctx) {
        answer(ctx, days.setRate(Responses.body(ctx, Rate.class).ratePermille()));
    }

    void advanceClock(RoutingContext ctx) {
        days.advance(Responses.body(ctx, Advance.class).to())
                .timeout(LONGEST_SECONDS, TimeUnit.SECONDS)
                .onSuccess(reading -> answer(ctx, reading))
                .onFailure(failed -> ctx.fail(failed instanceof TimeoutException ? ON_ITS_WAY : failed));
    }

    private static void answer(RoutingContext ctx, Optional<ClockReading> reading) {
        if (reading.isPresent()) Responses.json(ctx, 200, reading.get());
        else
            ProblemResponses.send(
                    ctx,
                    ProblemDetail.of(
                            409, "CLOCK_NOT_DRIVEN", "this service runs on the wall clock, which cannot be driven"));
    }
}
