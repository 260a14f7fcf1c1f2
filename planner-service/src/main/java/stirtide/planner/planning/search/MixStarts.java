package stirtide.planner.planning.search;

/** Starts of mixes within a window of the day, worked out when they are first asked for. */
final class MixStarts {
    private final ResourceCalendar bar;
    private final int from;
    private final int to;
    private final int early;
    private int known;
    private int[][] latest = {};

    /**
     * @param from first minute of the window
     * @param to minute after the last
     * @param early minutes by which mixes start earlier than need be
     */
    MixStarts(ResourceCalendar bar, int from, int to, int early) {
        this.bar = bar;
        this.from = from;
        this.to = to;
        this.early = early;
    }

    /** Start of a mix on a scale, the latest that is free and early enough; -1 where there is none in the window. */
    int latest(int scale, int mixMinutes, int notAfter) {
        if (notAfter < from) return -1;
        if (known != mixMinutes) find(mixMinutes);
        return early(latest[scale], Math.min(notAfter - from, latest[scale].length - 1));
    }

    private void find(int mixMinutes) {
        boolean[] mixerFree = bar.mixerFree(mixMinutes, from, to);
        latest = new int[bar.scaleCount()][];
        for (int scale = 0; scale < latest.length; scale++)
            latest[scale] = bar.latestStarts(scale, mixMinutes, from, mixerFree);
        known = mixMinutes;
    }

    /** The latest free start that is early enough, else the first free one after it that is still in time. */
    private int early(int[] starts, int last) {
        int wanted = last - early;
        if (wanted >= 0 && starts[wanted] >= 0) return starts[wanted];
        for (int i = Math.max(0, wanted); i < last; i++) if (starts[i] >= 0) return starts[i];
        return last < 0 ? -1 : starts[last];
    }
}
