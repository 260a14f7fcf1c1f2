package stirtide.bar.panels.details;

import java.util.ArrayList;
import java.util.List;
import stirtide.bar.model.Panel;
import stirtide.bar.model.UiState;
import stirtide.bar.panels.list.TextPanel;
import stirtide.bar.text.BatchText;
import stirtide.bar.text.BowlText;
import stirtide.bar.text.ClientTestText;
import stirtide.bar.text.CodeText;
import stirtide.bar.text.WeightText;
import stirtide.events.plan.Plan;
import stirtide.events.plan.PlannedBowl;
import stirtide.events.view.DayView;
import stirtide.mixing.strength.BowlStrength;
import stirtide.mixing.text.AmountText;
import stirtide.mixing.weighing.Ratios;

/** One bowl in full: cautions first, then times and weights, then why its client waits. */
public final class BowlPanel {
    private static final int MINUTE_MILLIS = 60_000;

    private BowlPanel() {}

    /** Shows a bowl of the queue or a live one. */
    public static Panel of(String bowl) {
        return new TextPanel("BOWL " + bowl, state -> lines(bowl, state));
    }

    static List<String> lines(String bowl, UiState state) {
        if (state.view().isEmpty()) return List.of();
        DayView view = state.view().get();
        return view.queued(bowl)
                .map(row -> queued(row, view, state))
                .or(() -> view.live(bowl).map(row -> live(row, view, state)))
                .orElse(List.of("this bowl is no longer in the queue or live"));
    }

    private static List<String> queued(DayView.QueuedBowl row, DayView view, UiState state) {
        PlannedBowl planned = row.bowl();
        var lines = new ArrayList<String>();
        if (!row.cautions().isEmpty()) {
            lines.add("First bowl of " + row.lightenerName() + " today, read the maker's directions:");
            lines.addAll(row.cautions());
            lines.add("");
        }
        List<DayView.TestCard> tests = ClientTestText.open(view, planned.service());
        if (!tests.isEmpty()) {
            lines.add(ClientTestText.shortly(view, planned.service()) + ":");
            tests.forEach(test -> lines.add(test.sentence()));
            lines.add("");
        }
        lines.add("For chair " + planned.chair() + " " + row.clientRef() + ":");
        lines.add(String.join(", ", planned.zones()));
        lines.add("mix " + state.minute(planned.mixStart()) + " to " + state.minute(planned.mixEnd()) + ", used "
                + state.minute(planned.neededFrom()) + " to " + state.minute(planned.neededTo()) + ", life ends "
                + state.minute(planned.lifeEnds()));
        lines.add(
                planned.personId().map(person -> state.name(person) + " mixes").orElse("the stylist mixes")
                        + ", scale: " + planned.scaleId() + ", bowl size: " + planned.bowlSizeId());
        lines.add("");
        row.batch().ifPresent(batch -> {
            lines.add("One mix, two bowls: " + BatchText.bowls(batch) + ", " + BatchText.chairs(batch));
            lines.add("together " + BatchText.weights(batch));
            lines.add("then divide by weight: " + BatchText.shares(batch) + "; both live from the start of the mix");
            lines.add("m asks whether to mix both or this bowl alone; alone it is:");
            lines.add("");
        });
        lines.addAll(weights(row));
        lines.addAll(waits(planned, view));
        return lines;
    }

    private static List<String> weights(DayView.QueuedBowl row) {
        var lines = new ArrayList<String>();
        var formula = row.bowl().formula();
        lines.add("To weigh:");
        lines.add(WeightText.grams(formula.lightenerMilligrams()) + " g  " + row.lightenerName());
        for (DayView.PartCard part : row.parts())
            lines.add(WeightText.grams(part.milligrams()) + " g  "
                    + WeightText.liquid(part.strengthHundredths(), part.name()));
        int ratio = Ratios.thousandths(Math.max(1, formula.lightenerMilligrams()), formula.developerMilligrams());
        lines.add("ratio " + AmountText.ratio(ratio) + ", directions "
                + AmountText.ratio(formula.lowestRatioThousandths()) + " to "
                + AmountText.ratio(formula.highestRatioThousandths()) + ", liquids together "
                + AmountText.percent(formula.strengthHundredths()) + ", in the bowl "
                + AmountText.percent(BowlStrength.hundredths(formula)));
        lines.add("makes " + WeightText.grams(formula.totalMilligrams()) + " g: "
                + WeightText.grams(row.bowl().neededMilligrams()) + " g for the hair, "
                + WeightText.grams(row.bowl().residueMilligrams()) + " g stay on bowl and brush");
        lines.add("this scale errs: the true ratio is " + AmountText.ratio(formula.worstLowRatioThousandths()) + " to "
                + AmountText.ratio(formula.worstHighRatioThousandths()));
        if (!row.allowances().isEmpty()) {
            lines.add("");
            lines.add("Why so many grams:");
            lines.addAll(row.allowances());
        }
        return lines;
    }

    private static List<String> waits(PlannedBowl planned, DayView view) {
        var lines = new ArrayList<String>();
        for (Plan.WaitReason wait : view.waits()) {
            if (wait.services().contains(planned.service())) lines.add(wait.sentence());
        }
        for (Plan.PlanNote note : view.notes()) {
            if (note.service() == planned.service()) lines.add(note.sentence());
        }
        view.planTotals().stream()
                .flatMap(totals -> totals.bowlReasons().stream())
                .filter(reason -> reason.concerns(planned))
                .forEach(reason -> lines.add(reason.sentence()));
        if (planned.waitMinutes() > 0) lines.add(0, "the client waits " + planned.waitMinutes() + " min for it");
        if (lines.isEmpty()) return lines;
        lines.add(0, "Why:");
        lines.add(0, "");
        return lines;
    }

    private static List<String> live(DayView.LiveBowl row, DayView view, UiState state) {
        var lines = new ArrayList<String>();
        long minutes = (state.now().toEpochMilli() - row.mixStart().toEpochMilli()) / MINUTE_MILLIS;
        lines.add("At chair " + row.chair() + " " + row.clientRef() + ", " + CodeText.words(row.stage()) + ":");
        lines.add(String.join(", ", BowlText.zones(row, view)));
        lines.add("begun " + state.minute(row.mixStart()) + " by " + row.personName() + ", " + minutes
                + " min ago; life of " + row.lifeMinutes() + " min ends " + state.minute(row.lifeEnds()));
        row.neededUntil().ifPresent(until -> lines.add("needed until " + state.minute(until)));
        lines.add("");
        row.batch().ifPresent(batch -> {
            lines.add("One mix with bowl " + BatchText.other(batch, row.bowl())
                    + (batch.divided() ? ", divided" : ", not divided yet") + ": " + BatchText.weights(batch));
            lines.add("planned: " + BatchText.shares(batch));
        });
        lines.add("Planned and weighed:");
        lines.add("planned " + WeightText.grams(row.planned().lightenerMilligrams()) + " g "
                + row.planned().lightenerName());
        for (DayView.PartCard part : row.planned().parts()) {
            lines.add("planned " + WeightText.part(part));
        }
        lines.add(row.weighed()
                .map(weighed -> "weighed " + WeightText.grams(weighed.lightenerMilligrams()) + " + "
                        + WeightText.grams(weighed.developerMilligrams()) + " g, ratio "
                        + AmountText.ratio(weighed.ratioThousandths())
                        + (weighed.insideDirections() ? ", inside the directions" : ", OUTSIDE THE DIRECTIONS"))
                .orElse("not weighed yet"));
        return lines;
    }
}
