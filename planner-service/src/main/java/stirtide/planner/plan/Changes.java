package stirtide.planner.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stirtide.events.plan.PlannedBowl;
import stirtide.planner.plan.PlanQuestion.Assistant;

/** Says in words what differs from the plan on show. */
final class Changes {
    private final PlanQuestion question;
    private final Shown shown;
    private final List<PlannedBowl> bowls;

    Changes(PlanQuestion question, Shown shown, List<PlannedBowl> bowls) {
        this.question = question;
        this.shown = shown;
        this.bowls = bowls;
    }

    List<String> sentences() {
        if (question.onShow().isEmpty()) return List.of();
        List<String> sentences = new ArrayList<>();
        List<String> planned = new ArrayList<>();
        for (PlannedBowl bowl : bowls) {
            planned.add(bowl.bowl());
            shown.bowl(bowl.bowl())
                    .map(before -> change(before, bowl))
                    .orElse(Optional.of("bowl " + bowl.bowl() + " is new, at " + time(bowl) + "."))
                    .ifPresent(sentences::add);
        }
        for (PlannedBowl before : question.onShow().get().bowls())
            if (!planned.contains(before.bowl())) dropped(before).ifPresent(sentences::add);
        return sentences;
    }

    private String time(PlannedBowl bowl) {
        return Words.time(shown.minute(bowl.mixStart()));
    }

    private Optional<String> change(PlannedBowl before, PlannedBowl after) {
        List<String> parts = new ArrayList<>();
        if (!before.mixStart().equals(after.mixStart())) parts.add("moved from " + time(before) + " to " + time(after));
        if (!before.personId().equals(after.personId())) parts.add("goes from " + who(before) + " to " + who(after));
        if (!before.bowlSizeId().equals(after.bowlSizeId()))
            parts.add("changes from bowl size " + before.bowlSizeId() + " to " + after.bowlSizeId());
        if (before.formula().totalMilligrams() != after.formula().totalMilligrams())
            parts.add("holds " + grams(after) + " instead of " + grams(before));
        if (!before.scaleId().equals(after.scaleId())) parts.add("is weighed on " + after.scaleId());
        if (parts.isEmpty()) return Optional.empty();
        return Optional.of("bowl " + after.bowl() + " " + String.join(", ", parts) + ": " + why(before, after) + ".");
    }

    private static String who(PlannedBowl bowl) {
        return bowl.personId().map(id -> Words.names(List.of(id))).orElse("the stylist");
    }

    private static String grams(PlannedBowl bowl) {
        int tenths = (bowl.formula().totalMilligrams() + 50) / 100;
        return tenths / 10 + "." + tenths % 10 + " g";
    }

    private String why(PlannedBowl before, PlannedBowl after) {
        int shift = shown.minute(after.neededFrom()) - shown.minute(before.neededFrom());
        if (!before.mixStart().isAfter(question.asOf()) && shown.minute(before.mixStart()) < question.nowMinute())
            return "it was not begun in time";
        if (!canKeep(before)) return who(before) + " is not free then";
        if (shift > 0) return "the chair needs it " + Words.minutes(shift) + " later";
        if (shift < 0) return "the chair needs it " + Words.minutes(-shift) + " earlier";
        if (before.neededMilligrams() != after.neededMilligrams()) return "the grams still needed have changed";
        return "the plan as a whole is better so";
    }

    private boolean canKeep(PlannedBowl before) {
        int start = shown.minute(before.mixStart());
        int end = shown.minute(before.mixEnd());
        for (Assistant assistant : question.assistants())
            if (before.personId().equals(Optional.of(assistant.personId())))
                return start >= assistant.busyUntilMinute()
                        && assistant.onDuty().stream().anyMatch(duty -> duty.from() <= start && end <= duty.to());
        return before.personId().isEmpty();
    }

    private Optional<String> dropped(PlannedBowl before) {
        int used = question.services().stream()
                .filter(task -> task.service() == before.service())
                .mapToInt(PlanQuestion.ServiceTask::bowlsUsed)
                .findFirst()
                .orElse(-1);
        if (used < 0) return Optional.of("bowl " + before.bowl() + " is no longer needed: its service is over or off.");
        for (int place = 0; place < used; place++)
            if (before.bowl().equals(idOf(before.service(), place))) return Optional.empty();
        return Optional.of("bowl " + before.bowl() + " is no longer needed: the other bowls suffice.");
    }

    private String idOf(int service, int index) {
        return question.services().stream()
                .filter(task -> task.service() == service)
                .map(task -> Shown.idOf(task, index - task.bowlsUsed()))
                .findFirst()
                .orElse("");
    }
}
