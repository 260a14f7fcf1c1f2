package stirtide.bar.panels.details;

import java.util.ArrayList;
import java.util.List;
import stirtide.bar.model.Panel;
import stirtide.bar.model.UiState;
import stirtide.bar.panels.list.TextPanel;
import stirtide.bar.text.CodeText;
import stirtide.bar.text.CountText;
import stirtide.bar.text.WeightText;
import stirtide.events.plan.BowlReason;
import stirtide.events.plan.Plan;
import stirtide.events.view.DayTotals;
import stirtide.events.view.DayView;

/** Why clients wait, what could not be planned as wished, what the newest plan changed, and the day in figures. */
public final class ReasonsPanel {
    private ReasonsPanel() {}

    /** Reads them from the newest view of the day. */
    public static Panel of() {
        return new TextPanel("WHY", ReasonsPanel::lines);
    }

    static List<String> lines(UiState state) {
        var lines = new ArrayList<String>();
        String why = state.link().why();
        if (!why.isEmpty()) TextPanel.addPart(lines, "No link to the service:", List.of(why), line -> line, "");
        if (!state.told().isEmpty()) TextPanel.addPart(lines, "Said of late:", state.told(), line -> line, "");
        lines.addAll(state.view().map(ReasonsPanel::lines).orElse(List.of("nothing heard from the service yet")));
        return lines;
    }

    private static List<String> lines(DayView view) {
        var lines = new ArrayList<String>();
        if (!view.alarms().isEmpty()) {
            TextPanel.addPart(lines, "Alarms:", view.alarms(), alarm -> alarm.priority() + "  " + alarm.sentence(), "");
        }
        TextPanel.addPart(
                lines, "Clients wait:", view.waits(), Plan.WaitReason::sentence, "no client waits for the bar");
        TextPanel.addPart(
                lines,
                "Not as wished:",
                view.notes(),
                note -> "service " + note.service() + ": " + note.sentence(),
                "everything is planned as wished");
        // Of a plan without bowls there is nothing to prove.
        List<String> proof = view.planTotals()
                .filter(totals -> totals.bowlCount() > 0)
                .map(Plan.PlanTotals::proof)
                .orElse(List.of());
        if (!proof.isEmpty()) TextPanel.addPart(lines, "How good the plan is:", proof, sentence -> sentence, "");
        List<BowlReason> bowls =
                view.planTotals().map(Plan.PlanTotals::bowlReasons).orElse(List.of());
        if (!bowls.isEmpty()) TextPanel.addPart(lines, "Why not fewer bowls:", bowls, BowlReason::sentence, "");
        TextPanel.addPart(lines, "Changed by the newest plan:", view.changes(), change -> change, "nothing");
        lines.add("The day so far:");
        lines.addAll(totals(view));
        return lines;
    }

    private static List<String> totals(DayView view) {
        DayTotals totals = view.totals();
        var lines = new ArrayList<String>();
        lines.add(CountText.of(totals.bowlsMixed(), "bowl") + ", " + WeightText.wholeGrams(totals.mixedMilligrams())
                + " g mixed, " + WeightText.wholeGrams(totals.appliedMilligrams()) + " g applied");
        lines.add("over-mixed " + WeightText.wholeGrams(totals.overMixedMilligrams()) + " g");
        totals.overMixedByCause()
                .forEach((cause, grams) -> lines.add(WeightText.wholeGrams(grams) + " g " + CodeText.words(cause)));
        return lines;
    }
}
