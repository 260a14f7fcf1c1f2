package stirtide.bar.model;

import java.time.Instant;

/**
 * The salon's clock between two messages: the time the service reported, carried on by the monotonic clock.
 *
 * @param reported time the service reported
 * @param reportedAtNanos monotonic reading when it arrived
 * @param ratePermille speed of the salon's clock in thousandths of real time: 1000 is real, 0 stands
 */
public record FollowedClock(Instant reported, long reportedAtNanos, int ratePermille) {
    /** Real speed. */
    public static final int REAL = 1000;

    private static final long NANOS_PER_MICRO = 1000;
    private static final long MICROS_PER_SECOND = 1_000_000;

    /** The salon's time at a monotonic reading. */
    public Instant at(long nanos) {
        long micros = (nanos - reportedAtNanos) / NANOS_PER_MICRO;
        // Whole seconds and the rest apart, so that neither a long day nor a fast clock can overflow.
        long seconds = micros / MICROS_PER_SECOND;
        long rest = micros % MICROS_PER_SECOND;
        return reported.plusMillis(seconds * ratePermille).plusNanos(rest * ratePermille);
    }

    /** The same clock at another speed from a monotonic reading on. */
    public FollowedClock atRate(int newRatePermille, long nanos) {
        return new FollowedClock(at(nanos), nanos, newRatePermille);
    }
}
