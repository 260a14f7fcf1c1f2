package stirtide.planner.planning.stagger;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** The bowls that led to the states of a {@link JointSearch}, each with the bowl before it. */
final class JointNodes {
    static final int NONE = -1;

    private int[] before = new int[256];
    private int[] run = new int[256];
    private int[] use = new int[256];
    private int[] start = new int[256];
    private int size;

    int add(int before, int run, int use, int start) {
        if (size == this.run.length) {
            this.before = Arrays.copyOf(this.before, size * 2);
            this.run = Arrays.copyOf(this.run, size * 2);
            this.use = Arrays.copyOf(this.use, size * 2);
            this.start = Arrays.copyOf(this.start, size * 2);
        }
        this.before[size] = before;
        this.run[size] = run;
        this.use[size] = use;
        this.start[size] = start;
        return size++;
    }

    int size() {
        return size;
    }

    /** The paths that end at a node, or null if some bowl would be of no use. */
    RunPath @Nullable [] paths(int node, CoverTable[] tables) {
        RunPath[] made = new RunPath[tables.length];
        for (int r = 0; r < tables.length; r++) {
            RunPath path = path(node, r, tables[r].run);
            if (path == null) {
                return null;
            }
            made[r] = path;
        }
        return made;
    }

    private @Nullable RunPath path(int node, int r, RunGrid grid) {
        int bowls = 0;
        for (int n = node; n != NONE; n = before[n]) {
            bowls += run[n] == r ? 1 : 0;
        }
        int[] from = new int[bowls];
        int[] to = new int[bowls];
        int[] starts = new int[bowls];
        int end = grid.minutes;
        int k = bowls;
        for (int n = node; n != NONE; n = before[n]) {
            if (run[n] == r) {
                from[--k] = use[n];
                to[k] = end;
                starts[k] = start[n];
                if (from[k] >= end) {
                    return null;
                }
                end = from[k];
            }
        }
        return bowls == 0 || end != 0 ? null : new RunPath(grid, from, to, starts);
    }
}
