package stirtide.planner.planning.floor;

import java.util.function.LongPredicate;

/**
 * Lower bound on lateness by a search over all orders of decisions with dominance. What is decided, in the order of the clock: the next mix of a unit, the next rinse, and
 * where stylists rinse, the next head. Each is begun as early as it can be. That loses no plan: beginning earlier makes nobody later, and a wait inside a bowl can be moved to
 * the end of the bowl. Left out, so that the answer is a lower bound: the latest rinse of a zone, the number of bowls, and the life of a bowl that is mixed before it is known
 * when its unit begins.
 *
 * <p>The last service is looked at first, then the last two and so on, each helped by what the one before showed (Russian doll search, Verfaillie and others 1996). Where
 * that takes too long, the services after the next few are left out and counted with their own bound, which is valid because disjoint groups add up.
 */
final class LatenessProof {
    /** States looked at between two questions whether to go on. */
    private static final int PART = 100;

    private final ProofGroup group;
    private final int services;
    private final ProofMoves moves;
    private final ProofLowerBound lower;
    private final ProofStore store;
    private final ProofState state;
    private final ProofState child;
    /** Whether the lower bound from each service on cannot be raised. */
    private final boolean[] exact;

    private long steps;
    private long stepsLeft;
    private boolean stopped;

    LatenessProof(ProofGroup group) {
        this.group = group;
        this.services = group.services.length;
        this.lower = new ProofLowerBound(group);
        this.moves = new ProofMoves(group);
        this.store = new ProofStore(group);
        this.state = new ProofState(group);
        this.child = new ProofState(group);
        this.exact = new boolean[services];
    }

    /** States looked at so far. */
    long steps() {
        return steps;
    }

    /** No more can be shown. */
    boolean isExact() {
        return exact[0];
    }

    /**
     * Raises the lower bound on the lateness of all services and returns it.
     *
     * @param enough nothing above is of interest
     * @param most states to be looked at for each group of services
     * @param more whether to go on after so many states
     */
    int raise(int enough, long most, LongPredicate more) {
        stopped = false;
        int last = services;
        for (int first = services - 1; first >= 0 && lower.tail[0] < enough && !stopped; first--) {
            lower.tail[first] = Math.max(lower.tail[first], lower.tail[first + 1]);
            if (exact[first]) {
                continue;
            }
            boolean cut = raise(first, last, enough, most, more);
            exact[first] = !cut && last == services && lower.tail[first] < enough;
            while (cut && last > first + 1 && !stopped) {
                last = first + (last - first) / 2;
                cut = raise(first, last, enough, most, more);
            }
        }
        for (int first = services - 1; first >= 0; first--) {
            lower.tail[first] = Math.max(lower.tail[first], lower.tail[first + 1]);
        }
        return lower.tail[0];
    }

    /** Raises the bound of the services from one on by looking at those before another; true if it was cut short. */
    private boolean raise(int first, int last, int enough, long most, LongPredicate more) {
        stepsLeft = most;
        while (lower.tail[first] < enough) {
            begin(first, last);
            if (possible(more)) {
                return stepsLeft < 0 || stopped || store.isFull();
            }
            lower.tail[first]++;
        }
        return false;
    }

    private void begin(int first, int last) {
        lower.begin(last, lower.tail[first]);
        store.clear();
        child.copyFrom(new ProofState(group));
        child.rinsed = all() & ((1L << first) - 1 | (last < Long.SIZE ? -1L << last : 0));
        child.lateness = lower.tail[last];
        for (int u = 0; u < group.units.length; u++) {
            if (child.isRinsed(group.serviceOf[u])) {
                child.node[u] = group.units[u].last;
            }
        }
        offerChild();
    }

    private long all() {
        return -1L >>> Long.SIZE - services;
    }

    private void offerChild() {
        if (lower.settle(child) && moves.raise(child)) {
            store.offer(child);
        }
    }

    /** Whether the budget can be kept, or that could not be found out. */
    private boolean possible(LongPredicate more) {
        while (store.poll(state)) {
            if (--stepsLeft < 0 || store.isFull()) {
                return true;
            }
            if (++steps % PART == 0 && !more.test(steps)) {
                stopped = true;
                return true;
            }
            int count = moves.list(state);
            for (int m = 0; m < count; m++) {
                child.copyFrom(state);
                moves.make(child, m);
                if (child.rinsed == all() && lower.settle(child)) {
                    return true;
                }
                offerChild();
            }
        }
        return false;
    }
}
