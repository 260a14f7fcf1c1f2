package stirtide.bar.panels;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import stirtide.bar.model.UiState;
import stirtide.bar.text.BowlText;
import stirtide.bar.text.WeightText;
import stirtide.events.plan.BowlReason;
import stirtide.events.plan.Plan;
import stirtide.events.view.DayView;

/** Why clients wait, what could not be planned as wished, what the newest plan changed, and the day in figures. */
public final class ReasonsPanel extends TextPanel {
    @Override
    public String title() {
        return "WHY";
    }

    @Override
    protected List<String> sentences(UiState scene) {
        return scene.view().map(ReasonsPanel::of).orElse(List.of("nothing heard from the service yet"));
    }

    private static List<String> of(DayView view) {
        var sentences = new ArrayList<String>();
        if (!view.alarms().isEmpty()) {
            add(sentences, "Alarms:", view.alarms(), alarm -> alarm.priority() + "  " + alarm.sentence(), "");
        }
        add(sentences, "Clients wait:", view.waits(), Plan.WaitReason::sentence, "nobody waits for the bar");
        add(
                sentences,
                "Not as wished:",
                view.notes(),
                note -> "service " + note.service() + ": " + note.sentence(),
                "everything is planned as wished");
        List<String> proof = view.planTotals().map(Plan.PlanTotals::proof).orElse(List.of());
        if (!proof.isEmpty()) add(sentences, "How good the plan is:", proof, sentence -> sentence, "");
        List<BowlReason> bowls =
                view.planTotals().map(Plan.PlanTotals::bowlReasons).orElse(List.of());
        if (!bowls.isEmpty()) add(sentences, "Bowls that cannot be saved:", bowls, BowlReason::sentence, "");
        add(sentences, "Changed by the newest plan:", view.changes(), change -> change, "nothing");
        sentences.add("The day so far:");
        sentences.addAll(totals(view));
        return sentences;
    }

    private static <T> void add(
            List<String> sentences, String heading, List<T> rows, Function<T, String> words, String none) {
        sentences.add(heading);
        if (rows.isEmpty()) sentences.add(none);
        rows.forEach(row -> sentences.add(words.apply(row)));
        sentences.add("");
    }

    private static List<String> totals(DayView view) {
        DayView.DayTotals totals = view.totals();
        var lines = new ArrayList<String>();
        lines.add(BowlText.count(totals.bowlsMixed()) + ", " + WeightText.wholeGrams(totals.mixedMilligrams())
                + " g mixed, " + WeightText.wholeGrams(totals.appliedMilligrams()) + " g applied");
        lines.add("over-mixed " + WeightText.wholeGrams(totals.overMixedMilligrams()) + " g");
        totals.overMixedByCause()
                .forEach((cause, grams) -> lines.add(WeightText.wholeGrams(grams) + " g "
                        + cause.toLowerCase(Locale.ROOT).replace('_', ' ')));
        return lines;
    }
}
