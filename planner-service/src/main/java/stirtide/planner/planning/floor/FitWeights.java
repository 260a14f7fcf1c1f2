package stirtide.planner.planning.floor;

/**
 * Prices of a plan or a path.
 *
 * @param lateness of a minute late
 * @param handling of a decigram
 * @param standing of a minute standing
 * @param mixing of a minute for which a mix takes an assistant, so that others may have it
 */
record FitWeights(long lateness, long handling, long standing, long mixing) {
    /** Prices that keep the levels apart for one service. */
    static final FitWeights STRICT = new FitWeights(1 << 20, 16, 1, 0);

    /** Prices under which a search may trade one level for another on its way. */
    static final FitWeights TRADED = new FitWeights(4000, 10, 1, 0);

    /** The same prices with one for the minutes of assistants. */
    FitWeights sparing(long price) {
        return new FitWeights(lateness, handling, standing, price);
    }

    long of(ServicePath path) {
        return path.lateness * lateness + path.handling * handling + path.standing * standing;
    }
}
