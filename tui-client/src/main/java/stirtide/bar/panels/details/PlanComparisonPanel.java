package stirtide.bar.panels.details;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import stirtide.bar.keys.Key;
import stirtide.bar.keys.KeyAction;
import stirtide.bar.keys.KeyContext;
import stirtide.bar.keys.KeyTable;
import stirtide.bar.model.Panel;
import stirtide.bar.model.Panel.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.bar.panels.list.TextPanel;
import stirtide.bar.text.TimeText;
import stirtide.bar.text.WeightText;
import stirtide.events.plan.Plan;
import stirtide.events.plan.PlannedBowl;
import stirtide.events.view.DayView;

/** The plan that was marked against the plan on show: figures, clients whose times changed, bowls that changed. */
public final class PlanComparisonPanel {
    private PlanComparisonPanel() {}

    /** Compares with the plan that is marked when the panel is drawn. */
    public static Panel of() {
        return new TextPanel(
                KeyContext.COMPARED,
                () -> "PLAN BEFORE AND NOW",
                PlanComparisonPanel::lines,
                PlanComparisonPanel::press);
    }

    private static Optional<UiEffect> press(Key key, boolean machine, UiState state) {
        return KeyTable.action(KeyContext.COMPARED, key, state.mayWrite(), false)
                .filter(KeyAction.MARK::equals)
                .flatMap(mark -> state.view())
                .map(view -> new UiEffect.ShowView(state.pages().marked(view)));
    }

    private static List<String> lines(UiState state) {
        Optional<DayView> then = state.pages().mark();
        if (then.isEmpty() || state.view().isEmpty()) return List.of("no picture of the day yet");
        return compared(then.get(), state.view().get(), state);
    }

    private static List<String> compared(DayView then, DayView now, UiState state) {
        var lines = new ArrayList<String>();
        lines.add("The plan as it was at " + state.minute(then.time()) + ", and now:");
        if (!now.planSettled()) lines.add("the newest plan is still being made");
        if (now.betterPlanSought()) lines.add("a better plan is still being looked for");
        figures(lines, then, now);
        lines.add("");
        lines.add("Clients whose times changed:");
        int before = lines.size();
        now.services().forEach(card -> service(then, card, state.zone()).ifPresent(lines::add));
        if (lines.size() == before) lines.add("none");
        lines.add("");
        lines.add("Bowls that changed:");
        before = lines.size();
        now.queue().forEach(row -> bowl(then, row.bowl(), state).ifPresent(lines::add));
        then.queue().forEach(row -> gone(row.bowl().bowl(), now).ifPresent(lines::add));
        if (lines.size() == before) lines.add("none");
        return lines;
    }

    private static void figures(List<String> lines, DayView then, DayView now) {
        if (then.planTotals().isEmpty() || now.planTotals().isEmpty()) return;
        Plan.PlanTotals was = then.planTotals().get();
        Plan.PlanTotals is = now.planTotals().get();
        lines.add(figure("clients wait, min", was.waitMinutes(), is.waitMinutes()));
        lines.add(figure("bowls to mix", was.bowlCount(), is.bowlCount()));
        lines.add(figure("grams to mix", grams(was.mixedMilligrams()), grams(is.mixedMilligrams())));
        lines.add(figure("of them over-mixed", grams(was.overMixMilligrams()), grams(is.overMixMilligrams())));
    }

    private static int grams(int milligrams) {
        return (milligrams + 500) / 1000;
    }

    private static String figure(String label, int was, int is) {
        return String.format(Locale.ROOT, "  %-22s %6d %6d %+6d", label, was, is, is - was);
    }

    private static Optional<String> service(DayView then, DayView.ServiceCard now, ZoneId zone) {
        String name = now.service() + " " + now.clientRef();
        return then.service(now.service())
                .map(was -> changed(
                        name,
                        new Cell("start ", minute(was.plannedStart(), zone), minute(now.plannedStart(), zone), ""),
                        new Cell("end ", minute(was.plannedEnd(), zone), minute(now.plannedEnd(), zone), ""),
                        new Cell("wait ", "" + was.waitMinutes(), "" + now.waitMinutes(), " min")))
                .orElseGet(() -> {
                    String wait = new Cell("wait ", "0", "" + now.waitMinutes(), " min").text();
                    return Optional.of(row(name, "new", minute(now.plannedStart(), zone), wait));
                });
    }

    private static Optional<String> bowl(DayView then, PlannedBowl now, UiState state) {
        String start = minute(now.mixStart(), state.zone());
        return then.queued(now.bowl())
                .map(DayView.QueuedBowl::bowl)
                .map(was -> changed(
                        now.bowl(),
                        new Cell("mix ", minute(was.mixStart(), state.zone()), start, ""),
                        new Cell("", weight(was), weight(now), ""),
                        new Cell("", who(was, state), who(now, state), "")))
                .orElseGet(() -> Optional.of(row(now.bowl(), "new " + start, weight(now), who(now, state))));
    }

    private static String minute(Instant at, ZoneId zone) {
        return TimeText.minute(at, zone);
    }

    private static String weight(PlannedBowl bowl) {
        return WeightText.grams(bowl.formula().totalMilligrams()) + " g";
    }

    private static String who(PlannedBowl bowl, UiState state) {
        return bowl.personId().map(state::name).orElse("the stylist");
    }

    private static Optional<String> gone(String bowl, DayView now) {
        if (now.queued(bowl).isPresent()) return Optional.empty();
        boolean begun = now.live(bowl).isPresent()
                || now.done().stream().anyMatch(done -> done.bowl().equals(bowl));
        return Optional.of(row(bowl, begun ? "begun meanwhile" : "not planned any more", "", ""));
    }

    /** A figure in both plans. */
    private record Cell(String label, String was, String is, String unit) {
        String text() {
            return label + (was.equals(is) ? is : was + " -> " + is) + unit;
        }
    }

    /** A row, empty when no figure changed. */
    private static Optional<String> changed(String name, Cell first, Cell second, Cell third) {
        boolean same =
                Stream.of(first, second, third).allMatch(cell -> cell.was().equals(cell.is()));
        return same ? Optional.empty() : Optional.of(row(name, first.text(), second.text(), third.text()));
    }

    private static String row(String name, String first, String second, String third) {
        return String.format(Locale.ROOT, "  %-8s %-20s %-20s %s", name, first, second, third)
                .stripTrailing();
    }
}
