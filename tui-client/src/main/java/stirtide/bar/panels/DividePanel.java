package stirtide.bar.panels;

import java.util.List;
import stirtide.bar.canvas.Pane;
import stirtide.bar.canvas.Style;
import stirtide.bar.keys.Key;
import stirtide.bar.model.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.bar.text.BatchText;
import stirtide.bar.text.WeightText;
import stirtide.events.command.DayCommand;
import stirtide.events.view.DayView.BatchCard;

/** Divides one mix by weight: what was poured into the second bowl; the rest stays where it was mixed. */
public final class DividePanel extends FieldsPanel {
    private static final int COLUMNS = 70;
    private static final int FIELD_COLUMN = 22;
    private static final long SECOND_ENTER_NANOS = 300_000_000L;
    private static final long NEVER = Long.MIN_VALUE;

    private final BatchCard batch;
    private final int wholeMilligrams;
    private final GramsField poured;
    private long warnedAtNanos = NEVER;

    /**
     * Asks for the share of the second bowl.
     *
     * @param batch the mix
     * @param wholeMilligrams what was weighed, all together
     */
    public DividePanel(BatchCard batch, int wholeMilligrams) {
        this(
                batch,
                wholeMilligrams,
                new GramsField("poured into " + batch.pouredInto().bowl(), false));
    }

    private DividePanel(BatchCard batch, int wholeMilligrams, GramsField poured) {
        super(List.of(poured));
        this.batch = batch;
        this.wholeMilligrams = wholeMilligrams;
        this.poured = poured;
    }

    @Override
    public String title() {
        return "DIVIDE  one mix, two bowls: " + BatchText.bowls(batch);
    }

    @Override
    public int columns() {
        return COLUMNS;
    }

    @Override
    public int rows() {
        return 7;
    }

    @Override
    public String standsOnBowl() {
        return batch.mixedIn().bowl();
    }

    @Override
    void edited() {
        warnedAtNanos = NEVER;
    }

    @Override
    public UiEffect press(Key key, boolean machine, UiState scene) {
        return fromScale(poured, key, scene).orElseGet(() -> super.press(key, machine, scene));
    }

    private int grams() {
        return poured.milligrams().orElseThrow();
    }

    private int limit() {
        return GramsField.usualLimit(batch.pouredInto().milligrams());
    }

    private boolean far() {
        return Math.abs(grams() - batch.pouredInto().milligrams()) > limit();
    }

    @Override
    UiEffect complete(Key enter, UiState scene) {
        if (grams() >= wholeMilligrams)
            return stay("the whole mix is " + WeightText.grams(wholeMilligrams) + " g: takes less than that");
        boolean first = warnedAtNanos == NEVER;
        boolean tooSoon = !first && enter.nanos() - warnedAtNanos < SECOND_ENTER_NANOS;
        if (far() && (first || tooSoon)) {
            if (first) warnedAtNanos = enter.nanos();
            return stay("planned " + WeightText.grams(batch.pouredInto().milligrams()) + " g, usual limit "
                    + WeightText.grams(limit()) + " g");
        }
        String bowl = batch.mixedIn().bowl();
        return new UiEffect.Send(
                new DayCommand.DivideBatch(bowl, grams()),
                "mix divided: " + WeightText.grams(wholeMilligrams - grams()) + " g in " + bowl + ", "
                        + WeightText.grams(grams()) + " g in "
                        + batch.pouredInto().bowl(),
                java.util.Optional.empty());
    }

    @Override
    public void draw(Pane inside, UiState scene) {
        inside.put(
                1,
                0,
                WeightText.grams(wholeMilligrams) + " g in " + batch.mixedIn().bowl() + ";  planned: "
                        + BatchText.shares(batch),
                Style.TEXT);
        drawFields(inside, 2, FIELD_COLUMN, GramsField.LONGEST + 1);
        poured.milligrams()
                .ifPresent(grams -> inside.put(
                        FIELD_COLUMN + GramsField.LONGEST + 4,
                        2,
                        "leaves " + WeightText.grams(Math.max(0, wholeMilligrams - grams)) + " g in "
                                + batch.mixedIn().bowl(),
                        Style.TEXT));
        inside.put(1, 3, "second bowl on the scale, zero it, pour; both live from one minute", Style.DIM);
        drawFoot(inside, 4, warnedAtNanos == NEVER ? enterWords("Enter records", scene) : "Enter again keeps");
        String scale = Pane.cut(scene.scale().words(), COLUMNS / 2);
        inside.put(inside.width() - 1 - scale.length(), 6, scale, Style.TEXT);
    }
}
