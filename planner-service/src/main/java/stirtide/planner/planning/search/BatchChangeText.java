package stirtide.planner.planning.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stirtide.events.plan.Plan;
import stirtide.events.plan.PlannedBatch;

/** Says in words which pairs of bowls are one mix that were not before, and the other way round. */
final class BatchChangeText {
    private final PlanQuestion question;
    private final PlanText words;

    BatchChangeText(PlanQuestion question) {
        this.question = question;
        this.words = new PlanText(question);
    }

    /** The plan with these changes listed after its others; a first plan lists none. */
    Plan listed(Plan plan) {
        if (question.onShow().isEmpty()) return plan;
        List<String> changes = new ArrayList<>(plan.changes());
        Plan before = question.onShow().get();
        for (PlannedBatch batch : plan.batches()) change(before, batch).ifPresent(changes::add);
        for (PlannedBatch batch : before.batches())
            if (same(plan, batch).isEmpty() && batch.bowlIds().stream().allMatch(id -> planned(plan, id)))
                changes.add(named(batch) + " are two mixes again.");
        return changes.equals(plan.changes()) ? plan : plan.withChanges(changes);
    }

    private Optional<String> change(Plan before, PlannedBatch batch) {
        Optional<PlannedBatch> old = same(before, batch);
        if (old.isEmpty())
            return Optional.of(named(batch) + " are one mix for two bowls now: " + words.name(batch.personId())
                    + " begins it at " + words.time(batch.mixStart()) + ".");
        if (old.get().mixStart().equals(batch.mixStart())) return Optional.empty();
        return Optional.of(named(batch) + " are one mix that is begun at " + words.time(batch.mixStart()) + ", not at "
                + words.time(old.get().mixStart()) + ".");
    }

    private static Optional<PlannedBatch> same(Plan plan, PlannedBatch batch) {
        return plan.batches().stream()
                .filter(each -> each.bowlIds().containsAll(batch.bowlIds()))
                .findFirst();
    }

    private static boolean planned(Plan plan, String id) {
        return plan.bowls().stream().anyMatch(bowl -> bowl.bowl().equals(id));
    }

    private static String named(PlannedBatch batch) {
        return "Bowls " + String.join(" and ", batch.bowlIds());
    }
}
