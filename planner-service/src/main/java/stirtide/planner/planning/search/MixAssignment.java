package stirtide.planner.planning.search;

import stirtide.mixing.formula.FormulaAnswer.Weigh;

/**
 * One bowl in the making. Minutes of the day, except {@code from} and {@code to}, which count minutes of application.
 *
 * @param feed feed it belongs to
 * @param from first minute of application it feeds
 * @param to minute of application after the last it feeds
 * @param mix start of mixing
 * @param use first use
 * @param end last use
 * @param person place of the assistant in the question, {@link #STYLIST} for the stylist
 * @param scale place of the scale in the question
 * @param size place of the bowl size in the question
 * @param weigh what to weigh
 */
record MixAssignment(
        FeedSegment feed, int from, int to, int mix, int use, int end, int person, int scale, int size, Weigh weigh) {
    static final int STYLIST = -1;

    int mixEnd() {
        return mix + feed.recipe().mixMinutes();
    }
}
