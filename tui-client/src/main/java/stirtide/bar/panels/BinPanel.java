package stirtide.bar.panels;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stirtide.bar.canvas.Pane;
import stirtide.bar.canvas.Style;
import stirtide.bar.keys.Key;
import stirtide.bar.model.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.bar.text.WeightText;
import stirtide.events.command.DayCommand;
import stirtide.events.day.OverMixCause;
import stirtide.events.view.DayView;

/** Throws away what is left in a bowl: grams, cause, then a question. */
public final class BinPanel extends FieldsPanel {
    private static final int COLUMNS = 60;
    private static final int FIELD_COLUMN = 14;
    private static final int FIELD_COLUMNS = 24;

    private final DayView.LiveBowl bowl;
    private final GramsField left;
    private final ChoiceField cause;

    private BinPanel(DayView.LiveBowl bowl, GramsField left, ChoiceField cause) {
        super(List.of(left, cause));
        this.bowl = bowl;
        this.left = left;
        this.cause = cause;
    }

    /** Bins a live bowl; {@code past} says whether its working life is over. */
    public static BinPanel of(DayView.LiveBowl bowl, boolean past) {
        List<String> causes =
                List.of(OverMixCause.values()).stream().map(BinPanel::words).toList();
        int first = (past ? OverMixCause.PAST_LIFE : OverMixCause.LEFT_OVER).ordinal();
        return new BinPanel(bowl, new GramsField("grams left", true), new ChoiceField("because", causes, first));
    }

    /** A cause in words. */
    public static String words(OverMixCause cause) {
        return cause.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    @Override
    public String title() {
        return "BIN  bowl " + bowl.bowl() + "  chair " + bowl.chair() + " " + bowl.clientRef();
    }

    @Override
    public int columns() {
        return COLUMNS;
    }

    @Override
    public int rows() {
        return 6;
    }

    @Override
    public void draw(Pane inside, UiState scene) {
        drawFields(inside, 0, FIELD_COLUMN, FIELD_COLUMNS);
        String mixed = "mixed " + WeightText.grams(mixedMilligrams()) + " g"
                + (bowl.weighed().isPresent() ? "" : " by plan");
        inside.put(1, 2, mixed + "; never close leftovers in a container", Style.DIM);
        drawFoot(inside, 3, onLastField() ? "left, right choose   Enter asks once more" : "Enter next");
    }

    private int mixedMilligrams() {
        int planned = bowl.planned().lightenerMilligrams()
                + bowl.planned().parts().stream()
                        .mapToInt(DayView.PartCard::milligrams)
                        .sum();
        return bowl.weighed()
                .map(weighed -> weighed.lightenerMilligrams() + weighed.developerMilligrams())
                .orElse(planned);
    }

    @Override
    UiEffect complete(Key enter, UiState scene) {
        int grams = left.milligrams().orElseThrow();
        if (bowl.weighed().isPresent() && grams > mixedMilligrams()) {
            return stay("grams left is more than was mixed: takes up to " + WeightText.grams(mixedMilligrams()) + " g");
        }
        var command = new DayCommand.BinBowl(bowl.bowl(), grams, OverMixCause.values()[cause.picked()]);
        String words = "bowl " + bowl.bowl() + " binned, " + WeightText.grams(grams) + " g, " + cause.text();
        var yes = new UiEffect.Send(command, words, Optional.empty());
        return new UiEffect.Open(new ConfirmPanel(
                "BIN?",
                "Throw away " + WeightText.grams(grams) + " g of bowl " + bowl.bowl() + ", " + cause.text() + "?",
                yes,
                scene.nanos()));
    }
}
