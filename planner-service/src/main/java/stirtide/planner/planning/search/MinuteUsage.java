package stirtide.planner.planning.search;

import java.util.Arrays;

/** How many of something are in use in each minute. Grows as needed; minutes never marked hold the value {@code beyond}. */
final class MinuteUsage {
    private final int beyond;
    private int[] used;

    MinuteUsage(int minutes, int beyond) {
        this.beyond = beyond;
        used = new int[Math.max(16, minutes)];
        Arrays.fill(used, beyond);
    }

    int at(int minute) {
        return minute >= 0 && minute < used.length ? used[minute] : beyond;
    }

    void add(int from, int to, int amount) {
        if (to > used.length) {
            int before = used.length;
            used = Arrays.copyOf(used, Math.max(to, 2 * before));
            Arrays.fill(used, before, used.length, beyond);
        }
        for (int minute = Math.max(0, from); minute < to; minute++) used[minute] += amount;
    }

    boolean below(int level, int from, int to) {
        for (int minute = from; minute < to; minute++) if (at(minute) >= level) return false;
        return true;
    }

    /** First minute from {@code from} on in which {@code level} or more are in use, {@code until} when there is none before. */
    int firstAt(int level, int from, int until) {
        for (int minute = from; minute < until; minute++) if (at(minute) >= level) return minute;
        return until;
    }
}
