package stirtide.bar.entry;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import stirtide.bar.frame.Pane;
import stirtide.bar.scene.Advice;
import stirtide.bar.scene.PanelAnswer;
import stirtide.bar.scene.Scene;
import stirtide.bar.words.TimeText;
import stirtide.bar.words.WeightText;
import stirtide.events.view.DayView;
import stirtide.events.view.GramsView;

/** What to buy, what runs out, what bowls cost, and where the grams of each zone come from. */
public final class GramsPanel extends AskedPanel {
    private static final int NAME_COLUMNS = 32;

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
        ordered.sort(Comparator.comparing(card -> card.runsOutAt().isEmpty()));
        lines.add("The shelf today, grams needed and there, packs to buy for tomorrow:");
        if (!ordered.isEmpty()) lines.add(shelf("", "needed", "there", "runs out", "buy"));
        ordered.forEach(card -> lines.add(shelf(
                card.name(),
                tenths(card.neededMilligrams()),
                card.onShelfMilligrams().map(GramsPanel::tenths).orElse("not counted"),
                card.runsOutAt().map(at -> TimeText.minute(at, scene.zone())).orElse("-"),
                card.packsToBuy() == 0 ? "-" : String.valueOf(card.packsToBuy()))));
        if (ordered.isEmpty()) lines.add("no product is set up");
        lines.add("");
    }

    private static String shelf(String name, String needed, String there, String out, String buy) {
        return String.format(
                Locale.ROOT, "  %-32s %9s %11s %9s %3s", Pane.cut(name, NAME_COLUMNS), needed, there, out, buy);
    }

    private static String tenths(long milligrams) {
        return BigDecimal.valueOf(milligrams, 3)
                .setScale(1, RoundingMode.HALF_UP)
                .toPlainString();
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
