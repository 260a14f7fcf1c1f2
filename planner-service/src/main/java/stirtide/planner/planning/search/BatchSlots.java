package stirtide.planner.planning.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stirtide.events.plan.Plan;
import stirtide.events.plan.PlannedBatch;
import stirtide.events.plan.PlannedBatch.Share;
import stirtide.events.plan.PlannedBowl;
import stirtide.planner.planning.search.PlanQuestion.Assistant;

/**
 * Who and what is free for one mix of two bowls, beside the plan as it stands. Every other bowl keeps the person, the
 * scale and the minutes it has in the plan, in a batch or not, so that a pair may always be mixed bowl by bowl.
 */
record BatchSlots(PlanQuestion question, Plan plan) {
    private record Use(int from, int to) {
        boolean meets(int start, int end) {
            return from < end && start < to;
        }
    }

    /** Whether somebody can mix from one minute to the other and carry afterwards. */
    boolean personFree(Assistant assistant, int from, int mixEnd, List<String> pair) {
        int to = mixEnd + question.carryMinutes();
        return assistant.onDuty().stream().anyMatch(duty -> duty.from() <= from && to <= duty.to())
                && from >= assistant.busyUntilMinute()
                && mixes(pair, Optional.of(assistant.personId()), Optional.empty()).stream()
                        .noneMatch(use -> use.meets(from, to));
    }

    boolean scaleFree(String scaleId, int from, int to, List<String> pair) {
        return from >= question.scaleBusyUntil(scaleId)
                && mixes(pair, Optional.empty(), Optional.of(scaleId)).stream().noneMatch(use -> use.meets(from, to));
    }

    /** Mixes of others that need a person or a scale. */
    private List<Use> mixes(List<String> pair, Optional<String> person, Optional<String> scale) {
        List<Use> uses = new ArrayList<>();
        int carry = person.isPresent() ? question.carryMinutes() : 0;
        for (PlannedBowl bowl : plan.bowls())
            if (!pair.contains(bowl.bowl())
                    && (person.isPresent() && bowl.personId().equals(person)
                            || scale.isPresent() && bowl.scaleId().equals(scale.get())))
                uses.add(new Use(question.minuteOf(bowl.mixStart()), question.minuteOf(bowl.mixEnd()) + carry));
        for (PlannedBatch batch : plan.batches())
            if (person.filter(batch.personId()::equals).isPresent()
                    || scale.filter(batch.scaleId()::equals).isPresent())
                uses.add(new Use(question.minuteOf(batch.mixStart()), question.minuteOf(batch.mixEnd()) + carry));
        return uses;
    }

    /** Whether there are bowls enough of every size when a batch is added. */
    boolean bowlsSuffice(PlannedBatch added) {
        List<PlannedBatch> batches = new ArrayList<>(plan.batches());
        batches.add(added);
        return question.bowlSizes().stream().allMatch(size -> {
            List<Use> uses = uses(size.bowlSizeId(), batches);
            return uses.stream()
                    .allMatch(start -> uses.stream()
                                    .filter(use -> use.from <= start.from && start.from < use.to)
                                    .count()
                            <= size.count());
        });
    }

    private List<Use> uses(String size, List<PlannedBatch> batches) {
        List<Use> uses = new ArrayList<>();
        question.bowlsOut().stream()
                .filter(out -> out.bowlSizeId().equals(size))
                .forEach(out -> uses.add(new Use(question.nowMinute(), out.freeFromMinute())));
        for (PlannedBowl bowl : plan.bowls()) {
            int clean = question.minuteOf(bowl.neededTo()) + question.washMinutes();
            Optional<PlannedBatch> batch = batches.stream()
                    .filter(each -> each.bowlIds().contains(bowl.bowl()))
                    .findFirst();
            int from = batch.map(
                            each -> Math.min(question.minuteOf(each.mixStart()), question.minuteOf(bowl.mixStart())))
                    .orElse(question.minuteOf(bowl.mixStart()));
            if (bowl.bowlSizeId().equals(size)) uses.add(new Use(from, clean));
            else if (batch.stream().anyMatch(each -> sizeOf(each, bowl).equals(size))) uses.add(new Use(from, clean));
        }
        return uses;
    }

    private static String sizeOf(PlannedBatch batch, PlannedBowl bowl) {
        return batch.shares().stream()
                .filter(share -> share.bowl().equals(bowl.bowl()))
                .map(Share::bowlSizeId)
                .findFirst()
                .orElseThrow();
    }

    /** Whether the bowls of each service are still begun one after the other, in the order of their letters. */
    boolean inOrder(PlannedBatch added) {
        List<PlannedBatch> batches = new ArrayList<>(plan.batches());
        batches.add(added);
        Plan then = plan.withBatches(batches);
        for (PlannedBowl one : plan.bowls())
            for (PlannedBowl later : plan.bowls())
                if (one.service() == later.service()
                        && one.neededFrom().isBefore(later.neededFrom())
                        && (added.bowlIds().contains(one.bowl())
                                || added.bowlIds().contains(later.bowl()))
                        && !then.beginOf(one).isBefore(then.beginOf(later))) return false;
        return true;
    }
}
