package stirtide.bar.panels.weighing;

import java.util.Arrays;
import java.util.List;
import stirtide.bar.model.Panel;
import stirtide.bar.model.Panel.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.bar.panels.form.ChoiceField;
import stirtide.bar.panels.form.ConfirmPanel;
import stirtide.bar.panels.form.FormPanel;
import stirtide.bar.panels.form.GramsField;
import stirtide.bar.text.CodeText;
import stirtide.bar.text.WeightText;
import stirtide.events.command.DayCommand;
import stirtide.events.day.OverMixCause;
import stirtide.events.view.DayView;

/** Discards what is left in a bowl: grams and cause, then a question. */
public final class BinPanel {
    private static final FormPanel.Layout LAYOUT = new FormPanel.Layout(60, 6, 0, 3, 14, 24);

    private BinPanel() {}

    /** Discards a live bowl; {@code past} says whether its working life is over. */
    public static Panel of(DayView.LiveBowl bowl, boolean past) {
        var left = new GramsField("grams left", true);
        int first = (past ? OverMixCause.PAST_LIFE : OverMixCause.LEFT_OVER).ordinal();
        var cause = new ChoiceField("because", causes(), first);
        String mixed = "mixed " + WeightText.grams(mixedMilligrams(bowl)) + " g"
                + (bowl.weighed().isPresent() ? "" : " by plan");
        return new FormPanel(
                        "BIN  bowl " + bowl.bowl() + "  chair " + bowl.chair() + " " + bowl.clientRef(),
                        LAYOUT,
                        List.of(left, cause),
                        state -> submit(bowl, left.milligrams().orElseThrow(), cause, state))
                .note(mixed + "; never close leftovers in a container")
                .keys("Enter next", "left, right choose   Enter asks once more");
    }

    /** All causes in words, in the order of {@link OverMixCause}. */
    public static List<String> causes() {
        return Arrays.stream(OverMixCause.values())
                .map(cause -> CodeText.words(cause.name()))
                .toList();
    }

    private static int mixedMilligrams(DayView.LiveBowl bowl) {
        int planned = bowl.planned().lightenerMilligrams()
                + bowl.planned().parts().stream()
                        .mapToInt(DayView.PartCard::milligrams)
                        .sum();
        return bowl.weighed()
                .map(weighed -> weighed.lightenerMilligrams() + weighed.developerMilligrams())
                .orElse(planned);
    }

    private static UiEffect submit(DayView.LiveBowl bowl, int milligrams, ChoiceField cause, UiState state) {
        int mixed = mixedMilligrams(bowl);
        if (bowl.weighed().isPresent() && milligrams > mixed)
            return new UiEffect.Stay(
                    "grams left is more than was mixed: takes up to " + WeightText.grams(mixed) + " g");
        var command = new DayCommand.BinBowl(bowl.bowl(), milligrams, OverMixCause.values()[cause.picked()]);
        String grams = WeightText.grams(milligrams) + " g";
        var yes = new UiEffect.Send(command, "bowl " + bowl.bowl() + " binned, " + grams + ", " + cause.text());
        String sentence = "Throw away " + grams + " of bowl " + bowl.bowl() + ", " + cause.text() + "?";
        return new UiEffect.Open(new ConfirmPanel("BIN?", sentence, yes, state.nanos()));
    }
}
