package stirtide.planner.plan;

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
record Score(int overMinutes, int stylistMixes, int waitMinutes, long overMixMilligrams, int ageMinutes, int moves)
        implements Comparable<Score> {
    static final Score ZERO = new Score(0, 0, 0, 0, 0, 0);

    private static final Comparator<Score> ORDER = Comparator.comparingInt(Score::overMinutes)
            .thenComparingInt(Score::stylistMixes)
            .thenComparingInt(Score::waitMinutes)
            .thenComparingLong(Score::overMixMilligrams)
            .thenComparingInt(Score::ageMinutes)
            .thenComparingInt(Score::moves);

    static Score moves(int moves) {
        return new Score(0, 0, 0, 0, 0, moves);
    }

    Score plus(Score other) {
        return new Score(
                overMinutes + other.overMinutes,
                stylistMixes + other.stylistMixes,
                waitMinutes + other.waitMinutes,
                overMixMilligrams + other.overMixMilligrams,
                ageMinutes + other.ageMinutes,
                moves + other.moves);
    }

    Score minus(Score other) {
        return new Score(
                overMinutes - other.overMinutes,
                stylistMixes - other.stylistMixes,
                waitMinutes - other.waitMinutes,
                overMixMilligrams - other.overMixMilligrams,
                ageMinutes - other.ageMinutes,
                moves - other.moves);
    }

    @Override
    public int compareTo(Score other) {
        return ORDER.compare(this, other);
    }
}
