package stirtide.bar.link;

import java.time.Duration;
import java.util.random.RandomGenerator;

/** How long to wait before the next try: 1, 2, 4, 8, then 15 seconds, each a fifth more or less. */
final class Backoff {
    private static final long[] SECONDS = {1, 2, 4, 8, 15};
    private static final int JITTER_PERMILLE = 200;
    private static final int PERMILLE = 1000;

    private final RandomGenerator random;
    private final long unitMillis;
    private int failures;

    /** Waits in units of {@code unitMillis}, a second in earnest. */
    Backoff(RandomGenerator random, long unitMillis) {
        this.random = random;
        this.unitMillis = unitMillis;
    }

    Duration next() {
        long base = SECONDS[Math.min(failures, SECONDS.length - 1)] * unitMillis;
        failures++;
        long permille = PERMILLE - JITTER_PERMILLE + random.nextInt(2 * JITTER_PERMILLE + 1);
        return Duration.ofMillis(base * permille / PERMILLE);
    }

    void succeeded() {
        failures = 0;
    }
}
