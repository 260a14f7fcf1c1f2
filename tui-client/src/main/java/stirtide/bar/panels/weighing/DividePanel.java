package stirtide.bar.panels.weighing;

import java.util.List;
import java.util.Optional;
import stirtide.bar.canvas.Pane;
import stirtide.bar.canvas.Style;
import stirtide.bar.keys.Key;
import stirtide.bar.keys.KeyContext;
import stirtide.bar.model.Panel;
import stirtide.bar.model.Panel.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.bar.panels.form.FieldSet;
import stirtide.bar.panels.form.GramsField;
import stirtide.bar.panels.form.RepeatedEnter;
import stirtide.bar.text.BatchText;
import stirtide.bar.text.WeightText;
import stirtide.events.command.DayCommand;
import stirtide.events.view.DayView.BatchCard;

/** Divides one mix by weight: what was poured into the second bowl; the rest stays where it was mixed. */
public final class DividePanel implements Panel, FieldSet.Form {
    private static final int COLUMNS = 70;
    private static final FieldSet.Columns FIELD = FieldSet.Columns.at(22, GramsField.LONGEST + 1);

    private final BatchCard batch;
    private final int wholeMilligrams;
    private final GramsField poured;
    private final FieldSet fields;
    private final RepeatedEnter warning = new RepeatedEnter();

    /**
     * Asks for the share of the second bowl.
     *
     * @param batch the mix
     * @param wholeMilligrams what was weighed, all together
     */
    public DividePanel(BatchCard batch, int wholeMilligrams) {
        this.batch = batch;
        this.wholeMilligrams = wholeMilligrams;
        poured = new GramsField("poured into " + batch.pouredInto().bowl(), false);
        fields = new FieldSet(this, List.of(poured)).withScale();
    }

    @Override
    public Frame frame() {
        return new Frame(
                KeyContext.FIELDS,
                "DIVIDE  one mix, two bowls: " + BatchText.bowls(batch),
                COLUMNS,
                7 + fields.moreReasonRows(COLUMNS));
    }

    @Override
    public void draw(Pane inside, UiState state) {
        String mixedIn = batch.mixedIn().bowl();
        String shares = ";  planned: " + BatchText.shares(batch);
        inside.put(1, 0, WeightText.grams(wholeMilligrams) + " g in " + mixedIn + shares, Style.TEXT);
        fields.draw(inside, 2, FIELD);
        poured.milligrams().ifPresent(grams -> {
            String rest = WeightText.grams(Math.max(0, wholeMilligrams - grams));
            inside.put(FIELD.field() + FIELD.width() + 3, 2, "leaves " + rest + " g in " + mixedIn, Style.TEXT);
        });
        inside.put(1, 3, "second bowl on the scale, zero it, pour; both live from one minute", Style.DIM);
        fields.drawFoot(
                inside, 4, warning.isWarning() ? "Enter again keeps" : fields.enterWords("Enter records", state));
        String scale = Pane.cut(state.scale().words(), COLUMNS / 2);
        inside.put(inside.width() - 1 - scale.length(), inside.height() - 1, scale, Style.TEXT);
    }

    @Override
    public UiEffect press(Key key, boolean machine, UiState state) {
        return fields.press(key, machine, state);
    }

    @Override
    public void edited() {
        warning.reset();
    }

    @Override
    public UiEffect submit(Key enter, UiState state) {
        int milligrams = poured.milligrams().orElseThrow();
        if (milligrams >= wholeMilligrams)
            return fields.stay("the whole mix is " + WeightText.grams(wholeMilligrams) + " g: takes less than that");
        int planned = batch.pouredInto().milligrams();
        int limit = GramsField.usualLimit(planned);
        if (Math.abs(milligrams - planned) > limit && !warning.overrides(enter.nanos()))
            return fields.stay(
                    "planned " + WeightText.grams(planned) + " g, usual limit " + WeightText.grams(limit) + " g");
        String bowl = batch.mixedIn().bowl();
        return new UiEffect.Send(
                new DayCommand.DivideBatch(bowl, milligrams),
                "mix divided: " + WeightText.grams(wholeMilligrams - milligrams) + " g in " + bowl + ", "
                        + WeightText.grams(milligrams) + " g in "
                        + batch.pouredInto().bowl());
    }

    @Override
    public Optional<UiEffect> answered(DayCommand command, Optional<String> refusal) {
        return closeWhenRefused(batch.mixedIn().bowl(), command, refusal);
    }

    /** Closes the panel of a bowl when the start of its mixing, or the weights of its batch, were rejected. */
    static Optional<UiEffect> closeWhenRefused(String bowl, DayCommand command, Optional<String> refusal) {
        boolean own = command instanceof DayCommand.BeginBowl begin && bowl.equals(begin.bowl())
                || command instanceof DayCommand.BeginBatch batch
                        && batch.bowls().contains(bowl)
                || command instanceof DayCommand.WeighBatch weigh && bowl.equals(weigh.batch());
        return own && refusal.isPresent() ? Optional.of(new UiEffect.Close()) : Optional.empty();
    }
}
