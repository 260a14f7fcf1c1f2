package stirtide.planner.planning.whatif;

import java.time.Instant;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import stirtide.planner.day.question.PlanQuestions;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.Refusal;
import stirtide.planner.planning.search.PlanQuestion;
import stirtide.planner.planning.stagger.SearchRounds;

/** Answers what-if questions about a day. */
public final class WhatIf {
    private WhatIf() {}

    /** Answers a question to its end. The same day, question and time give the same answer. */
    public static WhatIfAnswer answer(Day day, WhatIfQuestion question, Instant now) {
        return answer(day, question, now, () -> false);
    }

    /**
     * Answers a question. The same day, question and time give the same answer, or {@link WhatIfAnswer.BrokenOff}.
     *
     * @param day the day as it stands
     * @param question what is asked
     * @param now time of asking; nothing is suggested for before it
     * @param breakOff asked between two plans; once it says so, the answer is not wanted any more
     */
    public static WhatIfAnswer answer(Day day, WhatIfQuestion question, Instant now, BooleanSupplier breakOff) {
        Optional<PlanQuestion> asked = PlanQuestions.standing(day, now);
        if (asked.isEmpty())
            return new WhatIfAnswer.Refused(
                    new Refusal("DAY_NOT_OPEN", "Nothing is planned on a day that is not open. Open it first."));
        try {
            return answer(BaselinePlan.of(day, asked.get(), breakOff), question);
        } catch (SearchRounds.BrokenOff enough) {
            return new WhatIfAnswer.BrokenOff();
        }
    }

    private static WhatIfAnswer answer(BaselinePlan present, WhatIfQuestion question) {
        if (question instanceof WhatIfQuestion.WalkIn walkIn) return WalkInSearch.answer(present, walkIn);
        if (question instanceof WhatIfQuestion.ExtraAssistant extra) return ExtraAssistantPlans.answer(present, extra);
        if (question instanceof WhatIfQuestion.OneMove move) return ServiceMoves.answer(present, move);
        return ServiceMoves.answer(present);
    }
}
