package stirtide.planner.planning.search;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A plan in the making: a plan for each service placed so far, and the bar they leave. */
final class PlanDraft {
    private final ServiceInserter inserter;
    private final List<ServiceTimeline> timelines;
    private final ResourceCalendar bar;
    private final @Nullable ServicePlan[] plans;
    private SearchScore score = SearchScore.ZERO;

    PlanDraft(PlanQuestion question, List<ServiceTimeline> timelines, ServiceInserter inserter) {
        this.inserter = inserter;
        this.timelines = timelines;
        this.bar = new ResourceCalendar(question);
        this.plans = new ServicePlan[timelines.size()];
    }

    SearchScore score() {
        return score;
    }

    ResourceCalendar bar() {
        return bar;
    }

    /** Plan of a service that is placed. */
    ServicePlan plan(int place) {
        ServicePlan plan = plans[place];
        if (plan == null) throw new IllegalStateException("service is not placed");
        return plan;
    }

    List<ServicePlan> plans() {
        List<ServicePlan> all = new ArrayList<>();
        for (int place = 0; place < plans.length; place++) all.add(plan(place));
        return all;
    }

    void insert(int place, int keepBefore, int early) {
        put(place, inserter.insert(timelines.get(place), bar, keepBefore, early));
    }

    /** A service fed by these bowls. */
    ServicePlan plan(ServiceTimeline timeline, List<MixAssignment> assignments) {
        return inserter.plan(timeline, assignments, timeline.noHolds());
    }

    void put(int place, ServicePlan plan) {
        plan.assignments().forEach(bar::take);
        plans[place] = plan;
        score = score.plus(plan.score());
    }

    ServicePlan remove(int place) {
        ServicePlan plan = plan(place);
        plan.assignments().forEach(bar::giveBack);
        plans[place] = null;
        score = score.minus(plan.score());
        return plan;
    }
}
