package stirtide.planner.service;

import io.vertx.core.Future;
import io.vertx.core.Vertx;
import java.time.Duration;
import java.time.Instant;
import java.util.Collection;
import java.util.Optional;
import java.util.function.Supplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import stirtide.planner.eventlog.LogFailure;

/** Records events when they fall due by the salon's clock. One timer for all days, set anew after every change. */
final class DueEventScheduler {
    private static final Logger LOG = LoggerFactory.getLogger("stirtide.tick");
    private static final int REAL_PERMILLE = 1000;
    /** Even a long wait is looked at again: a wall clock may be set meanwhile. */
    private static final long LONGEST_WAIT_MILLIS = 30_000;

    private static final long RETRY_MILLIS = 2_000;
    private static final long NO_TIMER = -1;

    private final Vertx vertx;
    private final SalonClock clock;
    private final Supplier<Collection<LoadedDay>> days;
    private long timer = NO_TIMER;
    private boolean noting;
    private boolean stopped;

    DueEventScheduler(Vertx vertx, SalonClock clock, Supplier<Collection<LoadedDay>> days) {
        this.vertx = vertx;
        this.clock = clock;
        this.days = days;
    }

    /** Sets the timer for the next instant at which an event falls due. */
    void arrange() {
        if (noting) return;
        waitFor(next().flatMap(this::delayMillis));
    }

    private Optional<Instant> next() {
        return days.get().stream().flatMap(day -> day.nextAt().stream()).min(Instant::compareTo);
    }

    private Optional<Long> delayMillis(Instant at) {
        int rate = clock.ratePermille();
        if (rate == 0) return Optional.empty();
        long ahead = Math.max(0, Duration.between(clock.now(), at).toMillis());
        // Rounded up: a timer that fires early would only be set again.
        long real = ahead / rate * REAL_PERMILLE + (ahead % rate * REAL_PERMILLE + rate - 1) / rate;
        return Optional.of(Math.min(LONGEST_WAIT_MILLIS, Math.max(1, real)));
    }

    private void waitFor(Optional<Long> delayMillis) {
        if (timer != NO_TIMER) vertx.cancelTimer(timer);
        timer = NO_TIMER;
        if (!stopped && delayMillis.isPresent()) timer = vertx.setTimer(delayMillis.get(), fired -> note());
    }

    private void note() {
        timer = NO_TIMER;
        noting = true;
        Instant now = clock.now();
        Future.join(days.get().stream()
                        .map(day -> day.actor().step(() -> day.actor().noteDue(now)))
                        .toList())
                .onComplete(noted -> {
                    noting = false;
                    if (noted.succeeded()) arrange();
                    else retry(noted.cause());
                });
    }

    private void retry(Throwable failed) {
        if (failed instanceof LogFailure log && log.kind() == LogFailure.Kind.READ_ONLY) {
            stop();
            return;
        }
        LOG.warn("what fell due is not noted yet: {}", failed.getMessage());
        waitFor(Optional.of(RETRY_MILLIS));
    }

    void stop() {
        stopped = true;
        waitFor(Optional.empty());
    }
}
