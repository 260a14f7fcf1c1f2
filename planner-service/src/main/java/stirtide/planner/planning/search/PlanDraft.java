package stirtide.planner.planning.search;

import java.util.List;

/**
 * A plan in the making.
 *
 * @param plans a plan for each service, in the order of the question
 * @param bar who and what they leave free
 */
record PlanDraft(List<ServicePlan> plans, ResourceCalendar bar) {
    PlanDraft {
        plans = List.copyOf(plans);
    }

    SearchScore score() {
        return plans.stream().map(ServicePlan::score).reduce(SearchScore.ZERO, SearchScore::plus);
    }
}
