package stirtide.planner.planning.floor;

import java.util.Arrays;

/**
 * States still to be looked at, by clock, and states seen: one is dropped when another, at which the same services are rinsed and begun, is nowhere worse. Room is limited;
 * what finds none is kept out, and the store says so.
 */
final class ProofStore {
    private static final int SHORTS = 16_000_000;
    private static final int BUCKETS = 1 << 14;
    private static final int DIVES = 300;
    private static final int MOST_COMPARED = 1000;

    private final ProofGroup group;
    private final int keys;
    private final int width;
    private final short[] pool;
    private final short[] one;
    /** Entries with the same key, the last first. */
    private final int[] heads = new int[BUCKETS];

    private final int[] next;
    /** Entries of the same clock. */
    private final int[] byClock;

    private final int[] nextOfClock;
    private int count;
    private int clock;
    private int latest;
    private int polled;
    private boolean full;

    ProofStore(ProofGroup group) {
        this.group = group;
        ProofState one = new ProofState(group);
        this.keys = group.services.length;
        this.width = keys
                + one.node.length
                + one.delay.length
                + one.wish.length
                + one.free.length
                + one.stylistFree.length
                + one.basinFree.length
                + 3;
        this.one = new short[width];
        this.pool = new short[SHORTS / width * width];
        this.next = new int[pool.length / width];
        this.byClock = new int[group.grid.words * 64];
        this.nextOfClock = new int[next.length];
    }

    void clear() {
        Arrays.fill(heads, -1);
        Arrays.fill(byClock, -1);
        count = 0;
        clock = 0;
        latest = 0;
        polled = 0;
        full = false;
    }

    /** Notes a state that must be looked at, unless it is dominated. */
    void offer(ProofState state) {
        write(state);
        int bucket = bucket();
        int compared = 0;
        for (int at = heads[bucket]; at >= 0 && compared < MOST_COMPARED; at = next[at]) {
            if (dominated(at * width)) {
                return;
            }
            compared++;
        }
        if (count == next.length) {
            full = true;
            return;
        }
        System.arraycopy(one, 0, pool, count * width, width);
        next[count] = heads[bucket];
        heads[bucket] = count;
        nextOfClock[count] = byClock[state.clock];
        byClock[state.clock] = count++;
        latest = Math.max(latest, state.clock);
    }

    /** Reads a state to be looked at, the first ones as deep as possible, then in the order of the clock; false if there is none. */
    boolean poll(ProofState into) {
        if (polled++ < DIVES) {
            while (latest >= 0 && byClock[latest] < 0) {
                latest--;
            }
            return latest >= 0 && take(latest, into);
        }
        while (clock < byClock.length && byClock[clock] < 0) {
            clock++;
        }
        if (clock == byClock.length) {
            return false;
        }
        return take(clock, into);
    }

    private boolean take(int at, ProofState into) {
        int entry = byClock[at];
        byClock[at] = nextOfClock[entry];
        read(entry * width, into);
        return true;
    }

    boolean isFull() {
        return full;
    }

    private int bucket() {
        int hash = 1;
        for (int i = 0; i < keys; i++) {
            hash = hash * 31 + one[i];
        }
        return (hash ^ hash >>> 15) * 0x9E3779B1 >>> 18;
    }

    private boolean dominated(int from) {
        for (int i = 0; i < keys; i++) {
            if (pool[from + i] != one[i]) {
                return false;
            }
        }
        for (int i = keys; i < width; i++) {
            if (pool[from + i] > one[i]) {
                return false;
            }
        }
        return true;
    }

    private void write(ProofState state) {
        int at = 0;
        for (int i = 0; i < keys; i++) {
            one[at++] = (short) (state.isRinsed(i) ? 2 : state.isStarted(i) ? 1 : 0);
        }
        one[at++] = (short) state.lateness;
        at = append(state.free, at);
        for (int i = 0; i < keys; i++) {
            boolean done = state.isRinsed(i);
            one[at++] = (short) (done ? 0 : state.wish[i]);
            for (int u = group.firstUnit[i]; u < group.firstUnit[i + 1]; u++) {
                one[at++] = (short) (done ? 0 : state.delay[u]);
                one[at++] = (short) -state.node[u];
            }
        }
        at = append(state.stylistFree, at);
        at = append(state.basinFree, at);
        one[at++] = (short) state.scaleFree;
        one[at] = (short) state.clock;
    }

    private int append(int[] values, int at) {
        for (int value : values) {
            one[at++] = (short) value;
        }
        return at;
    }

    private void read(int from, ProofState state) {
        int at = from;
        state.rinsed = 0;
        state.started = 0;
        for (int i = 0; i < keys; i++) {
            int flag = pool[at++];
            state.rinsed |= flag == 2 ? 1L << i : 0;
            state.started |= flag == 1 ? 1L << i : 0;
        }
        state.lateness = pool[at++];
        at = take(state.free, at);
        for (int i = 0; i < keys; i++) {
            state.wish[i] = pool[at++];
            for (int u = group.firstUnit[i]; u < group.firstUnit[i + 1]; u++) {
                state.delay[u] = pool[at++];
                state.node[u] = -pool[at++];
            }
        }
        at = take(state.stylistFree, at);
        at = take(state.basinFree, at);
        state.scaleFree = pool[at++];
        state.clock = pool[at];
    }

    private int take(int[] values, int at) {
        for (int i = 0; i < values.length; i++) {
            values[i] = pool[at + i];
        }
        return at + values.length;
    }
}
