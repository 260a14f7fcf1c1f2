package stirtide.bar.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import stirtide.bar.scene.Advice;
import stirtide.bar.scene.PanelAnswer;
import stirtide.bar.scene.Scene;
import stirtide.bar.words.TimeText;
import stirtide.bar.words.WeightText;
import stirtide.events.view.DayView;
import stirtide.events.view.GramsView;

/** What to buy, what runs out, what bowls cost, and where the grams of each zone come from. */
public final class GramsPanel extends AskedPanel {
    private GramsPanel() {}

    /** Asks the service and shows what it answers. */
    public static PanelAnswer ask() {
        return new PanelAnswer.AskPlanner(new Advice.Ask.Grams(), new GramsPanel());
    }

    @Override
    public String title() {
        return "GRAMS AND COSTS";
    }

    @Override
    protected List<String> told(Advice.Answer answer, Scene scene) {
        if (!(answer instanceof Advice.Answer.Grams grams)) return List.of();
        GramsView view = grams.view();
        var lines = new ArrayList<String>();
        part(lines, "To buy for tomorrow:", view.shopping(), line -> line, "nothing is known to be missing");
        scene.view().ifPresent(day -> shelf(lines, day, scene));
        part(
                lines,
                "What bowls cost, " + view.currency() + ":",
                view.bowls(),
                GramsPanel::bowl,
                "no bowl is begun or planned");
        part(lines, "A thicker mix against a thinner one:", view.mixes(), GramsView.MixCostCard::sentence, "none");
        lines.add("Waiting:");
        lines.add(view.waiting().sentence());
        lines.add("");
        part(
                lines,
                "Where the grams come from:",
                view.allowances(),
                zone -> "service " + zone.service() + " " + zone.zone() + ": " + zone.sentence() + "; "
                        + zone.fractionSentence(),
                "every zone is applied");
        part(lines, "Set by managers:", view.pins(), GramsPanel::pin, "no grams are pinned and nothing was reset");
        return lines;
    }

    private static void shelf(List<String> lines, DayView day, Scene scene) {
        var ordered = new ArrayList<>(day.stock());
        ordered.sort((one, other) ->
                Boolean.compare(one.runsOutAt().isEmpty(), other.runsOutAt().isEmpty()));
        part(
                lines,
                "The shelf today:",
                ordered,
                line -> line.runsOutAt()
                                .map(at -> "RUNS OUT " + TimeText.minute(at, scene.zone()) + "  ")
                                .orElse("")
                        + line.sentence()
                        + (line.packsToOpen() == 0 ? "" : "; " + line.packsToOpen() + " packs' worth to be opened"),
                "no product is set up");
    }

    private static <T> void part(
            List<String> lines, String heading, List<T> rows, Function<T, String> words, String none) {
        lines.add(heading);
        if (rows.isEmpty()) lines.add(none);
        rows.forEach(row -> lines.add(words.apply(row)));
        lines.add("");
    }

    private static String bowl(GramsView.BowlCostCard bowl) {
        return String.format(
                Locale.ROOT,
                "  %-5s %-8s %9s g %10s   a gram %s",
                bowl.bowl(),
                bowl.begun() ? "begun" : "to come",
                WeightText.grams(bowl.mixedMilligrams()),
                bowl.cost().toPlainString(),
                bowl.costPerGram().stripTrailingZeros().toPlainString());
    }

    private static String pin(GramsView.PinCard pin) {
        return pin.menuId() + " " + pin.zone()
                + pin.pinnedMilligrams()
                        .map(grams -> ", pinned at " + WeightText.grams(grams) + " g")
                        .orElse("")
                + (pin.resetOn().isEmpty() ? "" : ", learned anew from " + pin.resetOn() + " on");
    }
}
