package stirtide.planner.planning.stagger;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Plans runs together, minute by minute: a state is how far each run is fed and until when mixers are at work. Of equal states
 * the cheapest is kept; a state is dropped when its cost and the least rest of all its runs, less the price of all mixers yet to
 * come, reach the limit. While no more states are alive than the width allows, the outcome is the best there is (dynamic
 * programming with price bounds); beyond that only the most promising are followed (beam search).
 */
final class JointSearch {
    /** Most bowls that are remembered; more would take too much memory. */
    private static final int MOST_NODES = 2_000_000;

    /** Most states of one minute, starts included, in widths. */
    private static final int CROWD = 6;

    private final CoverTable[] tables;
    private final LevelWeights weights;
    private final MixerAvailability mixers;
    private final long[] minutePrice;
    /** Price of all mixers from each minute on. */
    private final long[] allMixers;

    private final int width;
    /** Steps after which, or on whose first state too many, the search gives up; 0 for one that cuts and goes on. */
    private final long patience;

    private final JointNodes nodes = new JointNodes();
    private final JointLayer first;
    private final JointLayer second;
    private final int[] scratch;
    private final int[] active;
    private int activeCount;
    /** Least cost of the runs that are not active yet. */
    private long later;

    private boolean cut;
    private RunPath @Nullable [] best;
    private long bestCost;
    private long steps;

    /**
     * @param weights costs of the levels, as in the tables
     * @param mixers who may mix
     * @param minutePrice what each minute of mixing costs in the prices of the tables
     * @param limit paths are wanted that cost less than this
     * @param width most states that are followed from one minute to the next
     * @param patience 0 to follow the most promising states where there are more; else it gives up there, and after so many
     *     steps
     */
    JointSearch(
            CoverTable[] tables,
            LevelWeights weights,
            MixerAvailability mixers,
            long[] minutePrice,
            long limit,
            int width,
            long patience) {
        this.tables = tables;
        this.weights = weights;
        this.mixers = mixers;
        this.minutePrice = minutePrice;
        this.allMixers = new long[mixers.minutes() + 1];
        for (int t = mixers.minutes() - 1; t >= 0; t--) {
            allMixers[t] = allMixers[t + 1] + minutePrice[t] * mixers.capacity(t);
        }
        this.width = width;
        this.patience = patience;
        this.bestCost = limit;
        this.scratch = new int[tables.length + mixers.count];
        this.first = new JointLayer(scratch.length);
        this.second = new JointLayer(scratch.length);
        this.active = new int[tables.length];
    }

    /** Steps of work done. */
    long steps() {
        return steps;
    }

    /** Whether some states were left aside for lack of room, so that nothing is proved. */
    boolean cut() {
        return cut;
    }

    /** Paths in the order of the tables, or null if none below the limit was found. */
    RunPath @Nullable [] solve() {
        int from = Arrays.stream(tables).mapToInt(table -> table.first).min().orElse(0);
        int to = Arrays.stream(tables).mapToInt(table -> table.last).max().orElse(-1);
        JointLayer now = first;
        JointLayer next = second;
        activate(from);
        now.add(scratch, 0, estimate(0, from), 0, JointNodes.NONE);
        for (int t = from; t <= to && now.size() > 0; t++) {
            if (now.size() > width || nodes.size() > MOST_NODES) {
                cut = true;
                if (patience > 0) {
                    return best;
                }
                now.keepBest(nodes.size() > MOST_NODES ? 1 : width);
            }
            for (int i = 0; i < now.size(); i++) {
                if (now.size() > CROWD * width) {
                    cut = true;
                    break;
                }
                startAll(now, i, t);
            }
            if (patience > 0 && steps > patience) {
                cut = true;
                return best;
            }
            activate(t + 1);
            next.clear();
            for (int i = 0; i < now.size(); i++) {
                pass(now, i, t + 1, next);
            }
            JointLayer done = now;
            now = next;
            next = done;
        }
        return best;
    }

    /** Sets which runs a state at minute t still has to care for. */
    private void activate(int t) {
        activeCount = 0;
        later = -allMixers[t];
        for (int r = 0; r < tables.length; r++) {
            if (t < tables[r].first) {
                later += tables[r].rest(t, 0);
            } else if (t <= tables[r].last + 1) {
                active[activeCount++] = r;
            }
        }
    }

    private void startAll(JointLayer layer, int state, int t) {
        System.arraycopy(layer.data, state * scratch.length, scratch, 0, scratch.length);
        long cost = layer.cost[state];
        long estimate = layer.estimate[state];
        int node = layer.node[state];
        if (estimate >= bestCost) {
            return;
        }
        for (int i = layer.lastRun[state]; i < activeCount; i++) {
            CoverTable table = tables[active[i]];
            int covered = scratch[active[i]];
            boolean may = covered < table.run.minutes && table.price(t) < CostModel.NEVER;
            for (int mixer = may ? next(-1, t, table) : -1; mixer >= 0; mixer = next(mixer, t, table)) {
                for (int u = table.firstUse(t, covered); u >= 0; u = table.nextUse(t, covered, u)) {
                    start(layer, i, mixer, t, u, cost, estimate, node);
                }
            }
        }
    }

    private int next(int after, int t, CoverTable table) {
        return mixers.next(scratch, tables.length, after, t, table.run.mix);
    }

    /** Adds the state in which a mixer starts a bowl of one more run at t, used from u. */
    private void start(JointLayer layer, int i, int mixer, int t, int u, long cost, long estimate, int node) {
        int r = active[i];
        CoverTable table = tables[r];
        int covered = scratch[r];
        int reach = table.reach(t, u);
        long more = table.cost(t, u);
        steps += 8;
        long then = table.rest(t, reach);
        if (then >= CostModel.NEVER || estimate + more + then - table.rest(t, covered) >= bestCost) {
            return;
        }
        scratch[r] = reach;
        int made = nodes.add(node, r, u, t);
        if (complete()) {
            offer(made);
        } else {
            int place = tables.length + mixer;
            scratch[place] = t + table.run.mix;
            layer.add(scratch, cost + more, estimate + more + then - table.rest(t, covered), i, made);
            scratch[place] = 0;
        }
        scratch[r] = covered;
    }

    /** Carries a state over to minute t. */
    private void pass(JointLayer layer, int state, int t, JointLayer next) {
        System.arraycopy(layer.data, state * scratch.length, scratch, 0, scratch.length);
        steps += 16 + 4 * activeCount;
        long cost = layer.cost[state];
        for (int h = tables.length; h < scratch.length; h++) {
            cost -= scratch[h] == 0 ? 0 : minutePrice[t - 1];
            scratch[h] = scratch[h] <= t ? 0 : scratch[h];
        }
        long estimate = estimate(cost, t);
        if (estimate < bestCost) {
            if (!mixers.areNamed()) {
                Arrays.sort(scratch, tables.length, scratch.length);
            }
            next.merge(scratch, cost, estimate, layer.node[state]);
        }
    }

    private boolean complete() {
        for (int r = tables.length - 1; r >= 0; r--) {
            if (scratch[r] < tables[r].run.minutes) {
                return false;
            }
        }
        return true;
    }

    /** Least cost of all plans that go on from the state at mixer. */
    private long estimate(long cost, int t) {
        long sum = cost + later;
        for (int i = 0; i < activeCount; i++) {
            long rest = tables[active[i]].rest(t, scratch[active[i]]);
            if (rest >= CostModel.NEVER) {
                return CostModel.NEVER;
            }
            sum += rest;
        }
        return sum;
    }

    private void offer(int node) {
        RunPath[] paths = nodes.paths(node, tables);
        long cost = paths == null ? CostModel.NEVER : weights.of(RunPath.sum(paths));
        if (cost < bestCost) {
            bestCost = cost;
            best = paths;
        }
    }
}
