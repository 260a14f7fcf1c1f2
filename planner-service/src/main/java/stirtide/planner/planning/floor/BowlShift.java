package stirtide.planner.planning.floor;

/**
 * Makes room by mixing placed bowls at other minutes, which costs nobody a minute: those before a place in time as early as they live, those after it as late as they are
 * needed. Afterwards all are mixed as late as possible again, so that they stand no longer than they must.
 */
final class BowlShift {
    private static final int REACH = 70;

    private final FloorState state;
    private final FloorGrid grid;
    private final long[] bowls;
    private int count;
    /** Paths as they were before, for those that were touched. */
    final ServicePath[] before;

    final int[] touched;
    int touchedCount;

    BowlShift(FloorState state) {
        this.state = state;
        this.grid = state.grid;
        int most = 0;
        for (ServiceGrid service : grid.services) {
            most += service.last;
        }
        this.bowls = new long[most];
        this.before = new ServicePath[grid.services.length];
        this.touched = new int[grid.services.length];
    }

    void nothing() {
        touchedCount = 0;
        count = 0;
    }

    /** Opens room around a minute among the placed bowls near it. */
    void open(int minute) {
        nothing();
        for (int i = 0; i < before.length; i++) {
            ServicePath path = state.paths[i];
            if (path != null && path.mixStart[0] < minute + REACH && path.end() > minute - REACH) {
                before[i] = path;
                touched[touchedCount++] = i;
                ServicePath copy = path.copy();
                state.paths[i] = copy;
                for (int b = state.shown.pinned(i); b < copy.bowls(); b++) {
                    if (Math.abs(copy.mixStart[b] - minute) < REACH) {
                        bowls[count++] = (long) copy.mixStart[b] << 32 | i << 8 | b;
                    }
                }
            }
        }
        java.util.Arrays.sort(bowls, 0, count);
        for (int at = 0; at < count && (int) (bowls[at] >> 32) < minute; at++) {
            earlier(at);
        }
        for (int at = count - 1; at >= 0 && (int) (bowls[at] >> 32) >= minute; at--) {
            later(at);
        }
    }

    /** Mixes all bowls that were touched as late as possible. */
    void close() {
        for (int at = 0; at < count; at++) {
            ServicePath path = state.paths[(int) bowls[at] >> 8];
            int b = (int) bowls[at] & 255;
            bowls[at] = (long) path.mixStart[b] << 32 | bowls[at] & 0xffffffffL;
        }
        java.util.Arrays.sort(bowls, 0, count);
        for (int at = count - 1; at >= 0; at--) {
            later(at);
        }
    }

    /** Puts back what was touched, as it was. What was inserted since must be taken off before. */
    void undo() {
        for (int t = 0; t < touchedCount; t++) {
            state.takeOff(touched[t]);
        }
        for (int t = 0; t < touchedCount; t++) {
            state.putBack(before[touched[t]]);
        }
    }

    private void earlier(int at) {
        ServicePath path = state.paths[(int) bowls[at] >> 8];
        int b = (int) bowls[at] & 255;
        int mix = path.grid.mix[path.node[b]];
        int now = path.mixStart[b];
        int oldest = Math.max(0, path.useEnd(b) - grid.life[mix]);
        if (oldest >= now) {
            return;
        }
        state.lift(path, b);
        int start = MinuteSet.next(state.mixStarts(mix, path.scale[b]), oldest);
        while (start < now && MinuteSet.meets(state.stockFull(path.size[b]), start, now)) {
            start = MinuteSet.next(state.mixStarts(mix, path.scale[b]), start + 1);
        }
        state.remix(path, b, start);
    }

    private void later(int at) {
        ServicePath path = state.paths[(int) bowls[at] >> 8];
        int b = (int) bowls[at] & 255;
        int mix = path.grid.mix[path.node[b]];
        int latest = path.useStart(b) - grid.lead[mix];
        if (path.mixStart[b] < latest) {
            state.lift(path, b);
            state.remix(path, b, MinuteSet.previous(state.mixStarts(mix, path.scale[b]), latest));
        }
    }
}
