package stirtide.planner.planning.stagger;

/** What a path search pays: weights of the levels, the longest wait of one bowl, and a price for every start. */
final class CostModel {
    /** More than any sum of costs, small enough to be added to itself. */
    static final long NEVER = Long.MAX_VALUE / 4;

    final MinuteGrid grid;
    LevelWeights weights;
    int maxWait;
    /** Price of a mix of m minutes from s at [m][s], {@link #NEVER} where none may start. */
    final long[][] start;

    CostModel(MinuteGrid grid, LevelWeights weights, int maxWait) {
        this.grid = grid;
        this.weights = weights;
        this.maxWait = maxWait;
        this.start = new long[grid.longestMix + 1][];
        for (int m = 1; m <= grid.longestMix; m++) {
            start[m] = grid.mayStart[m] == null ? null : new long[grid.horizon];
        }
    }

    /** Sums minute prices into start prices. */
    void load(long[] minutePrice) {
        loaded = true;
        for (int m = 1; m <= grid.longestMix; m++) {
            if (start[m] != null) {
                loadLength(m, minutePrice);
            }
        }
    }

    boolean loaded;

    private void loadLength(int m, long[] minutePrice) {
        long[] row = start[m];
        boolean[] may = grid.mayStart[m];
        long sum = 0;
        for (int t = 0; t < grid.horizon; t++) {
            sum += minutePrice[t];
            int s = t - m + 1;
            if (s >= 0) {
                row[s] = may[s] ? sum : NEVER;
                sum -= minutePrice[s];
            }
        }
        for (int s = Math.max(0, grid.horizon - m + 1); s < grid.horizon; s++) {
            row[s] = NEVER;
        }
    }
}
