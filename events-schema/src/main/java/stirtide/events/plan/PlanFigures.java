package stirtide.events.plan;

import java.util.Comparator;

/**
 * What a plan costs, most important first.
 *
 * @param stylistMixes bowls the stylist has to mix
 * @param waitMinutes minutes clients wait, all together
 * @param notAppliedMilligrams grams to be mixed that are not applied: surplus and residue
 * @param busiestMinutes minutes of mixing by assistants in the busiest half hour
 * @param bowlCount bowls still to be mixed
 */
public record PlanFigures(
        int stylistMixes, int waitMinutes, int notAppliedMilligrams, int busiestMinutes, int bowlCount) {
    /** Better first, in the order of the planner's objective, then the calmer bar. */
    public static final Comparator<PlanFigures> BETTER = Comparator.comparingInt(PlanFigures::stylistMixes)
            .thenComparingInt(PlanFigures::waitMinutes)
            .thenComparingInt(PlanFigures::notAppliedMilligrams)
            .thenComparingInt(PlanFigures::busiestMinutes)
            .thenComparingInt(PlanFigures::bowlCount);
}
