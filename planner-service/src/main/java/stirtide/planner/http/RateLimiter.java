package stirtide.planner.http;

import java.util.LinkedHashMap;
import java.util.Map;

/** Limits the requests of each key in any minute: a token bucket that refills evenly. Holds the newest keys only. */
final class RateLimiter {
    private static final long NANOS_PER_MINUTE = 60_000_000_000L;
    private static final int MOST_KEYS = 10_000;

    private final int perMinute;
    private final Map<String, Bucket> buckets = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Bucket> eldest) {
            return size() > MOST_KEYS;
        }
    };

    private record Bucket(long emptyNanos) {}

    RateLimiter(int perMinute) {
        this.perMinute = perMinute;
    }

    /** Takes one; the answer is 0 when it was there, else the seconds to wait. */
    long take(String key, long nowNanos) {
        long one = NANOS_PER_MINUTE / perMinute;
        Bucket bucket = buckets.getOrDefault(key, new Bucket(nowNanos - NANOS_PER_MINUTE));
        long empty = Math.max(bucket.emptyNanos, nowNanos - NANOS_PER_MINUTE);
        if (empty + one > nowNanos) return 1 + (empty + one - nowNanos) / 1_000_000_000L;
        buckets.put(key, new Bucket(empty + one));
        return 0;
    }
}
