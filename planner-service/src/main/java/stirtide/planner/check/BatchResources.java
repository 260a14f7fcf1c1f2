package stirtide.planner.check;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stirtide.events.plan.Plan;
import stirtide.events.plan.PlannedBatch;
import stirtide.events.plan.PlannedBowl;
import stirtide.events.setup.BowlSize;
import stirtide.planner.planning.search.PlanQuestion;
import stirtide.planner.planning.search.PlanQuestion.BowlOut;

/** People, scales and bowls of mixes for two bowls, beside all that the plan without them needs. */
record BatchResources(PlanQuestion question, Plan plan, Findings findings) {
    static void check(PlanQuestion question, Plan plan, Findings findings) {
        BatchResources resources = new BatchResources(question, plan, findings);
        for (PlannedBatch batch : plan.batches()) resources.mixing(batch);
        for (BowlSize size : question.bowlSizes()) resources.stock(size);
        resources.letters();
    }

    private int at(Instant instant) {
        return findings.minute(instant, "a pair");
    }

    private void mixing(PlannedBatch batch) {
        String name = String.join(" and ", batch.bowlIds());
        int start = at(batch.mixStart());
        int end = at(batch.mixEnd());
        boolean onDuty = question.assistants().stream()
                .anyMatch(each -> each.personId().equals(batch.personId())
                        && each.busyUntilMinute() <= start
                        && each.onDuty().stream()
                                .anyMatch(duty -> duty.from() <= start && end + question.carryMinutes() <= duty.to()));
        findings.unless(onDuty, "pair %s: %s is not free or not on duty for the whole mix", name, batch.personId());
        findings.unless(
                question.scales().stream().anyMatch(scale -> scale.scaleId().equals(batch.scaleId())),
                "pair %s: no scale %s",
                name,
                batch.scaleId());
        findings.unless(
                question.assistants().stream()
                        .noneMatch(each -> each.busyScaleId().equals(Optional.of(batch.scaleId()))
                                && each.busyUntilMinute() - question.carryMinutes() > start),
                "pair %s: scale %s is still in use",
                name,
                batch.scaleId());
        for (PlannedBowl bowl : plan.bowls())
            if (!batch.bowlIds().contains(bowl.bowl()))
                apart(name, batch, bowl.bowl(), bowl.mixStart(), bowl.mixEnd(), bowl.personId(), bowl.scaleId());
        for (PlannedBatch other : plan.batches())
            if (!other.equals(batch))
                apart(
                        name,
                        batch,
                        String.join(" and ", other.bowlIds()),
                        other.mixStart(),
                        other.mixEnd(),
                        Optional.of(other.personId()),
                        other.scaleId());
    }

    private void apart(
            String name,
            PlannedBatch batch,
            String other,
            Instant from,
            Instant to,
            Optional<String> person,
            String scale) {
        boolean onePerson = person.equals(Optional.of(batch.personId()));
        findings.unless(
                !together(batch, from, to, 0) || !scale.equals(batch.scaleId()),
                "pair %s and %s are mixed at one time on one scale",
                name,
                other);
        findings.unless(
                !together(batch, from, to, question.carryMinutes()) || !onePerson,
                "pair %s and %s are mixed or carried at one time by one person",
                name,
                other);
    }

    private boolean together(PlannedBatch batch, Instant from, Instant to, int carryMinutes) {
        return at(batch.mixStart()) < at(to) + carryMinutes && at(from) < at(batch.mixEnd()) + carryMinutes;
    }

    private void stock(BowlSize size) {
        List<int[]> uses = new ArrayList<>();
        for (BowlOut out : question.bowlsOut())
            if (out.bowlSizeId().equals(size.bowlSizeId()))
                uses.add(new int[] {Integer.MIN_VALUE, out.freeFromMinute()});
        for (PlannedBowl bowl : plan.bowls()) {
            String used = plan.batchOf(bowl.bowl())
                    .flatMap(batch -> batch.shares().stream()
                            .filter(share -> share.bowl().equals(bowl.bowl()))
                            .findFirst())
                    .map(PlannedBatch.Share::bowlSizeId)
                    .orElse(bowl.bowlSizeId());
            if (used.equals(size.bowlSizeId()))
                uses.add(new int[] {at(plan.beginOf(bowl)), at(bowl.neededTo()) + question.washMinutes()});
        }
        for (int[] begun : uses) {
            long together = uses.stream()
                    .filter(use -> use[0] <= begun[0] && begun[0] < use[1])
                    .count();
            findings.unless(
                    begun[0] == Integer.MIN_VALUE || together <= size.count(),
                    "pairs: at minute %d %d bowls of size %s would be in use, %d exist",
                    begun[0],
                    together,
                    size.bowlSizeId(),
                    size.count());
        }
    }

    /** Bowls of a service are begun in the order of their letters, which is that of their use. */
    private void letters() {
        for (PlannedBowl one : plan.bowls())
            for (PlannedBowl later : plan.bowls())
                if (one.service() == later.service() && one.neededFrom().isBefore(later.neededFrom()))
                    findings.unless(
                            plan.batchOf(one.bowl()).isEmpty()
                                            && plan.batchOf(later.bowl()).isEmpty()
                                    || plan.beginOf(one).isBefore(plan.beginOf(later)),
                            "bowl %s would be begun before bowl %s of the same service",
                            later.bowl(),
                            one.bowl());
    }
}
