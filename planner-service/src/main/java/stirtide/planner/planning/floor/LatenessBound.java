package stirtide.planner.planning.floor;

import java.util.function.LongPredicate;
import org.jspecify.annotations.Nullable;

/** The best lower bound on lateness shown so far: from chains of stylists and chairs at once, from a search over orders of work as far as it pays. */
final class LatenessBound {
    /** States for each group of services at first, for one service squared. */
    private static final long FIRST_LIMIT = 200_000;

    private static final int MOST_SERVICES = 20;

    private final FloorGrid grid;
    private final ChainBound chains;
    private @Nullable LatenessProof proof;
    private int bound;
    private long limit;

    LatenessBound(FloorGrid grid) {
        this.grid = grid;
        this.chains = new ChainBound(grid);
        this.bound = chains.lateness();
        this.limit = FIRST_LIMIT / ((long) grid.services.length * grid.services.length);
    }

    int lateness() {
        return bound;
    }

    /**
     * Tries to raise the bound, each time with more effort; does nothing where that does not pay.
     *
     * @param enough nothing above is of interest
     * @param more whether to go on after so many more steps
     * @return steps taken
     */
    long raise(int enough, LongPredicate more) {
        if (bound >= enough || !pays(enough)) {
            return 0;
        }
        LatenessProof search = proof;
        if (search == null) {
            search = new LatenessProof(new ProofGroup(grid, chains, grid.byTime));
            proof = search;
        }
        long before = search.steps();
        bound = Math.max(bound, search.raise(enough, limit, steps -> more.test(steps - before)));
        limit *= 4;
        return search.steps() - before;
    }

    private boolean pays(int enough) {
        int n = grid.services.length;
        if (n > MOST_SERVICES) return false;
        boolean near = 2 * bound >= enough || n <= MOST_SERVICES / 2;
        LatenessProof search = proof;
        return search == null ? n <= 12 || near : near && !search.isExact();
    }
}
