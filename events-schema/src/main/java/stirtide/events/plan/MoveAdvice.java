package stirtide.events.plan;

import java.time.Instant;
import java.util.List;

/**
 * What moving services within their own tolerance would do, best first. Nothing is moved by asking.
 *
 * @param basedOnRevision newest event the answer knows
 * @param present the plan without a move
 * @param singles best move of each service that may move
 * @param pairs best moves of two services together that are better than either alone
 * @param untried services that may move and were not tried, because the day has very many
 */
public record MoveAdvice(
        long basedOnRevision, PlanFigures present, List<MoveEffect> singles, List<MoveEffect> pairs, int untried) {
    public MoveAdvice {
        singles = List.copyOf(singles);
        pairs = List.copyOf(pairs);
    }

    /**
     * One or two moves and the plan that would follow.
     *
     * @param moves what is moved
     * @param then the plan with the moves
     * @param sentence the difference in words
     */
    public record MoveEffect(List<ServiceMove> moves, PlanFigures then, String sentence) {
        private static final int TOLD_MILLIGRAMS = 50;

        public MoveEffect {
            moves = List.copyOf(moves);
        }

        /**
         * Whether the plan with the moves is better than one without: only then is a client worth asking. Grams that differ by
         * less than half a tenth are told as no difference, and count as none.
         */
        public boolean improves(PlanFigures present) {
            int grams = then.notAppliedMilligrams() - present.notAppliedMilligrams();
            PlanFigures told = Math.abs(grams) < TOLD_MILLIGRAMS ? withGramsOf(present) : then;
            return PlanFigures.BETTER.compare(told, present) < 0;
        }

        private PlanFigures withGramsOf(PlanFigures present) {
            return new PlanFigures(
                    then.stylistMixes(),
                    then.waitMinutes(),
                    present.notAppliedMilligrams(),
                    then.busiestMinutes(),
                    then.bowlCount());
        }
    }

    /**
     * A service at another start.
     *
     * @param service service number
     * @param from booked start
     * @param to start after the move
     */
    public record ServiceMove(int service, Instant from, Instant to) {}
}
