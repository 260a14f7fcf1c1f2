package stirtide.planner.check;

import java.util.Optional;
import stirtide.events.plan.Plan;
import stirtide.events.plan.PlannedBowl;
import stirtide.events.setup.BowlSize;
import stirtide.events.setup.Directions;
import stirtide.planner.planning.search.PlanQuestion;
import stirtide.planner.planning.search.PlanQuestion.RunTask;
import stirtide.planner.planning.search.PlanQuestion.ServiceTask;

/** Times, life and fill of one bowl. */
final class BowlCheck {
    private BowlCheck() {}

    static void check(PlanQuestion question, Plan plan, PlannedBowl bowl, Findings findings) {
        Optional<ServiceTask> task = question.services().stream()
                .filter(each -> each.service() == bowl.service())
                .findFirst();
        Optional<RunTask> run = task.flatMap(
                each -> each.runs().stream().filter(r -> r.run() == bowl.run()).findFirst());
        Optional<Directions> directions = run.flatMap(each -> FirstFeed.directions(question, each.lightenerId()));
        findings.unless(directions.isPresent(), "bowl %s feeds an unknown run or lightener", bowl.bowl());
        if (directions.isEmpty()) return;
        findings.unless(task.get().chair() == bowl.chair(), "bowl %s goes to the wrong chair", bowl.bowl());
        times(question, bowl, directions.get(), findings);
        fill(question, bowl, findings);
        boolean said = plan.notes().stream()
                .anyMatch(note -> note.kind().equals("STYLIST_MIXES") && note.service() == bowl.service());
        findings.unless(
                bowl.personId().isPresent() || said, "bowl %s: the stylist mixes, but no note says why", bowl.bowl());
    }

    private static void times(PlanQuestion question, PlannedBowl bowl, Directions directions, Findings findings) {
        int start = findings.minute(bowl.mixStart(), "mixing of " + bowl.bowl());
        int mixed = findings.minute(bowl.mixEnd(), "end of mixing of " + bowl.bowl());
        int from = findings.minute(bowl.neededFrom(), "first use of " + bowl.bowl());
        int to = findings.minute(bowl.neededTo(), "last use of " + bowl.bowl());
        int ends = findings.minute(bowl.lifeEnds(), "end of life of " + bowl.bowl());
        findings.unless(
                start >= question.nowMinute(), "bowl %s is mixed at minute %d, in the past", bowl.bowl(), start);
        findings.unless(mixed == start + directions.mixMinutes(), "bowl %s: mixing takes the wrong time", bowl.bowl());
        findings.unless(
                from >= start + directions.mixMinutes() + question.handOverMinutes(),
                "bowl %s is used at minute %d, before it is mixed and carried",
                bowl.bowl(),
                from);
        findings.unless(from < to, "bowl %s is used for no minute", bowl.bowl());
        findings.unless(
                ends == start + directions.workingLifeMinutes(), "bowl %s: its working life is wrong", bowl.bowl());
        findings.unless(
                to <= start + directions.workingLifeMinutes(),
                "bowl %s is used until minute %d, beyond its working life",
                bowl.bowl(),
                to);
    }

    private static void fill(PlanQuestion question, PlannedBowl bowl, Findings findings) {
        Optional<BowlSize> size = question.bowlSizes().stream()
                .filter(each -> each.bowlSizeId().equals(bowl.bowlSizeId()))
                .findFirst();
        findings.unless(size.isPresent(), "bowl %s: no bowl size %s", bowl.bowl(), bowl.bowlSizeId());
        if (size.isEmpty()) return;
        long total = bowl.formula().lightenerMilligrams();
        for (var part : bowl.formula().developerParts()) total += part.milligrams();
        findings.unless(
                total <= size.get().usableMilligrams(), "bowl %s: %d mg are more than its fill", bowl.bowl(), total);
        findings.unless(
                bowl.residueMilligrams() == size.get().residueMilligrams(), "bowl %s: residue is wrong", bowl.bowl());
        findings.unless(
                total >= (long) bowl.neededMilligrams() + size.get().residueMilligrams(),
                "bowl %s: %d mg are less than need and residue",
                bowl.bowl(),
                total);
    }
}
