package stirtide.planner.planning.whatif;

import java.util.function.BooleanSupplier;
import stirtide.planner.planning.stagger.SearchRounds;

/**
 * How much planning one question is worth. A plan of a large day takes longer, so fewer are drawn of it: with the figures
 * here a question takes some ten seconds of a processor at most, whatever the size of the day. Counted in services planned,
 * never in time, so that the same day gives the same answer.
 *
 * @param services services of the day
 * @param breakOff asked between two plans; once it says so, no answer is wanted any more
 */
record SearchEffort(int services, BooleanSupplier breakOff) {
    /** Services planned at once, all plans together. */
    private static final int AT_ONCE = 20_000;

    /** Services planned with rounds of search, for the moves that are shown. */
    private static final int SEARCHED = 1_200;

    private static final int LEAST_SHOWN = 3;
    private static final int MOST_SHOWN = 10;
    private static final int MOST_PAIRED = 6;

    /** Plans that may be drawn at once. */
    int plans() {
        return AT_ONCE / Math.max(1, services);
    }

    /** Moves that are planned again with as much work as the plan at present. */
    int shown() {
        return Math.max(LEAST_SHOWN, Math.min(MOST_SHOWN, SEARCHED / Math.max(1, services)));
    }

    /** Of them, those that are tried together. */
    int paired() {
        return Math.min(MOST_PAIRED, shown());
    }

    /** To be called before every plan. */
    void goOn() {
        SearchRounds.stillWanted(breakOff);
    }
}
