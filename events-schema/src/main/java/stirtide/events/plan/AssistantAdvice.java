package stirtide.events.plan;

import java.time.Instant;

/**
 * What one more assistant at the bar would do. Asking changes no shift.
 *
 * @param basedOnRevision newest event the answer knows
 * @param from start of the help
 * @param to end of the help
 * @param present the plan as the people are
 * @param then the plan with one more assistant
 * @param sentence the difference in words
 */
public record AssistantAdvice(
        long basedOnRevision, Instant from, Instant to, PlanFigures present, PlanFigures then, String sentence) {}
