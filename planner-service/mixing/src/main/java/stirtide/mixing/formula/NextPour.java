package stirtide.mixing.formula;

import stirtide.events.formula.BowlFormula;

/** What to do with a bowl after what was really poured into it. */
public sealed interface NextPour {
    /**
     * Pour this next.
     *
     * @param partId what to pour
     * @param milligrams how much to add
     * @param displayMilligrams what the scale shows when it is enough
     * @param correction true when the part was poured before and is topped up
     * @param continues true when the last pour goes on: do not tare in between
     * @param expected the bowl when all that is still to be poured is poured, with the true range of its ratio
     * @param surplusMilligrams grams the bowl will have beyond need and residue
     */
    record Add(
            String partId,
            int milligrams,
            int displayMilligrams,
            boolean correction,
            boolean continues,
            BowlFormula expected,
            int surplusMilligrams)
            implements NextPour {}

    /**
     * Nothing more is to be poured: the bowl is enough and inside all limits in the worst case.
     *
     * @param real the bowl as it is
     * @param surplusMilligrams grams beyond need and residue
     * @param overfullMilligrams grams beyond what the bowl is meant to hold, 0 as a rule
     */
    record Ready(BowlFormula real, int surplusMilligrams, int overfullMilligrams) implements NextPour {}

    /**
     * No correction brings the bowl inside all limits and its fill: bin it and start again.
     *
     * @param lostMilligrams grams thrown away
     * @param reason why, in one sentence
     */
    record BinAndRestart(int lostMilligrams, String reason) implements NextPour {}

    /**
     * The pours cannot be what the scale showed.
     *
     * @param reason what is wrong, in one sentence
     * @param whatHelps what would be accepted, in one sentence
     */
    record Unreadable(String reason, String whatHelps) implements NextPour {}
}
