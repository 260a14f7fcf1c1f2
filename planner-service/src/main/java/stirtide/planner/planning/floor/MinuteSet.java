package stirtide.planner.planning.floor;

/** Sets of minutes of the day as bits in words of 64; bits outside the words count as absent. */
final class MinuteSet {
    private MinuteSet() {}

    static boolean has(long[] set, int minute) {
        return (set[minute >> 6] >>> minute & 1) != 0;
    }

    /** Least member that is no less than the given minute, or -1. */
    static int next(long[] set, int from) {
        int word = from >> 6;
        if (word >= set.length) {
            return -1;
        }
        long bits = set[word] & -1L << from;
        while (bits == 0) {
            if (++word == set.length) {
                return -1;
            }
            bits = set[word];
        }
        return (word << 6) + Long.numberOfTrailingZeros(bits);
    }

    /** Least minute that is no member and no less than the given one; the minute after the words if all are. */
    static int nextAbsent(long[] set, int from) {
        int word = from >> 6;
        if (word >= set.length) {
            return from;
        }
        long bits = ~set[word] & -1L << from;
        while (bits == 0) {
            if (++word == set.length) {
                return word << 6;
            }
            bits = ~set[word];
        }
        return (word << 6) + Long.numberOfTrailingZeros(bits);
    }

    /** Greatest member that is no greater than the given minute, or -1. */
    static int previous(long[] set, int from) {
        if (from < 0) {
            return -1;
        }
        int word = Math.min(from >> 6, set.length - 1);
        long bits = word == from >> 6 ? set[word] & -1L >>> 63 - (from & 63) : set[word];
        while (bits == 0) {
            if (--word < 0) {
                return -1;
            }
            bits = set[word];
        }
        return (word << 6) + 63 - Long.numberOfLeadingZeros(bits);
    }

    /** Whether all minutes of {@code [from, to)} are members. */
    static boolean covers(long[] set, int from, int to) {
        return nextAbsent(set, from) >= to;
    }

    /** Whether some minute of {@code [from, to)} is a member. */
    static boolean meets(long[] set, int from, int to) {
        int at = next(set, from);
        return at >= 0 && at < to;
    }

    static void add(long[] set, int from, int to) {
        for (int minute = from; minute < to; minute++) {
            set[minute >> 6] |= 1L << minute;
        }
    }

    static void remove(long[] set, int from, int to) {
        for (int minute = from; minute < to; minute++) {
            set[minute >> 6] &= ~(1L << minute);
        }
    }

    /** Writes into {@code to} the minutes at which so many members in a row begin. */
    static void runs(long[] set, int length, long[] to) {
        System.arraycopy(set, 0, to, 0, set.length);
        int have = 1;
        while (have < length) {
            int shift = Math.min(have, length - have);
            for (int word = 0; word < to.length; word++) {
                long next = word + 1 < to.length ? to[word + 1] : 0;
                to[word] &= to[word] >>> shift | next << 64 - shift;
            }
            have += shift;
        }
    }
}
