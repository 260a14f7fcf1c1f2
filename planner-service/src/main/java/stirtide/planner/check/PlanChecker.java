package stirtide.planner.check;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import stirtide.events.plan.Plan;
import stirtide.events.plan.PlannedBowl;
import stirtide.events.plan.PlannedService;
import stirtide.planner.planning.search.PlanQuestion;
import stirtide.planner.planning.search.PlanQuestion.ServiceTask;

/** Finds every hard rule that a plan breaks. */
public final class PlanChecker {
    private PlanChecker() {}

    /**
     * Checks a plan against the question it answers.
     *
     * @return one sentence for each broken rule, empty when the plan is valid
     */
    public static List<String> check(PlanQuestion question, Plan plan) {
        Findings findings = new Findings(question);
        findings.unless(
                plan.basedOnRevision() == question.basedOnRevision()
                        && plan.asOf().equals(question.asOf()),
                "the plan stands on revision %d of %s, the question on %d of %s",
                plan.basedOnRevision(),
                plan.asOf(),
                question.basedOnRevision(),
                question.asOf());
        TreeMap<Integer, List<PlannedBowl>> bowls = bowlsByService(question, plan, findings);
        checkServices(question, plan, bowls, findings);
        for (PlannedBowl bowl : plan.bowls()) BowlCheck.check(question, plan, bowl, findings);
        ResourceCheck.check(question, plan, findings);
        SeatCheck.check(question, plan, findings);
        TotalsCheck.check(question, plan, findings);
        StockCheck.check(question, plan, findings);
        BatchCheck.check(question, plan, findings);
        return findings.sentences();
    }

    private static TreeMap<Integer, List<PlannedBowl>> bowlsByService(
            PlanQuestion question, Plan plan, Findings findings) {
        TreeMap<Integer, List<PlannedBowl>> bowls = new TreeMap<>();
        for (ServiceTask task : question.services()) bowls.put(task.service(), new ArrayList<>());
        for (PlannedBowl bowl : plan.bowls()) {
            List<PlannedBowl> own = bowls.get(bowl.service());
            findings.unless(
                    own != null, "bowl %s is for service %d, which is not asked for", bowl.bowl(), bowl.service());
            if (own != null) own.add(bowl);
        }
        return bowls;
    }

    private static void checkServices(
            PlanQuestion question, Plan plan, TreeMap<Integer, List<PlannedBowl>> bowls, Findings findings) {
        List<Integer> asked =
                question.services().stream().map(ServiceTask::service).toList();
        List<Integer> planned =
                plan.services().stream().map(PlannedService::service).toList();
        findings.unless(
                planned.equals(asked.stream().sorted().toList()),
                "the plan lists services %s, the question asks for %s",
                planned,
                asked);
        for (PlannedService service : plan.services()) {
            for (ServiceTask task : question.services()) {
                if (task.service() != service.service()) continue;
                ServiceWalk walk =
                        new ServiceWalk(question, plan, task, bowls.getOrDefault(task.service(), List.of()), findings);
                walk.walk();
                ProcessCheck.check(question, plan, task, service, walk, findings);
            }
        }
    }
}
