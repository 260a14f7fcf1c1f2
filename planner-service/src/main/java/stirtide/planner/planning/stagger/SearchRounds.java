package stirtide.planner.planning.stagger;

import java.util.function.BooleanSupplier;

/**
 * Rounds of search granted to a caller, and whether the caller still wants the answer. A search that is broken off gives no
 * answer at all, so that the same question and rounds never give two answers.
 *
 * @param granted rounds, 0 or more
 * @param breakOff asked before every round; once it says so, no answer is wanted any more
 */
public record SearchRounds(int granted, BooleanSupplier breakOff) {
    /** The answer is no longer wanted. */
    public static final class BrokenOff extends RuntimeException {
        private static final long serialVersionUID = 1L;

        private BrokenOff() {
            super("broken off", null, false, false);
        }
    }

    /** Rounds whose answer is always wanted. */
    public static SearchRounds of(int granted) {
        return new SearchRounds(granted, () -> false);
    }

    /** As many rounds for a part of the same answer. */
    public SearchRounds part(int rounds) {
        return new SearchRounds(rounds, breakOff);
    }

    /**
     * Whether another round may be done.
     *
     * @param done rounds done so far
     * @throws BrokenOff when the answer is not wanted any more
     */
    public boolean another(long done) {
        stillWanted(breakOff);
        return done < granted;
    }

    /**
     * To be called before every piece of work worth breaking off.
     *
     * @throws BrokenOff when the answer is not wanted any more
     */
    public static void stillWanted(BooleanSupplier breakOff) {
        if (breakOff.getAsBoolean()) throw new BrokenOff();
    }
}
