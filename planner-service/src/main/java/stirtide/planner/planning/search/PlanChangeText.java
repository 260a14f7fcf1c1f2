package stirtide.planner.planning.search;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stirtide.events.plan.PlannedBowl;
import stirtide.mixing.text.AmountText;
import stirtide.planner.planning.search.PlanQuestion.Assistant;

/** Says in words what differs from the plan on show. */
final class PlanChangeText {
    private final PlanQuestion question;
    private final ShownPlan shown;
    private final List<PlannedBowl> bowls;
    private final PlanText words;

    PlanChangeText(PlanQuestion question, ShownPlan shown, List<PlannedBowl> bowls) {
        this.question = question;
        this.shown = shown;
        this.bowls = bowls;
        this.words = new PlanText(question);
    }

    List<String> sentences() {
        if (question.onShow().isEmpty()) return List.of();
        List<String> sentences = new ArrayList<>();
        Set<String> planned = new HashSet<>();
        for (PlannedBowl bowl : bowls) {
            planned.add(bowl.bowl());
            shown.bowl(bowl.bowl())
                    .map(before -> change(before, bowl))
                    .orElseGet(() -> Optional.of(fresh(bowl)))
                    .ifPresent(sentences::add);
        }
        for (PlannedBowl before : question.onShow().get().bowls())
            if (!planned.contains(before.bowl())) dropped(before).ifPresent(sentences::add);
        return sentences;
    }

    private String time(PlannedBowl bowl) {
        return words.time(bowl.mixStart());
    }

    private String fresh(PlannedBowl bowl) {
        boolean known = question.onShow().stream()
                .flatMap(plan -> plan.services().stream())
                .anyMatch(service -> service.service() == bowl.service());
        return "New: " + who(bowl) + " mixes bowl " + bowl.bowl() + " for chair " + bowl.chair() + " at " + time(bowl)
                + ": "
                + (known ? "the other bowls do not last for " : "service " + bowl.service() + " is new, first for ")
                + PlanText.list(bowl.zones()) + ".";
    }

    private Optional<String> change(PlannedBowl before, PlannedBowl after) {
        List<String> parts = new ArrayList<>();
        if (!before.mixStart().equals(after.mixStart()))
            parts.add("is mixed at " + time(after) + ", not at " + time(before));
        if (!before.personId().equals(after.personId())) parts.add("goes from " + who(before) + " to " + who(after));
        if (!before.bowlSizeId().equals(after.bowlSizeId()))
            parts.add("goes into a bowl " + after.bowlSizeId() + ", not " + before.bowlSizeId());
        if (before.formula().totalMilligrams() != after.formula().totalMilligrams())
            parts.add("holds " + grams(after) + ", not " + grams(before));
        if (!before.scaleId().equals(after.scaleId())) parts.add("is weighed on scale " + after.scaleId());
        if (parts.isEmpty()) return Optional.empty();
        return Optional.of("Bowl " + after.bowl() + " for chair " + after.chair() + " " + PlanText.list(parts) + ": "
                + why(before, after) + ".");
    }

    private String who(PlannedBowl bowl) {
        return bowl.personId().map(words::name).orElse("the stylist");
    }

    private static String grams(PlannedBowl bowl) {
        return AmountText.roundedGrams(bowl.formula().totalMilligrams());
    }

    private String why(PlannedBowl before, PlannedBowl after) {
        int shift = question.minuteOf(after.neededFrom()) - question.minuteOf(before.neededFrom());
        if (question.minuteOf(before.mixStart()) < question.nowMinute()) return "it was not begun at " + time(before);
        Optional<String> away = before.personId().flatMap(person -> away(person, before));
        if (away.isPresent()) return away.get();
        if (shift > 0) return "the chair needs it " + PlanText.minutes(shift) + " later";
        if (shift < 0) return "the chair needs it " + PlanText.minutes(-shift) + " earlier";
        if (before.neededMilligrams() != after.neededMilligrams())
            return "the chair needs " + AmountText.roundedGrams(after.neededMilligrams()) + " of it, not "
                    + AmountText.roundedGrams(before.neededMilligrams());
        return inTheWay(before)
                .map(other -> who(other) + " mixes bowl " + other.bowl() + " at that time")
                .orElse("so the clients together wait less or less is thrown away");
    }

    /** Why the person of a mix cannot do it as shown, if so. */
    private Optional<String> away(String personId, PlannedBowl before) {
        int start = question.minuteOf(before.mixStart());
        int end = question.minuteOf(before.mixEnd()) + question.carryMinutes();
        for (Assistant assistant : question.assistants()) {
            if (!assistant.personId().equals(personId)) continue;
            if (assistant.onDuty().stream().noneMatch(duty -> duty.from() <= start && end <= duty.to()))
                return Optional.of(
                        assistant.name() + " is not on duty from " + time(before) + " to " + words.time(end));
            if (start < assistant.busyUntilMinute())
                return Optional.of(
                        assistant.name() + " is at another bowl until " + words.time(assistant.busyUntilMinute()));
            return Optional.empty();
        }
        return Optional.of(words.name(personId) + " does not work today any more");
    }

    /** The mix that now has the person or the scale at the time shown before. */
    private Optional<PlannedBowl> inTheWay(PlannedBowl before) {
        return bowls.stream()
                .filter(bowl -> !bowl.bowl().equals(before.bowl()))
                .filter(bowl -> bowl.personId().equals(before.personId()) && meet(bowl, before, question.carryMinutes())
                        || bowl.scaleId().equals(before.scaleId()) && meet(bowl, before, 0))
                .findFirst();
    }

    private static boolean meet(PlannedBowl one, PlannedBowl other, int carryMinutes) {
        Duration carrying = Duration.ofMinutes(carryMinutes);
        return one.mixStart().isBefore(other.mixEnd().plus(carrying))
                && other.mixStart().isBefore(one.mixEnd().plus(carrying));
    }

    private Optional<String> dropped(PlannedBowl before) {
        int used = question.services().stream()
                .filter(task -> task.service() == before.service())
                .mapToInt(PlanQuestion.ServiceTask::bowlsUsed)
                .findFirst()
                .orElse(-1);
        if (used < 0)
            return Optional.of("Bowl " + before.bowl() + " is not needed any more: its service is over or off.");
        for (int place = 0; place < used; place++)
            if (before.bowl().equals(idOf(before.service(), place))) return Optional.empty();
        return Optional.of("Bowl " + before.bowl() + " is not needed any more: the other bowls suffice.");
    }

    private String idOf(int service, int index) {
        return question.services().stream()
                .filter(task -> task.service() == service)
                .map(task -> ShownPlan.idOf(task, index - task.bowlsUsed()))
                .findFirst()
                .orElse("");
    }
}
