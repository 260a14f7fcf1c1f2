package stirtide.planner.planning.floor;

/** How many of some equal things are in use in each minute. */
final class CountedUse {
    private final int count;
    private final short[] used;
    /** Minutes in which all are in use. */
    final long[] full;

    private int fullMinutes;

    CountedUse(int count, int words) {
        this.count = count;
        this.used = new short[words * 64];
        this.full = new long[words];
        if (count == 0) {
            java.util.Arrays.fill(full, -1L);
            fullMinutes = used.length;
        }
    }

    /** Takes one more during {@code [from, to)}; false if there were too few. */
    boolean take(int from, int to) {
        boolean enough = true;
        for (int minute = from; minute < to; minute++) {
            int now = ++used[minute];
            if (now >= count) {
                full[minute >> 6] |= 1L << minute;
                fullMinutes += now == count ? 1 : 0;
                enough &= now <= count;
            }
        }
        return enough;
    }

    void giveBack(int from, int to) {
        for (int minute = from; minute < to; minute++) {
            if (--used[minute] < count) {
                full[minute >> 6] &= ~(1L << minute);
                fullMinutes -= used[minute] == count - 1 ? 1 : 0;
            }
        }
    }

    /** The first minute from the given one on in which all are in use, {@link HandlingCosts#NONE} if there is none. */
    int nextFull(int from) {
        int minute = fullMinutes == 0 ? -1 : MinuteSet.next(full, from);
        return minute < 0 ? HandlingCosts.NONE : minute;
    }
}
