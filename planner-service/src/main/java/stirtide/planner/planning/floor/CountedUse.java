package stirtide.planner.planning.floor;

/** How many of some equal things are in use in each minute. */
final class CountedUse {
    private final int count;
    private final short[] used;
    /** Minutes in which all are in use. */
    final long[] full;

    CountedUse(int count, int words) {
        this.count = count;
        this.used = new short[words * 64];
        this.full = new long[words];
        if (count == 0) {
            java.util.Arrays.fill(full, -1L);
        }
    }

    /** Takes one more during {@code [from, to)}; false if there were too few. */
    boolean take(int from, int to) {
        boolean enough = true;
        for (int minute = from; minute < to; minute++) {
            int now = ++used[minute];
            if (now >= count) {
                full[minute >> 6] |= 1L << minute;
                enough &= now <= count;
            }
        }
        return enough;
    }

    void giveBack(int from, int to) {
        for (int minute = from; minute < to; minute++) {
            if (--used[minute] < count) {
                full[minute >> 6] &= ~(1L << minute);
            }
        }
    }
}
