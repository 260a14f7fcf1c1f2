package stirtide.planner.http;

import io.vertx.ext.web.RoutingContext;
import java.time.Instant;
import java.util.Optional;
import stirtide.planner.http.DayDesk.ClockReading;

/** Operations on the salon's clock. */
final class ClockHandlers {
    private final DayDesk desk;

    ClockHandlers(DayDesk desk) {
        this.desk = desk;
    }

    record Rate(int ratePermille) {}

    record Advance(Instant to) {}

    void showClock(RoutingContext ctx) {
        Answers.json(ctx, 200, desk.clock());
    }

    void setClockRate(RoutingContext ctx) {
        answer(ctx, desk.setRate(Answers.body(ctx, Rate.class).ratePermille()));
    }

    void advanceClock(RoutingContext ctx) {
        desk.advance(Answers.body(ctx, Advance.class).to())
                .onSuccess(reading -> answer(ctx, reading))
                .onFailure(ctx::fail);
    }

    private static void answer(RoutingContext ctx, Optional<ClockReading> reading) {
        if (reading.isPresent()) Answers.json(ctx, 200, reading.get());
        else
            Problems.send(
                    ctx,
                    Problem.of(409, "CLOCK_NOT_DRIVEN", "this service runs on the wall clock, which nobody can drive"));
    }
}
