package stirtide.bar.panels.setup;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import stirtide.bar.keys.Key;
import stirtide.bar.keys.KeyAction;
import stirtide.bar.keys.KeyContext;
import stirtide.bar.keys.KeyTable;
import stirtide.bar.model.Inquiry;
import stirtide.bar.model.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.bar.panels.InquiryPanel;
import stirtide.bar.text.WeightText;
import stirtide.events.view.SwatchView;

/** Test swatches of each lightener by strength, time and ratio, and what its pH strips tell. */
public final class TestMixPanel extends InquiryPanel {
    private TestMixPanel() {}

    /** Asks the service and shows what it answers. */
    public static UiEffect ask() {
        return new UiEffect.AskPlanner(new Inquiry.Ask.Tests(), new TestMixPanel());
    }

    @Override
    public KeyContext place() {
        return KeyContext.TESTS;
    }

    @Override
    public String title() {
        return "TEST MIXES";
    }

    @Override
    protected List<String> told(Inquiry.Answer answer, UiState scene) {
        if (!(answer instanceof Inquiry.Answer.Tests told)) return List.of();
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
    public UiEffect press(Key key, boolean machine, UiState scene) {
        KeyAction action =
                KeyTable.action(place(), key, scene.mayWrite(), false).orElse(KeyAction.ERASE);
        boolean records = action == KeyAction.SWATCH || action == KeyAction.STRIP;
        if (!records || machine) return super.press(key, machine, scene);
        if (!(answer(scene).orElse(null) instanceof Inquiry.Answer.Tests told)
                || scene.view().isEmpty()) return new UiEffect.Stay();
        if (told.view().lighteners().isEmpty()) return new UiEffect.Say("no lightener is set up yet");
        var forms = new TestMixForms(told.view(), scene.view().get().date());
        return new UiEffect.Open(action == KeyAction.SWATCH ? forms.swatch() : forms.strip());
    }
}
