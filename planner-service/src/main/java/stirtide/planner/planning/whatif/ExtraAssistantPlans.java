package stirtide.planner.planning.whatif;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stirtide.events.plan.AssistantAdvice;
import stirtide.events.plan.PlanFigures;
import stirtide.planner.day.state.Refusal;
import stirtide.planner.planning.search.PlanQuestion;
import stirtide.planner.planning.search.PlanQuestion.Assistant;
import stirtide.planner.planning.search.PlanQuestion.Minutes;

/** Plans the day with one more assistant for a while. The scales stay as many as they are. */
final class ExtraAssistantPlans {
    private ExtraAssistantPlans() {}

    static WhatIfAnswer answer(BaselinePlan present, WhatIfQuestion.ExtraAssistant extra) {
        PlanQuestion question = present.question();
        boolean ofTheDay = present.time().holds(extra.from())
                && !extra.to().isAfter(present.time().dayEnd());
        int from = ofTheDay ? Math.max(present.nowMinute(), present.time().minuteUp(extra.from())) : 0;
        int to = ofTheDay ? present.time().minuteDown(extra.to()) : 0;
        if (from >= to)
            return new WhatIfAnswer.Refused(new Refusal(
                    "SPAN_EMPTY",
                    "The help must start and end on this day, and end after it starts and after now. Name another from and"
                            + " to."));
        List<Assistant> people = new ArrayList<>(question.assistants());
        people.add(
                new Assistant("one more", "One more assistant", List.of(new Minutes(from, to)), 0, Optional.empty()));
        PlanFigures then = WhatIfFigures.of(present.thorough(question.withAssistants(people)));
        String scales = people.size() > question.scales().size()
                ? " There are fewer scales than assistants: a scale may be what is lacking."
                : "";
        String sentence = "One more assistant from " + present.time().clock(question.instantOf(from)) + " to "
                + present.time().clock(question.instantOf(to)) + ": "
                + WhatIfFigures.difference(present.figures(), then) + ".";
        return new WhatIfAnswer.ExtraAssistant(new AssistantAdvice(
                question.basedOnRevision(),
                question.instantOf(from),
                question.instantOf(to),
                present.figures(),
                then,
                sentence + scales));
    }
}
