package stirtide.bar.panels.details;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import stirtide.bar.canvas.Pane;
import stirtide.bar.model.Inquiry;
import stirtide.bar.model.Panel.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.bar.panels.list.InquiryText;
import stirtide.bar.panels.list.TextPanel;
import stirtide.bar.text.WeightText;
import stirtide.events.view.DayView;
import stirtide.events.view.GramsView;

/** What to buy, what runs out, what bowls cost, and where the grams of each zone come from. */
public final class GramsAndCostsPanel {
    private static final int NAME_COLUMNS = 32;

    private GramsAndCostsPanel() {}

    /** Asks the service and shows what it answers. */
    public static UiEffect ask() {
        var panel = new TextPanel(
                "GRAMS AND COSTS",
                state -> InquiryText.lines(state, Inquiry.Answer.Grams.class, grams -> lines(grams.view(), state)));
        return new UiEffect.Ask(new Inquiry.Ask.Grams(), panel);
    }

    private static List<String> lines(GramsView view, UiState state) {
        var lines = new ArrayList<String>();
        TextPanel.addPart(
                lines, "To buy for tomorrow:", view.shopping(), line -> line, "nothing is known to be missing");
        state.view().ifPresent(day -> shelf(lines, day, state));
        TextPanel.addPart(
                lines,
                "What bowls cost, " + view.currency() + ":",
                view.bowls(),
                GramsAndCostsPanel::bowl,
                "no bowl is begun or planned");
        TextPanel.addPart(
                lines, "A thicker mix against a thinner one:", view.mixes(), GramsView.MixCostCard::sentence, "none");
        lines.add("Waiting:");
        lines.add(view.waiting().sentence());
        lines.add("");
        TextPanel.addPart(
                lines,
                "Where the grams come from:",
                view.allowances(),
                zone -> "service " + zone.service() + " " + zone.zone() + ": " + zone.sentence(),
                "every zone is applied");
        TextPanel.addPart(
                lines, "How often they are to be enough:", fractions(view), line -> line, "every zone is applied");
        TextPanel.addPart(
                lines, "Set by managers:", set(view), line -> line, "no grams are pinned and nothing was reset");
        return lines;
    }

    /** What is said of a fraction stands once, with the zones it holds for when it is not one for all. */
    private static List<String> fractions(GramsView view) {
        var zones = new LinkedHashMap<String, Set<String>>();
        for (GramsView.AllowanceCard card : view.allowances())
            zones.computeIfAbsent(
                            inHundred(card.fractionPermille()) + " times in 100: " + card.fractionSentence(),
                            sentence -> new LinkedHashSet<>())
                    .add(card.zone());
        return zones.entrySet().stream()
                .map(entry -> zones.size() == 1
                        ? entry.getKey()
                        : String.join(", ", entry.getValue()) + ": " + entry.getKey())
                .toList();
    }

    private static List<String> set(GramsView view) {
        var lines = new ArrayList<String>();
        if (view.fixedBy().equals("MANAGER"))
            view.fixedPermille().ifPresent(permille -> lines.add("enough " + inHundred(permille) + " times in 100"));
        view.pins().forEach(pin -> lines.add(pin(pin)));
        return lines;
    }

    private static String inHundred(int permille) {
        return BigDecimal.valueOf(permille, 1).stripTrailingZeros().toPlainString();
    }

    private static void shelf(List<String> lines, DayView day, UiState state) {
        var ordered = new ArrayList<>(day.stock());
        ordered.sort(Comparator.comparing(card -> card.runsOutAt().isEmpty()));
        lines.add("The shelf today, grams needed and there, packs to buy for tomorrow:");
        if (!ordered.isEmpty()) lines.add(shelf("", "needed", "there", "runs out", "buy"));
        ordered.forEach(card -> lines.add(shelf(
                card.name(),
                tenths(card.neededMilligrams()),
                card.onShelfMilligrams().map(GramsAndCostsPanel::tenths).orElse("not counted"),
                card.runsOutAt().map(at -> state.minute(at)).orElse("-"),
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

    private static String bowl(GramsView.BowlCostCard bowl) {
        return String.format(
                Locale.ROOT,
                "  %-5s %-8s %9s g %10s   a gram %s",
                bowl.bowl(),
                bowl.begun() ? "begun" : "to come",
                WeightText.grams(bowl.mixedMilligrams()),
                bowl.cost().toPlainString(),
                bowl.costPerGram().toPlainString());
    }

    private static String pin(GramsView.PinCard pin) {
        return pin.menuId() + " " + pin.zone()
                + pin.pinnedMilligrams()
                        .map(grams -> ", pinned at " + WeightText.grams(grams) + " g")
                        .orElse("")
                + (pin.resetOn().isEmpty() ? "" : ", learned anew from " + pin.resetOn() + " on");
    }
}
