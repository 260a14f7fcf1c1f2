package stirtide.planner.check;

import java.util.Comparator;
import java.util.HashSet;
import java.util.Set;
import stirtide.events.plan.BowlReason;
import stirtide.events.plan.Plan;
import stirtide.events.plan.PlannedBowl;
import stirtide.events.plan.PlannedService;
import stirtide.planner.planning.search.PlanQuestion;

/** Sums, order, and that every wait has its reason. */
final class TotalsCheck {
    private TotalsCheck() {}

    static void check(PlanQuestion question, Plan plan, Findings findings) {
        long mixed = 0;
        long over = 0;
        long age = 0;
        Set<String> ids = new HashSet<>();
        for (PlannedBowl bowl : plan.bowls()) {
            findings.unless(ids.add(bowl.bowl()), "bowl %s is planned twice", bowl.bowl());
            int total = bowl.formula().totalMilligrams();
            mixed += total;
            over += total - bowl.neededMilligrams() - bowl.residueMilligrams();
            age += findings.minute(bowl.neededFrom(), "first use") - findings.minute(bowl.mixStart(), "mixing");
        }
        long wait =
                plan.services().stream().mapToLong(PlannedService::waitMinutes).sum();
        var totals = plan.totals();
        findings.unless(totals.waitMinutes() == wait, "total wait is %d", wait);
        findings.unless(totals.bowlCount() == plan.bowls().size(), "total of bowls is wrong");
        findings.unless(totals.mixedMilligrams() == mixed, "total of mixed grams is %d mg", mixed);
        findings.unless(totals.overMixMilligrams() == over, "total of over-mixed grams is %d mg", over);
        findings.unless(totals.ageMinutes() == age, "total age is %d", age);
        totals.waitBound()
                .ifPresent(bound -> findings.unless(bound <= wait, "%d minutes of waiting are below the bound", wait));
        totals.bowlBound()
                .ifPresent(bound ->
                        findings.unless(bound <= plan.bowls().size(), "fewer bowls than the bound of %d", bound));
        for (BowlReason reason : totals.bowlReasons())
            findings.unless(
                    plan.bowls().stream().filter(reason::concerns).count() >= reason.leastBowls(),
                    "fewer bowls than the reason says: %s",
                    reason.sentence());
        order(plan, findings);
        reasons(plan, findings);
    }

    private static void order(Plan plan, Findings findings) {
        findings.unless(
                plan.bowls()
                        .equals(plan.bowls().stream()
                                .sorted(Comparator.comparing(PlannedBowl::mixStart)
                                        .thenComparing(PlannedBowl::service)
                                        .thenComparing(bowl -> bowl.bowl().length())
                                        .thenComparing(PlannedBowl::bowl))
                                .toList()),
                "bowls are not in order of mixing, then of bowl id");
    }

    private static void reasons(Plan plan, Findings findings) {
        for (PlannedService service : plan.services())
            findings.unless(
                    service.waitMinutes() == 0
                            || plan.waits().stream()
                                    .anyMatch(wait -> wait.services().contains(service.service())),
                    "service %d waits and no reason is given",
                    service.service());
    }
}
