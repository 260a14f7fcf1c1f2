package stirtide.bar.panels;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stirtide.bar.canvas.Pane;
import stirtide.bar.canvas.Style;
import stirtide.bar.keys.Key;
import stirtide.bar.model.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.bar.text.BatchText;
import stirtide.bar.text.LineWrap;
import stirtide.bar.text.WeightText;
import stirtide.events.command.DayCommand;
import stirtide.events.formula.DeveloperPart;
import stirtide.events.view.DayView;
import stirtide.events.view.PourAdvice;

/** The weigh-in: planned grams beside weighed grams, and the ratio held against the directions as it is typed. */
public final class WeighPanel extends FieldsPanel {
    private static final int COLUMNS = 70;
    private static final int LABEL_COLUMNS = 23;
    private static final int PLAN_END = 34;
    private static final int FIELD_COLUMN = 37;
    private static final int DIFFERENCE_END = 58;
    private static final int MESSAGE_ROWS = 4;
    private static final int SCALE_COLUMNS = 30;
    private static final int RATIO_DIVISOR = 10;
    private static final long SECOND_ENTER_NANOS = 300_000_000L;
    private static final long NEVER = Long.MIN_VALUE;

    private WeighTarget target;
    private final GramsField lightener;
    private final List<GramsField> liquids;
    private final PourInquiry pours = new PourInquiry();
    private long warnedAtNanos = NEVER;

    private WeighPanel(WeighTarget target, List<GramsField> fields) {
        super(fields);
        this.target = target;
        lightener = fields.get(0);
        liquids = fields.subList(1, fields.size());
    }

    /** A weigh-in of a bowl that has just been begun and may not be in the view yet. */
    public static WeighPanel of(DayView.QueuedBowl queued, DayView view) {
        return of(WeighTarget.of(queued, view));
    }

    /** A weigh-in of one mix for two bowls that has just been begun. */
    public static WeighPanel of(DayView.BatchCard batch, DayView view) {
        return of(WeighTarget.of(batch, List.of(), view));
    }

    /** A weigh-in of a live bowl, or of the whole mix it is part of while that is not divided. */
    public static WeighPanel of(DayView.LiveBowl live, DayView view) {
        return of(WeighTarget.of(live, view));
    }

    private static WeighPanel of(WeighTarget target) {
        Stream<GramsField> liquids = target.parts().stream()
                .map(part -> new GramsField(WeightText.liquid(part.strengthHundredths(), part.name()), true));
        var fields = Stream.concat(Stream.of(new GramsField(target.lightenerName(), false)), liquids)
                .toList();
        return new WeighPanel(target, fields);
    }

    @Override
    public String title() {
        if (target.batch().isPresent())
            return "WEIGH-IN  one mix, two bowls: "
                    + BatchText.bowls(target.batch().get());
        String client = target.clientRef().isEmpty() ? "" : " " + target.clientRef();
        return "WEIGH-IN  bowl " + target.bowl() + "  chair " + target.chair() + client + "  "
                + String.join(", ", target.zones());
    }

    @Override
    public int columns() {
        return COLUMNS;
    }

    @Override
    public int rows() {
        return 1 + 1 + liquids.size() + 1 + MESSAGE_ROWS + 1;
    }

    @Override
    public String standsOnBowl() {
        return target.bowl();
    }

    @Override
    void edited() {
        warnedAtNanos = NEVER;
    }

    @Override
    public UiEffect tick(UiState scene) {
        refresh(scene);
        String poured = poured();
        return pours.isToBeAsked(poured, scene.nanos())
                ? new UiEffect.AskNextPour(target.bowl(), poured)
                : new UiEffect.Stay();
    }

    @Override
    public void hear(PourAdvice advice, String poured) {
        if (advice.bowl().equals(target.bowl())) pours.answered(advice, poured);
    }

    /** What is typed so far as the contract writes it; empty text while it is as planned. */
    private String poured() {
        var pours = new ArrayList<String>();
        boolean asPlanned = true;
        for (int i = 0; i <= liquids.size(); i++) {
            GramsField field = i == 0 ? lightener : liquids.get(i - 1);
            if (field.milligrams().isEmpty() || grams(field) == 0) continue;
            int planned = i == 0
                    ? target.lightenerMilligrams()
                    : target.parts().get(i - 1).milligrams();
            asPlanned &= grams(field) == planned;
            String part =
                    i == 0 ? PourAdvice.LIGHTENER : target.parts().get(i - 1).developerId();
            pours.add(part + ":" + grams(field));
        }
        return asPlanned ? "" : String.join(",", pours);
    }

    // Once the service shows the bowl live, its size is known.
    private void refresh(UiState scene) {
        scene.view().stream()
                .flatMap(view -> view.live().stream()
                        .filter(bowl -> bowl.bowl().equals(target.bowl()))
                        .filter(bowl -> bowl.planned().parts().size() == liquids.size())
                        .map(bowl -> WeighTarget.of(bowl, view)))
                .findFirst()
                .filter(live -> live.batch().isPresent() == target.batch().isPresent())
                .ifPresent(live -> target = live);
    }

    @Override
    public UiEffect press(Key key, boolean machine, UiState scene) {
        Optional<GramsField> focused = fields().filter(this::isFocused).findFirst();
        return focused.flatMap(field -> fromScale(field, key, scene)).orElseGet(() -> super.press(key, machine, scene));
    }

    private Stream<GramsField> fields() {
        return Stream.concat(Stream.of(lightener), liquids.stream());
    }

    @Override
    UiEffect complete(Key enter, UiState scene) {
        refresh(scene);
        boolean first = warnedAtNanos == NEVER;
        boolean tooSoon = !first && enter.nanos() - warnedAtNanos < SECOND_ENTER_NANOS;
        if (!warnings().isEmpty() && (first || tooSoon)) {
            if (first) warnedAtNanos = enter.nanos();
            return stay("");
        }
        var parts = IntStream.range(0, liquids.size())
                .mapToObj(i -> new DeveloperPart(target.parts().get(i).developerId(), grams(liquids.get(i))))
                .toList();
        if (target.batch().isPresent()) {
            var whole = new DayCommand.WeighBatch(target.bowl(), grams(lightener), parts);
            int total = grams(lightener) + sum(weighedLiquids().orElseThrow());
            boolean inside = new RatioCheck(target)
                    .isInside(grams(lightener), weighedLiquids().orElseThrow());
            return new UiEffect.Send(
                    whole,
                    "mix in bowl " + target.bowl() + " weighed " + weighedText(),
                    inside ? Optional.of(new DividePanel(target.batch().get(), total)) : Optional.empty());
        }
        var command = new DayCommand.WeighBowl(target.bowl(), grams(lightener), parts);
        return new UiEffect.Send(command, "bowl " + target.bowl() + " weighed " + weighedText(), Optional.empty());
    }

    private String weighedText() {
        return WeightText.grams(grams(lightener)) + " + "
                + String.join(
                        " + ",
                        liquids.stream()
                                .map(field -> WeightText.grams(grams(field)))
                                .toList()) + " g";
    }

    private static int grams(GramsField field) {
        return field.milligrams().orElseThrow();
    }

    private Optional<List<Integer>> weighedLiquids() {
        if (liquids.stream().anyMatch(field -> field.milligrams().isEmpty())) return Optional.empty();
        return Optional.of(liquids.stream().map(WeighPanel::grams).toList());
    }

    private static int sum(List<Integer> milligrams) {
        return milligrams.stream().mapToInt(Integer::intValue).sum();
    }

    private List<String> warnings() {
        var warnings = new ArrayList<String>();
        warn(warnings, lightener, target.lightenerMilligrams());
        for (int i = 0; i < liquids.size(); i++)
            warn(warnings, liquids.get(i), target.parts().get(i).milligrams());
        var developer = weighedLiquids();
        if (developer.isPresent() && lightener.milligrams().isPresent()) {
            int ratio = RatioCheck.ratioThousandths(grams(lightener), sum(developer.get()));
            int off = Math.abs(ratio - target.wantedRatioThousandths());
            if (off > target.wantedRatioThousandths() / RATIO_DIVISOR) {
                warnings.add("ratio " + WeightText.ratio(ratio) + ", planned "
                        + WeightText.ratio(target.wantedRatioThousandths()));
            }
            warnings.addAll(new RatioCheck(target).advice(lightener.milligrams(), developer));
        }
        return warnings;
    }

    private static void warn(List<String> warnings, GramsField field, int planned) {
        if (field.milligrams().isEmpty()) return;
        int off = grams(field) - planned;
        int limit = GramsField.usualLimit(planned);
        if (Math.abs(off) > limit) {
            warnings.add(field.label() + " " + signed(off) + " g, usual limit " + WeightText.grams(limit) + " g");
        }
    }

    private static String signed(int milligrams) {
        return (milligrams < 0 ? "-" : "+") + WeightText.grams(Math.abs(milligrams));
    }

    @Override
    public void draw(Pane inside, UiState scene) {
        refresh(scene);
        inside.right(PLAN_END, 0, 7, "planned", Style.DIM).put(FIELD_COLUMN, 0, "weighed", Style.DIM);
        inside.right(DIFFERENCE_END, 0, 10, "difference", Style.DIM);
        drawFields(inside, 1, LABEL_COLUMNS, FIELD_COLUMN, GramsField.LONGEST + 1);
        drawPlanned(inside, 1, lightener, target.lightenerMilligrams());
        for (int i = 0; i < liquids.size(); i++)
            drawPlanned(inside, 2 + i, liquids.get(i), target.parts().get(i).milligrams());
        int row = 2 + liquids.size();
        drawRatio(inside, row);
        drawMessages(inside, row + 1);
        String enter = askingAgain() ? "Enter again keeps" : enterWords("Enter records", scene);
        String scale = Pane.cut(scene.scale().words(), SCALE_COLUMNS);
        inside.put(inside.width() - 1 - scale.length(), rows() - 1, scale, Style.TEXT);
        inside.put(1, rows() - 1, enter + "   Esc leaves", Style.DIM);
    }

    private boolean askingAgain() {
        return warnedAtNanos != NEVER;
    }

    private static void drawPlanned(Pane inside, int row, GramsField field, int planned) {
        inside.right(PLAN_END - 2, row, 9, WeightText.grams(planned), Style.TEXT)
                .put(PLAN_END - 1, row, "g", Style.DIM);
        field.milligrams()
                .ifPresent(weighed -> inside.right(DIFFERENCE_END - 2, row, 9, signed(weighed - planned), Style.TEXT)
                        .put(DIFFERENCE_END - 1, row, "g", Style.DIM));
    }

    private void drawRatio(Pane inside, int row) {
        inside.put(1, row, "ratio", Style.TEXT);
        inside.right(PLAN_END, row, 9, WeightText.ratio(target.wantedRatioThousandths()), Style.TEXT);
        var developer = weighedLiquids();
        var check = new RatioCheck(target);
        if (developer.isEmpty() || lightener.milligrams().isEmpty()) {
            inside.put(FIELD_COLUMN, row, "directions " + check.windowText(), Style.DIM);
            return;
        }
        boolean inWindow = check.isInside(grams(lightener), developer.get());
        String verdict = check.verdict(grams(lightener), developer.get());
        inside.put(FIELD_COLUMN, row, verdict, inWindow ? Style.STRONG : Style.MEDIUM);
    }

    private void drawMessages(Pane inside, int firstRow) {
        var messages = new ArrayList<String>();
        if (!reason().isEmpty()) messages.add(reason());
        if (askingAgain()) messages.addAll(warnings());
        else
            messages.addAll(pours.sentence(poured())
                    .map(List::of)
                    .orElseGet(() -> new RatioCheck(target).advice(lightener.milligrams(), weighedLiquids())));
        // What the directions take, told before the liquids are in, is a help and no warning.
        boolean help = reason().isEmpty() && weighedLiquids().isEmpty() && !askingAgain();
        int row = firstRow;
        for (String message : messages) {
            String mark = help ? "  " : "! ";
            for (String line : LineWrap.wrap(message, COLUMNS - 4)) {
                if (row < firstRow + MESSAGE_ROWS) inside.put(1, row++, mark + line, Style.STRONG);
                mark = "  ";
            }
        }
    }
}
