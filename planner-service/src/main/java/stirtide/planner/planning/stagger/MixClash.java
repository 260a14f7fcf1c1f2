package stirtide.planner.planning.stagger;

/** Two bowls of one run that cannot both be mixed when its path says, because too few people are free. */
final class MixClash {
    private MixClash() {}

    /**
     * The first two bowls, as first * bowls + second, that overfill a minute together, or -1.
     *
     * @param use mixes of the other runs in each minute
     * @param capacity mixes that each minute can hold
     * @param crowded whether the mixes of other runs may be pushed aside
     */
    static int first(RunGrid run, RunPath path, int[] use, int[] capacity, boolean crowded) {
        int bowls = path.start.length;
        for (int k = 0; k < bowls; k++) {
            for (int j = k + 1; j < bowls; j++) {
                int a = path.start[k];
                int b = path.start[j];
                boolean meet = a != RunPath.STYLIST && b != RunPath.STYLIST && Math.abs(a - b) < run.mix;
                for (int t = Math.max(a, b); meet && t < Math.min(a, b) + run.mix; t++) {
                    if (mixes(run, path, t) > (crowded ? capacity[t] : capacity[t] - use[t])) {
                        return k * bowls + j;
                    }
                }
            }
        }
        return -1;
    }

    private static int mixes(RunGrid run, RunPath path, int t) {
        int mixes = 0;
        for (int s : path.start) {
            mixes += s != RunPath.STYLIST && s <= t && t < s + run.mix ? 1 : 0;
        }
        return mixes;
    }
}
