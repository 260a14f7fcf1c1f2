package stirtide.bar.panels.weighing;

import java.util.ArrayList;
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
import stirtide.bar.text.LineWrap;
import stirtide.bar.text.WeightText;
import stirtide.events.command.DayCommand;
import stirtide.events.view.DayView;
import stirtide.events.view.PourAdvice;
import stirtide.mixing.text.AmountText;

/** The weigh-in: planned grams beside weighed grams, and the ratio checked against the directions as it is typed. */
public final class WeighPanel implements Panel, FieldSet.Form {
    private static final int COLUMNS = 70;
    private static final FieldSet.Columns FIELDS = new FieldSet.Columns(23, 37, GramsField.LONGEST + 1);
    private static final int PLAN_END = 34;
    private static final int DIFFERENCE_END = 58;
    private static final int MESSAGE_ROWS = 4;
    private static final int SCALE_COLUMNS = 30;

    private TypedWeights weights;
    private final FieldSet fields;
    private final PourInquiry pours = new PourInquiry();
    private final RepeatedEnter warning = new RepeatedEnter();

    private WeighPanel(WeighTarget target) {
        weights = new TypedWeights(target);
        fields = new FieldSet(this, weights.fields()).withScale();
    }

    /** A weigh-in of a bowl that has just been begun and may not be in the view yet. */
    public static WeighPanel of(DayView.QueuedBowl queued, DayView view) {
        return new WeighPanel(WeighTarget.of(queued, view));
    }

    /** A weigh-in of one mix for two bowls that has just been begun. */
    public static WeighPanel of(DayView.BatchCard batch, DayView view) {
        return new WeighPanel(WeighTarget.of(batch, List.of(), view));
    }

    /** A weigh-in of a live bowl, or of the whole mix it is part of while that is not divided. */
    public static WeighPanel of(DayView.LiveBowl live, DayView view) {
        return new WeighPanel(WeighTarget.of(live, view));
    }

    @Override
    public Frame frame() {
        int rows = 1
                + weights.fields().size()
                + 1
                + Math.max(MESSAGE_ROWS, messageLines().size())
                + 1;
        return new Frame(KeyContext.FIELDS, title(weights.target()), COLUMNS, rows);
    }

    private static String title(WeighTarget target) {
        if (target.batch().isPresent())
            return "WEIGH-IN  one mix, two bowls: "
                    + BatchText.bowls(target.batch().get());
        String client = target.clientRef().isEmpty() ? "" : " " + target.clientRef();
        return "WEIGH-IN  bowl " + target.bowl() + "  chair " + target.chair() + client + "  "
                + String.join(", ", target.zones());
    }

    @Override
    public UiEffect tick(UiState state) {
        refresh(state);
        String poured = weights.poured();
        return pours.isToBeAsked(poured, state.nanos())
                ? new UiEffect.AskNextPour(weights.target().bowl(), poured)
                : new UiEffect.Stay();
    }

    @Override
    public void hear(PourAdvice advice, String poured) {
        if (advice.bowl().equals(weights.target().bowl())) pours.answered(advice, poured);
    }

    // Once the service shows the bowl live, its size is known.
    private void refresh(UiState state) {
        WeighTarget known = weights.target();
        state.view()
                .flatMap(view -> view.live(known.bowl())
                        .filter(bowl -> bowl.planned().parts().size()
                                == known.mix().parts().size())
                        .map(bowl -> WeighTarget.of(bowl, view)))
                .filter(live -> live.batch().isPresent() == known.batch().isPresent())
                .ifPresent(live -> weights = weights.of(live));
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
        refresh(state);
        if (!weights.warnings().isEmpty() && !warning.overrides(enter.nanos())) return fields.stay("");
        WeighTarget target = weights.target();
        int lightener = weights.lightener().orElseThrow();
        if (target.batch().isEmpty())
            return new UiEffect.Send(
                    new DayCommand.WeighBowl(target.bowl(), lightener, weights.developerParts()),
                    "bowl " + target.bowl() + " weighed " + weights.text());
        Optional<Panel> divide = target.batch()
                .filter(batch -> weights.isInside())
                .<Panel>map(batch -> new DividePanel(batch, weights.totalMilligrams()));
        return new UiEffect.Send(
                new DayCommand.WeighBatch(target.bowl(), lightener, weights.developerParts()),
                "mix in bowl " + target.bowl() + " weighed " + weights.text(),
                divide);
    }

    @Override
    public Optional<UiEffect> answered(DayCommand command, Optional<String> refusal) {
        return DividePanel.closeWhenRefused(weights.target().bowl(), command, refusal);
    }

    @Override
    public void draw(Pane inside, UiState state) {
        refresh(state);
        inside.right(PLAN_END, 0, 7, "planned", Style.DIM).put(FIELDS.field(), 0, "weighed", Style.DIM);
        inside.right(DIFFERENCE_END, 0, 10, "difference", Style.DIM);
        fields.draw(inside, 1, FIELDS);
        int count = weights.fields().size();
        for (int i = 0; i < count; i++)
            drawPlanned(inside, 1 + i, weights.fields().get(i), weights.plannedMilligrams(i));
        int row = 1 + count;
        drawRatio(inside, row);
        drawMessages(inside, row + 1);
        int last = inside.height() - 1;
        String enter = warning.isWarning() ? "Enter again keeps" : fields.enterWords("Enter records", state);
        String scale = Pane.cut(state.scale().words(), SCALE_COLUMNS);
        inside.put(inside.width() - 1 - scale.length(), last, scale, Style.TEXT);
        inside.put(1, last, enter + "   Esc leaves", Style.DIM);
    }

    private static void drawPlanned(Pane inside, int row, GramsField field, int planned) {
        inside.right(PLAN_END - 2, row, 9, WeightText.grams(planned), Style.TEXT)
                .put(PLAN_END - 1, row, "g", Style.DIM);
        field.milligrams()
                .ifPresent(weighed -> inside.right(
                                DIFFERENCE_END - 2, row, 9, TypedWeights.signed(weighed - planned), Style.TEXT)
                        .put(DIFFERENCE_END - 1, row, "g", Style.DIM));
    }

    private void drawRatio(Pane inside, int row) {
        inside.put(1, row, "ratio", Style.TEXT);
        String wanted = AmountText.ratio(weights.target().mix().wantedRatioThousandths());
        inside.right(PLAN_END, row, 9, wanted, Style.TEXT);
        var check = new RatioCheck(weights.target());
        if (weights.liquids().isEmpty() || weights.lightener().isEmpty()) {
            inside.put(FIELDS.field(), row, "directions " + check.windowText(), Style.DIM);
            return;
        }
        String verdict =
                check.verdict(weights.lightener().getAsInt(), weights.liquids().get());
        inside.put(FIELDS.field(), row, verdict, weights.isInside() ? Style.STRONG : Style.MEDIUM);
    }

    private List<String> messages() {
        var messages = new ArrayList<String>();
        if (!fields.reason().isEmpty()) messages.add(fields.reason());
        if (warning.isWarning()) messages.addAll(weights.warnings());
        else messages.addAll(pours.sentence(weights.poured()).map(List::of).orElseGet(weights::advice));
        return messages;
    }

    private void drawMessages(Pane inside, int firstRow) {
        int row = firstRow;
        for (String line : messageLines()) inside.put(1, row++, line, Style.STRONG);
    }

    private List<String> messageLines() {
        // What the directions accept, shown before the liquids are in, is a help and no warning.
        boolean help = fields.reason().isEmpty() && weights.liquids().isEmpty() && !warning.isWarning();
        var lines = new ArrayList<String>();
        for (String message : messages()) {
            String mark = help ? "  " : "! ";
            for (String line : LineWrap.wrap(message, COLUMNS - 4)) {
                lines.add(mark + line);
                mark = "  ";
            }
        }
        return lines;
    }
}
