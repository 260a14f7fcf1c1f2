package stirtide.bar.panels.setup;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stirtide.bar.keys.Key;
import stirtide.bar.keys.KeyAction;
import stirtide.bar.keys.KeyContext;
import stirtide.bar.keys.KeyTable;
import stirtide.bar.model.Inquiry;
import stirtide.bar.model.Panel.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.bar.panels.list.InquiryText;
import stirtide.bar.panels.list.TextPanel;
import stirtide.bar.text.WeightText;
import stirtide.events.view.SwatchView;
import stirtide.mixing.text.AmountText;

/** Test swatches of each lightener by strength, time and ratio, and the results of its pH strips. */
public final class TestMixPanel {
    private TestMixPanel() {}

    /** Asks the service and shows what it answers. */
    public static UiEffect ask() {
        var panel = new TextPanel(
                KeyContext.TESTS,
                () -> "TEST MIXES",
                state -> InquiryText.lines(state, Inquiry.Answer.Tests.class, tests -> lines(tests.view())),
                TestMixPanel::press);
        return new UiEffect.Ask(new Inquiry.Ask.Tests(), panel);
    }

    private static List<String> lines(SwatchView view) {
        var lines = new ArrayList<String>();
        for (SwatchView.LightenerCard card : view.lighteners()) {
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
        lines.add(view.limits());
        return lines;
    }

    private static String row(SwatchView.LiftCard lift) {
        return row(
                AmountText.ratio(lift.ratioThousandths()),
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

    private static Optional<UiEffect> press(Key key, boolean machine, UiState state) {
        KeyAction action =
                KeyTable.action(KeyContext.TESTS, key, state.mayWrite(), false).orElse(KeyAction.ERASE);
        boolean records = action == KeyAction.SWATCH || action == KeyAction.STRIP;
        return records && !machine ? Optional.of(record(action, state)) : Optional.empty();
    }

    private static UiEffect record(KeyAction action, UiState state) {
        if (!(InquiryText.answer(state).orElse(null) instanceof Inquiry.Answer.Tests tests)
                || state.view().isEmpty()) return new UiEffect.Stay();
        if (tests.view().lighteners().isEmpty()) return new UiEffect.Notify("no lightener is set up yet");
        var forms = new TestMixForms(tests.view(), state.view().get().date(), ask());
        return new UiEffect.Open(action == KeyAction.SWATCH ? forms.swatch() : forms.strip());
    }
}
