package stirtide.planner.planning.stagger;

import java.util.Arrays;

/** States of one minute of a {@link JointSearch}; equal ones may be merged. */
final class JointLayer {
    private final int length;
    int[] data;
    long[] cost = new long[64];
    int[] node = new int[64];
    int[] lastRun = new int[64];

    long[] estimate = new long[64];
    private int[] table = new int[256];
    private int size;

    JointLayer(int length) {
        this.length = length;
        this.data = new int[64 * length];
    }

    int size() {
        return size;
    }

    void clear() {
        size = 0;
        Arrays.fill(table, 0);
    }

    void add(int[] state, long cost, long estimate, int lastRun, int node) {
        if (size == this.cost.length) {
            grow();
        }
        System.arraycopy(state, 0, data, size * length, length);
        set(size++, cost, estimate, lastRun, node);
    }

    private void set(int i, long cost, long estimate, int lastRun, int node) {
        this.cost[i] = cost;
        this.estimate[i] = estimate;
        this.lastRun[i] = lastRun;
        this.node[i] = node;
    }

    /** Adds the state unless an equal one is as cheap. */
    void merge(int[] state, long cost, long estimate, int node) {
        if (2 * size >= table.length) {
            rehash();
        }
        int slot = slot(state, 0);
        int known = table[slot] - 1;
        if (known < 0) {
            table[slot] = size + 1;
            add(state, cost, estimate, 0, node);
        } else if (cost < this.cost[known]) {
            set(known, cost, estimate, 0, node);
        }
    }

    private int slot(int[] state, int offset) {
        int hash = 1;
        for (int k = 0; k < length; k++) {
            hash = hash * 0x01000193 + state[offset + k];
        }
        int slot = (hash ^ hash >>> 15) & table.length - 1;
        while (table[slot] != 0 && !same(table[slot] - 1, state, offset)) {
            slot = slot + 1 & table.length - 1;
        }
        return slot;
    }

    private boolean same(int i, int[] state, int offset) {
        return Arrays.equals(data, i * length, (i + 1) * length, state, offset, offset + length);
    }

    private void rehash() {
        table = new int[table.length * 2];
        for (int i = 0; i < size; i++) {
            table[slot(data, i * length)] = i + 1;
        }
    }

    private void grow() {
        int more = size * 2;
        data = Arrays.copyOf(data, more * length);
        cost = Arrays.copyOf(cost, more);
        estimate = Arrays.copyOf(estimate, more);
        lastRun = Arrays.copyOf(lastRun, more);
        node = Arrays.copyOf(node, more);
    }

    /** Keeps the states with the lowest estimates, in the order in which they came. Nothing may be merged afterwards. */
    void keepBest(int width) {
        long[] sorted = Arrays.copyOf(estimate, size);
        Arrays.sort(sorted);
        long most = sorted[width - 1];
        int ties = 0;
        for (int i = 0; i < width; i++) {
            ties += sorted[i] == most ? 1 : 0;
        }
        int kept = 0;
        for (int i = 0; i < size; i++) {
            if (estimate[i] < most || estimate[i] == most && ties-- > 0) {
                System.arraycopy(data, i * length, data, kept * length, length);
                set(kept++, cost[i], estimate[i], lastRun[i], node[i]);
            }
        }
        size = kept;
    }
}
