package stirtide.bar.controller;

import java.util.Optional;
import stirtide.bar.text.WeightText;
import stirtide.events.command.DayCommand;
import stirtide.events.plan.Plan;
import stirtide.events.view.DayView;

/**
 * Remembers the plan before a move and reports what the plan after it made better or worse: once, when no better
 * one is looked for any more.
 */
final class MoveComparison {
    private Optional<Before> before = Optional.empty();

    private record Before(DayCommand.MoveService move, Optional<Plan.PlanTotals> totals, long revision) {}

    void sent(DayCommand command, Optional<DayView> view) {
        if (command instanceof DayCommand.MoveService move && view.isPresent()) {
            before = Optional.of(
                    new Before(move, view.get().planTotals(), view.get().revision()));
        }
    }

    /** A sentence when this view is the first that knows the move and has the last plan for it. */
    Optional<String> seen(DayView view) {
        if (before.isEmpty()
                || !view.planSettled()
                || view.betterPlanSought()
                || view.revision() <= before.get().revision()) {
            return Optional.empty();
        }
        Before old = before.get();
        boolean known = view.services().stream()
                .anyMatch(card -> card.service() == old.move().service()
                        && card.bookedStart().equals(old.move().start()));
        if (!known) return Optional.empty();
        before = Optional.empty();
        return Optional.of("service " + old.move().service() + " moved: " + compare(old.totals(), view.planTotals()));
    }

    private static String compare(Optional<Plan.PlanTotals> before, Optional<Plan.PlanTotals> after) {
        if (before.isEmpty() || after.isEmpty()) return "the plan is drawn anew";
        Plan.PlanTotals was = before.get();
        Plan.PlanTotals is = after.get();
        return "clients wait " + was.waitMinutes() + " -> " + is.waitMinutes() + " min, bowls to mix "
                + was.bowlCount() + " -> " + is.bowlCount() + ", left in bowls "
                + WeightText.wholeGrams(was.overMixMilligrams()) + " -> "
                + WeightText.wholeGrams(is.overMixMilligrams()) + " g";
    }
}
