package stirtide.planner.service;

import io.vertx.core.Future;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import stirtide.planner.http.ApiException;
import stirtide.planner.http.DayOperations.ClockReading;

/** Shows the salon's clock and drives it, where it can be driven. */
final class ClockControl {
    /** Every few minutes something falls due on a day that was left open: a longer way would take hours. */
    private static final Duration FARTHEST = Duration.ofDays(7);

    private final SalonClock clock;
    private final CatchUp catchUp;
    private final Runnable changed;
    private final SerialQueue advances = new SerialQueue();

    /** {@code changed} is called after every change of time or rate. */
    ClockControl(SalonClock clock, CatchUp catchUp, Runnable changed) {
        this.clock = clock;
        this.catchUp = catchUp;
        this.changed = changed;
    }

    ClockReading reading() {
        return new ClockReading(clock.now(), clock.ratePermille(), clock instanceof DrivenClock);
    }

    Optional<ClockReading> setRate(int ratePermille) {
        if (!(clock instanceof DrivenClock driven)) return Optional.empty();
        driven.setRate(ratePermille);
        changed.run();
        return Optional.of(reading());
    }

    /** Moves a driven clock through everything that falls due, at each instant with all plans drawn. */
    Future<Optional<ClockReading>> advance(Instant to) {
        if (!(clock instanceof DrivenClock driven)) return Future.succeededFuture(Optional.empty());
        if (to.isAfter(clock.now().plus(FARTHEST)))
            return Future.failedFuture(ApiException.conflict("CLOCK_TOO_FAR", "the clock is moved seven days at most"));
        if (advances.full()) return Future.failedFuture(ApiException.notNow("too many wait for the clock; try again"));
        return advances.add(() -> catchUp.walk(to, Instant.MIN))
                .recover(failed -> Future.failedFuture(LogFailures.forSender(failed)))
                .map(done -> {
                    driven.moveTo(to);
                    changed.run();
                    return Optional.of(reading());
                });
    }
}
