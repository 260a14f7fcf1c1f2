package stirtide.planner.access;

import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;

/** Counts wrong codes for each name and locks the name for a while. Holds known names only, so it cannot grow. */
final class AttemptLimiter {
    private static final Duration SHORTEST = Duration.ofMinutes(1);
    private static final Duration LONGEST = Duration.ofMinutes(15);
    private static final int MOST_DOUBLINGS = 4;

    private final int free;
    private final Map<String, Tries> tries = new HashMap<>();

    private record Tries(int wrong, Instant lockedUntil) {}

    /** {@code free}: wrong codes before the first lock. */
    AttemptLimiter(int free) {
        this.free = free;
    }

    /** How long a name is locked still; zero when it is not. */
    Duration lockedFor(String name, Instant now) {
        Tries known = tries.get(name);
        if (known == null || !known.lockedUntil.isAfter(now)) return Duration.ZERO;
        return Duration.between(now, known.lockedUntil);
    }

    /** Counts a try before it is looked at, so that many at once cannot slip through. */
    void count(String name, Instant now) {
        Tries known = tries.getOrDefault(name, new Tries(0, Instant.MIN));
        int wrong = known.wrong + 1;
        tries.put(name, new Tries(wrong, wrong < free ? Instant.MIN : now.plus(lock(wrong - free))));
    }

    private static Duration lock(int beyond) {
        Duration lock = SHORTEST.multipliedBy(1L << Math.min(beyond, MOST_DOUBLINGS));
        return lock.compareTo(LONGEST) > 0 ? LONGEST : lock;
    }

    void forget(String name) {
        tries.remove(name);
    }
}
