package stirtide.planner.planning.floor;

import java.util.Arrays;

/** What can be decided next in a {@link ProofState}: mixes, rinses, and heads where stylists rinse. */
final class ProofMoves {
    private static final int MIX = 0;
    private static final int RINSE = 1;
    private static final int HEAD = 2;

    private final ProofGroup group;
    private final FloorDay day;
    private final ProofTimes times;
    private final boolean oneScale;
    private final long[] moves;
    private final long[] scratch;
    private int count;
    private int done;

    ProofMoves(ProofGroup group) {
        this.group = group;
        this.day = group.grid.day;
        this.times = new ProofTimes(group);
        this.oneScale = day.scales() == 1 && day.assistants().size() > 1;
        int nodes = 0;
        for (ProofUnit unit : group.units) {
            nodes += unit.last - unit.first;
        }
        this.moves = new long[nodes * day.assistants().size() + 2 * group.services.length];
        this.scratch = new long[moves.length];
    }

    private static long move(int start, int kind, int index, int assistant, int node) {
        return (long) start << 32 | kind << 24 | index << 16 | assistant << 8 | node;
    }

    /** Lists the moves of a settled state by their start, and raises the state to the first of them. */
    int list(ProofState state) {
        int kept = list(state, moves);
        Arrays.sort(moves, 0, kept);
        return kept;
    }

    /** Raises a settled state to its first move; false if it has none. */
    boolean raise(ProofState state) {
        return list(state, scratch) > 0;
    }

    private int list(ProofState state, long[] list) {
        count = 0;
        done = HandlingCosts.NONE;
        if (day.stylistsRinse() && heads(state, list)) {
            return 1;
        }
        for (int u = 0; u < group.units.length; u++) {
            for (int a = 0; a < state.free.length && state.node[u] < group.units[u].last; a++) {
                mixes(state, u, a, list);
            }
        }
        for (int i = 0; i < group.services.length && !day.stylistsRinse(); i++) {
            if (times.waitsForRinse(state, i)) {
                rinses(state, i, list);
            }
        }
        int kept = 0;
        int first = HandlingCosts.NONE;
        int firstJob = HandlingCosts.NONE;
        for (int m = 0; m < count; m++) {
            int start = (int) (list[m] >> 32);
            boolean job = !day.stylistsRinse() || ((int) list[m] >> 24) == MIX;
            if (start < done || !job) {
                list[kept++] = list[m];
                first = Math.min(first, start);
                firstJob = job ? Math.min(firstJob, start) : firstJob;
            }
        }
        if (kept == 0) {
            return 0;
        }
        for (int a = 0; a < state.free.length && firstJob < HandlingCosts.NONE; a++) {
            state.free[a] = Math.max(state.free[a], firstJob);
        }
        state.clock = Math.max(state.clock, first);
        return kept;
    }

    /** Rinses and heads of stylists who rinse; true if a head is the only thing to decide. */
    private boolean heads(ProofState state, long[] list) {
        for (int i = 0; i < group.services.length; i++) {
            if (state.isRinsed(i)) {
                continue;
            }
            if (state.isStarted(i)) {
                if (times.isFed(state, i) && times.stylistIsFree(state, i)) {
                    list[count++] = move(times.rinseAt(state, i), RINSE, i, 0, 0);
                }
                continue;
            }
            int stylist = group.stylistBefore[i];
            int chair = group.chairBefore[i];
            boolean possible =
                    (stylist < 0 || state.isRinsed(stylist) || state.isStarted(stylist) && times.isFed(state, stylist))
                            && (chair < 0 || state.isRinsed(chair));
            if (possible && times.nothingToRinse(state, i)) {
                list[0] = move(0, HEAD, i, 0, 0);
                return true;
            }
            if (possible) {
                int start = group.services[i].startBase[0] + state.delay[group.firstUnit[i]];
                list[count++] = move(start, HEAD, i, 0, 0);
            }
        }
        return false;
    }

    private void rinses(ProofState state, int i, long[] list) {
        for (int a = 0; a < state.free.length; a++) {
            int from =
                    Math.max(Math.max(state.free[a], state.clock), Math.max(times.wish(state, i), state.basinFree[0]));
            int at = MinuteSet.next(group.duty.ofRinse(a), from);
            if (at >= 0) {
                list[count++] = move(at, RINSE, i, a, 0);
                done = Math.min(done, at + day.rinseMinutes());
            }
        }
    }

    /** The next bowl of a unit: for each start that is worth while, as much as it can feed. */
    private void mixes(ProofState state, int u, int a, long[] list) {
        ProofUnit unit = group.units[u];
        ServiceGrid service = unit.service;
        int j = state.node[u];
        long[] starts = group.duty.ofMix(unit.mix, a);
        int due = service.startBase[j] + state.delay[u] - unit.occupied;
        int at = MinuteSet.next(starts, Math.max(Math.max(state.free[a], state.clock), state.scaleFree));
        int reached = -1;
        for (int arc = service.firstArc[j]; arc < service.firstArc[j + 1] && at >= 0; arc++) {
            int fresh = Math.min(due, service.endBase[service.arcTo[arc]] + state.delay[u] - unit.life);
            if (at < fresh) {
                if (reached >= 0) {
                    list[count++] = move(at, MIX, u, a, reached);
                }
                at = MinuteSet.next(starts, fresh);
            }
            reached = at < 0 ? -1 : service.arcTo[arc];
        }
        if (reached >= 0) {
            list[count++] = move(at, MIX, u, a, reached);
            done = reached == unit.last ? Math.min(done, at + unit.occupied) : done;
        }
    }

    /** Makes a move of a list in a copy of the state. */
    void make(ProofState state, int m) {
        int start = (int) (moves[m] >> 32);
        int rest = (int) moves[m];
        int index = rest >> 16 & 255;
        int a = rest >> 8 & 255;
        switch (rest >> 24) {
            case MIX -> mix(state, index, a, start, rest & 255);
            case RINSE -> rinse(state, index, a, start);
            default -> {
                state.started |= 1L << index;
                state.clock = Math.max(state.clock, start);
            }
        }
    }

    private void mix(ProofState state, int u, int a, int start, int to) {
        ProofUnit unit = group.units[u];
        ServiceGrid service = unit.service;
        int from = state.node[u];
        state.delay[u] = Math.max(state.delay[u], start + unit.occupied - service.startBase[from]);
        state.node[u] = to;
        state.free[a] = start + unit.occupied;
        state.clock = start;
        state.scaleFree = oneScale ? start + group.grid.mixing[unit.mix] : 0;
        int i = group.serviceOf[u];
        if (service.latestWish() > service.lastWish) {
            for (int arc = service.firstArc[from]; arc < service.firstArc[from + 1]; arc++) {
                if (service.arcTo[arc] == to) {
                    state.wish[i] = Math.max(state.wish[i], service.arcWish[arc] + state.delay[u]);
                }
            }
        }
    }

    private void rinse(ProofState state, int i, int a, int start) {
        ServiceGrid service = group.services[i];
        int delay = state.delay[group.firstUnit[i + 1] - 1];
        state.lateness += Math.max(delay, start - service.latestWish());
        state.rinsed |= 1L << i;
        state.started &= ~(1L << i);
        state.takeBasin(start + day.rinseMinutes());
        if (day.stylistsRinse()) {
            state.clock = start;
            state.stylistFree[group.stylist[i]] = start + day.rinseMinutes();
        } else {
            state.free[a] = start + day.rinseMinutes();
            state.clock = start;
        }
        for (int after = i + 1; after < group.services.length; after++) {
            if (group.chairBefore[after] == i) {
                int u = group.firstUnit[after];
                state.delay[u] = Math.max(state.delay[u], start - group.services[after].startBase[0]);
            }
        }
    }
}
