package stirtide.planner.planning.search;

import java.util.Comparator;

/**
 * What a plan costs, most important first.
 *
 * @param overMinutes minutes of application after the longest processing time is over, or without a bowl; never by choice
 * @param stylistMixes bowls the stylist has to mix, the last resort
 * @param waitMinutes minutes clients wait
 * @param overMixMilligrams surplus and residue
 * @param ageMinutes minutes from start of mixing to first use, all bowls together
 * @param moves bowls that differ from the plan on show in assistant or start
 */
record SearchScore(
        int overMinutes, int stylistMixes, int waitMinutes, long overMixMilligrams, int ageMinutes, int moves)
        implements Comparable<SearchScore> {
    static final SearchScore ZERO = new SearchScore(0, 0, 0, 0, 0, 0);

    private static final Comparator<SearchScore> ORDER = Comparator.comparingInt(SearchScore::overMinutes)
            .thenComparingInt(SearchScore::stylistMixes)
            .thenComparingInt(SearchScore::waitMinutes)
            .thenComparingLong(SearchScore::overMixMilligrams)
            .thenComparingInt(SearchScore::ageMinutes)
            .thenComparingInt(SearchScore::moves);

    static SearchScore moves(int moves) {
        return new SearchScore(0, 0, 0, 0, 0, moves);
    }

    SearchScore plus(SearchScore other) {
        return new SearchScore(
                overMinutes + other.overMinutes,
                stylistMixes + other.stylistMixes,
                waitMinutes + other.waitMinutes,
                overMixMilligrams + other.overMixMilligrams,
                ageMinutes + other.ageMinutes,
                moves + other.moves);
    }

    @Override
    public int compareTo(SearchScore other) {
        return ORDER.compare(this, other);
    }
}
