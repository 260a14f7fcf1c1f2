package stirtide.bar.setup;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import stirtide.bar.entry.AskedPanel;
import stirtide.bar.keys.Action;
import stirtide.bar.keys.Key;
import stirtide.bar.keys.KeyTable;
import stirtide.bar.keys.Place;
import stirtide.bar.scene.Advice;
import stirtide.bar.scene.PanelAnswer;
import stirtide.bar.scene.Scene;
import stirtide.bar.words.WeightText;
import stirtide.events.view.SwatchView;

/** Test swatches of each lightener by strength, time and ratio, and what its pH strips tell. */
public final class TestMixPanel extends AskedPanel {
    private TestMixPanel() {}

    /** Asks the service and shows what it answers. */
    public static PanelAnswer ask() {
        return new PanelAnswer.AskPlanner(new Advice.Ask.Tests(), new TestMixPanel());
    }

    @Override
    public Place place() {
        return Place.TESTS;
    }

    @Override
    public String title() {
        return "TEST MIXES";
    }

    @Override
    protected List<String> told(Advice.Answer answer, Scene scene) {
        if (!(answer instanceof Advice.Answer.Tests told)) return List.of();
        var lines = new ArrayList<String>();
        for (SwatchView.LightenerCard card : told.view().lighteners()) {
            lines.add(card.name() + ":");
            if (!card.lifts().isEmpty())
                lines.add(row("ratio", "developer", "minutes", "lifted", "spread", "swatches"));
            card.lifts().forEach(lift -> lines.add(row(lift)));
            if (card.lifts().isEmpty()) lines.add("no swatch is recorded");
            card.strips().forEach(strip -> lines.add("strip " + strip.on() + "  " + strip.sentence()));
            if (card.strips().isEmpty()) lines.add("no strip is recorded");
            lines.addAll(card.comparisons());
            lines.add("");
        }
        lines.add("What a strip does not tell:");
        lines.add(told.view().limits());
        return lines;
    }

    private static String row(SwatchView.LiftCard lift) {
        return row(
                WeightText.ratio(lift.ratioThousandths()),
                WeightText.strength(lift.strengthHundredths()),
                String.valueOf(lift.minutes()),
                levels(lift.meanLiftHundredths()),
                lift.spreadHundredths().map(TestMixPanel::levels).orElse("-"),
                String.valueOf(lift.swatches()));
    }

    private static String levels(int hundredths) {
        return BigDecimal.valueOf(hundredths, 2)
                .setScale(1, RoundingMode.HALF_UP)
                .toPlainString();
    }

    private static String row(String ratio, String developer, String minutes, String lift, String spread, String n) {
        return String.format(Locale.ROOT, "  %-8s %-17s %7s %8s %8s %9s", ratio, developer, minutes, lift, spread, n);
    }

    @Override
    public PanelAnswer press(Key key, boolean machine, Scene scene) {
        Action action = KeyTable.action(place(), key, scene.mayWrite(), false).orElse(Action.ERASE);
        boolean records = action == Action.SWATCH || action == Action.STRIP;
        if (!records || machine) return super.press(key, machine, scene);
        if (!(answer(scene).orElse(null) instanceof Advice.Answer.Tests told)
                || scene.view().isEmpty()) return new PanelAnswer.Stay();
        if (told.view().lighteners().isEmpty()) return new PanelAnswer.Say("no lightener is set up yet");
        var forms = new TestMixForms(told.view(), scene.view().get().date());
        return new PanelAnswer.Open(action == Action.SWATCH ? forms.swatch() : forms.strip());
    }
}
