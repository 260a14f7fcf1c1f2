package stirtide.planner.service;

import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;

/** The clock on the wall. */
public final class WallClock implements SalonClock {
    private static final int REAL = 1000;

    private final Clock clock;

    /** A clock that reads the machine's. */
    public WallClock() {
        this(Clock.systemUTC());
    }

    WallClock(Clock clock) {
        this.clock = clock;
    }

    @Override
    public Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MILLIS);
    }

    @Override
    public int ratePermille() {
        return REAL;
    }
}
