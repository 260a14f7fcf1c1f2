package stirtide.planner.planning.floor;

/**
 * Prices of an insertion.
 *
 * @param lateness of a minute late
 * @param handling of a decigram
 * @param standing of a minute standing
 */
record FitWeights(long lateness, long handling, long standing) {
    long of(int late, int handled, int stood) {
        return late * lateness + handled * handling + stood * standing;
    }
}
