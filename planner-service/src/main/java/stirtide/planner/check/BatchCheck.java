package stirtide.planner.check;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stirtide.events.plan.Plan;
import stirtide.events.plan.PlannedBatch;
import stirtide.events.plan.PlannedBatch.Share;
import stirtide.events.plan.PlannedBowl;
import stirtide.events.setup.BowlSize;
import stirtide.events.setup.Directions;
import stirtide.planner.planning.search.PlanQuestion;
import stirtide.planner.planning.search.PlanQuestion.RunTask;
import stirtide.planner.planning.search.PlanQuestion.ZoneTask;

/**
 * Pairs of bowls that may be one mix: weights for both clients, shares that are enough and fit, life until the last use,
 * in time for the first, and no person or thing used twice. The plan without its pairs is judged by the others.
 */
final class BatchCheck {
    /** A house rule: bowls first used further apart are no pair. */
    private static final int MOST_MINUTES_APART = 10;
    /** Minutes for pouring one bowl of two by weight: common practice, no source. */
    private static final int DIVIDING_MINUTES = 1;

    private final PlanQuestion question;
    private final Plan plan;
    private final PlannedBatch batch;
    private final String name;
    private final Findings findings;

    private BatchCheck(PlanQuestion question, Plan plan, PlannedBatch batch, Findings findings) {
        this.question = question;
        this.plan = plan;
        this.batch = batch;
        this.name = String.join(" and ", batch.bowlIds());
        this.findings = findings;
    }

    static void check(PlanQuestion question, Plan plan, Findings findings) {
        findings.unless(
                plan.batches().isEmpty() || question.oneMixTwoBowls(), "the salon wants no mixes for two bowls");
        Set<String> paired = new HashSet<>();
        for (PlannedBatch batch : plan.batches()) {
            for (String id : batch.bowlIds()) findings.unless(paired.add(id), "bowl %s is in two pairs", id);
            new BatchCheck(question, plan, batch, findings).check();
        }
        if (!plan.batches().isEmpty()) BatchResources.check(question, plan, findings);
    }

    private void check() {
        List<PlannedBowl> bowls = new ArrayList<>();
        for (String id : batch.bowlIds())
            plan.bowls().stream().filter(bowl -> bowl.bowl().equals(id)).forEach(bowls::add);
        findings.unless(bowls.size() == 2, "pair %s: a bowl is not in the plan", name);
        if (bowls.size() != 2) return;
        PlannedBowl one = bowls.get(0);
        PlannedBowl other = bowls.get(1);
        findings.unless(one.service() != other.service(), "pair %s is for one client", name);
        Optional<RunTask> run = run(one);
        Optional<RunTask> second = run(other);
        Optional<Directions> directions = run.flatMap(each -> FirstFeed.directions(question, each.lightenerId()));
        if (second.isEmpty() || directions.isEmpty()) {
            findings.unless(false, "pair %s feeds an unknown run or lightener", name);
            return;
        }
        findings.unless(
                run.get().lightenerId().equals(second.get().lightenerId())
                        && run.get().strengthHundredths() == second.get().strengthHundredths()
                        && run.get().ratioThousandths() == second.get().ratioThousandths(),
                "pair %s: the clients want different mixes",
                name);
        times(one, other, directions.get());
        shares(bowls);
        List<ZoneTask> zones = new ArrayList<>(zones(run.get(), one));
        zones.addAll(zones(second.get(), other));
        FormulaCheck.check(question, run.get(), zones, whole(one), findings);
    }

    private Optional<RunTask> run(PlannedBowl bowl) {
        return question.services().stream()
                .filter(task -> task.service() == bowl.service())
                .flatMap(task -> task.runs().stream())
                .filter(run -> run.run() == bowl.run())
                .findFirst();
    }

    private static List<ZoneTask> zones(RunTask run, PlannedBowl bowl) {
        return run.zones().stream()
                .filter(zone -> bowl.zones().contains(zone.zone()))
                .toList();
    }

    private int at(Instant instant) {
        return findings.minute(instant, "pair " + name);
    }

    private void times(PlannedBowl one, PlannedBowl other, Directions directions) {
        int start = at(batch.mixStart());
        int end = at(batch.mixEnd());
        int firstUse = Math.min(at(one.neededFrom()), at(other.neededFrom()));
        int lastUse = Math.max(at(one.neededTo()), at(other.neededTo()));
        findings.unless(start >= question.nowMinute(), "pair %s is mixed at minute %d, in the past", name, start);
        findings.unless(
                end == start + directions.mixMinutes() + DIVIDING_MINUTES,
                "pair %s: mixing and dividing take the wrong time",
                name);
        findings.unless(
                end + question.handOverMinutes() <= firstUse,
                "pair %s is used at minute %d, before it is mixed, divided and carried",
                name,
                firstUse);
        int life = start + directions.workingLifeMinutes();
        findings.unless(at(batch.lifeEnds()) == life, "pair %s: its working life is wrong", name);
        findings.unless(lastUse <= life, "pair %s is used until minute %d, beyond its working life", name, lastUse);
        findings.unless(
                Math.abs(at(one.neededFrom()) - at(other.neededFrom())) <= MOST_MINUTES_APART,
                "pair %s: the first uses are too far apart",
                name);
        findings.unless(
                batch.savedMinutes() == 2 * directions.mixMinutes() - (end - start) && batch.savedMinutes() > 0,
                "pair %s saves other minutes than told, or none",
                name);
    }

    private void shares(List<PlannedBowl> bowls) {
        long total = batch.formula().lightenerMilligrams();
        for (var part : batch.formula().developerParts()) total += part.milligrams();
        long shared = 0;
        long apart = 0;
        for (int i = 0; i < bowls.size(); i++) {
            Share share = batch.shares().get(i);
            PlannedBowl bowl = bowls.get(i);
            shared += share.milligrams();
            apart += bowl.formula().totalMilligrams();
            Optional<BowlSize> size = question.bowlSizes().stream()
                    .filter(each -> each.bowlSizeId().equals(share.bowlSizeId()))
                    .findFirst();
            findings.unless(size.isPresent(), "pair %s: no bowl size %s", name, share.bowlSizeId());
            if (size.isEmpty()) return;
            long held = i == 0 ? total : share.milligrams();
            findings.unless(
                    held <= size.get().usableMilligrams(),
                    "pair %s: %d mg are more than bowl %s holds",
                    name,
                    held,
                    share.bowl());
            findings.unless(
                    share.milligrams()
                            >= (long) bowl.neededMilligrams() + size.get().residueMilligrams(),
                    "pair %s: %d mg are less than need and residue of bowl %s",
                    name,
                    share.milligrams(),
                    share.bowl());
        }
        findings.unless(shared == total, "pair %s: the shares are not the mix", name);
        findings.unless(
                total <= apart && batch.savedMilligrams() == apart - total,
                "pair %s takes %d mg, two mixes %d mg",
                name,
                total,
                apart);
        question.scales().stream()
                .filter(scale -> scale.scaleId().equals(batch.scaleId()))
                .forEach(scale -> findings.unless(
                        WeighingErrors.shows(scale, batch.shares().get(1).milligrams()),
                        "pair %s: scale %s cannot show the second share",
                        name,
                        batch.scaleId()));
    }

    /** The whole mix as if it were one bowl for one client. */
    private PlannedBowl whole(PlannedBowl first) {
        return new PlannedBowl(
                name,
                first.service(),
                first.run(),
                first.chair(),
                first.zones(),
                batch.mixStart(),
                batch.mixEnd(),
                first.neededFrom(),
                first.neededTo(),
                batch.lifeEnds(),
                Optional.of(batch.personId()),
                batch.scaleId(),
                batch.shares().get(0).bowlSizeId(),
                first.neededMilligrams(),
                first.residueMilligrams(),
                batch.formula(),
                0);
    }
}
