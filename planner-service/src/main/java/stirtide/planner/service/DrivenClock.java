package stirtide.planner.service;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.function.LongSupplier;

/** A clock with a given start and a rate that can be changed. It can be moved forward, never back. */
public final class DrivenClock implements SalonClock {
    /** Largest rate, in thousandths: a thousand times real time. */
    public static final int FASTEST_PERMILLE = 1_000_000;

    private final LongSupplier nanos;
    private Instant base;
    private long baseNanos;
    private int ratePermille;

    /** A clock that starts at an instant, at a rate of 0 to {@link #FASTEST_PERMILLE}. */
    public DrivenClock(Instant start, int ratePermille) {
        this(start, ratePermille, System::nanoTime);
    }

    DrivenClock(Instant start, int ratePermille, LongSupplier nanos) {
        this.nanos = nanos;
        this.base = start;
        this.baseNanos = nanos.getAsLong();
        this.ratePermille = requireRate(ratePermille);
    }

    private static int requireRate(int ratePermille) {
        if (ratePermille < 0 || ratePermille > FASTEST_PERMILLE)
            throw new IllegalArgumentException(
                    "a clock's rate is 0 to " + FASTEST_PERMILLE + " thousandths, not " + ratePermille);
        return ratePermille;
    }

    @Override
    public synchronized Instant now() {
        return exact().truncatedTo(ChronoUnit.MILLIS);
    }

    private Instant exact() {
        long realNanos = nanos.getAsLong() - baseNanos;
        // Split so that years at the largest rate do not overflow.
        Duration whole = Duration.ofNanos(realNanos).dividedBy(1000).multipliedBy(ratePermille);
        return base.plus(whole).plusNanos(realNanos % 1000 * ratePermille / 1000);
    }

    @Override
    public synchronized int ratePermille() {
        return ratePermille;
    }

    /** Changes the rate from now on. */
    public synchronized void setRate(int newRatePermille) {
        int checked = requireRate(newRatePermille);
        rebase(exact());
        ratePermille = checked;
    }

    /** Moves the clock forward; an instant that has passed changes nothing. */
    public synchronized void moveTo(Instant instant) {
        if (instant.isAfter(exact())) rebase(instant);
    }

    private void rebase(Instant now) {
        base = now;
        baseNanos = nanos.getAsLong();
    }
}
