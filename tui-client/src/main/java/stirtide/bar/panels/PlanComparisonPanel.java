package stirtide.bar.panels;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stirtide.bar.keys.Key;
import stirtide.bar.keys.KeyAction;
import stirtide.bar.keys.KeyContext;
import stirtide.bar.keys.KeyTable;
import stirtide.bar.model.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.bar.text.TimeText;
import stirtide.bar.text.WeightText;
import stirtide.events.plan.Plan;
import stirtide.events.plan.PlannedBowl;
import stirtide.events.view.DayView;

/** The plan that was marked against the plan on show: figures, clients whose times changed, bowls that changed. */
public final class PlanComparisonPanel extends TextPanel {
    private static final String ARROW = " -> ";

    @Override
    public KeyContext place() {
        return KeyContext.COMPARED;
    }

    @Override
    public String title() {
        return "PLAN BEFORE AND NOW";
    }

    @Override
    protected List<String> sentences(UiState scene) {
        Optional<DayView> then = scene.pages().mark();
        if (then.isEmpty() || scene.view().isEmpty()) return List.of("no picture of the day yet");
        return compared(then.get(), scene.view().get(), scene);
    }

    private static List<String> compared(DayView then, DayView now, UiState scene) {
        var lines = new ArrayList<String>();
        lines.add("The plan as it was at " + TimeText.minute(then.time(), scene.zone()) + ", and now:");
        if (!now.planSettled()) lines.add("the newest plan is still being drawn");
        if (now.betterPlanSought()) lines.add("a better plan is still being looked for");
        figures(lines, then, now);
        lines.add("");
        lines.add("Clients whose times changed:");
        int before = lines.size();
        now.services().forEach(card -> service(then, card, scene.zone()).ifPresent(lines::add));
        if (lines.size() == before) lines.add("none");
        lines.add("");
        lines.add("Bowls that changed:");
        before = lines.size();
        now.queue().forEach(row -> bowl(then, row.bowl(), scene).ifPresent(lines::add));
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
        Optional<DayView.ServiceCard> was = then.services().stream()
                .filter(card -> card.service() == now.service())
                .findFirst();
        if (was.isEmpty())
            return Optional.of(row(name, "new", TimeText.minute(now.plannedStart(), zone), wait(0, now.waitMinutes())));
        if (was.get().plannedStart().equals(now.plannedStart())
                && was.get().plannedEnd().equals(now.plannedEnd())
                && was.get().waitMinutes() == now.waitMinutes()) return Optional.empty();
        return Optional.of(row(
                name,
                "start " + times(was.get().plannedStart(), now.plannedStart(), zone),
                "end " + times(was.get().plannedEnd(), now.plannedEnd(), zone),
                wait(was.get().waitMinutes(), now.waitMinutes())));
    }

    private static String wait(int was, int is) {
        return "wait " + (was == is ? String.valueOf(is) : was + ARROW + is) + " min";
    }

    private static String times(Instant was, Instant is, ZoneId zone) {
        return was.equals(is)
                ? TimeText.minute(is, zone)
                : TimeText.minute(was, zone) + ARROW + TimeText.minute(is, zone);
    }

    private static Optional<String> bowl(DayView then, PlannedBowl now, UiState scene) {
        Optional<PlannedBowl> found = then.queue().stream()
                .map(DayView.QueuedBowl::bowl)
                .filter(bowl -> bowl.bowl().equals(now.bowl()))
                .findFirst();
        if (found.isEmpty())
            return Optional.of(row(
                    now.bowl(), "new " + TimeText.minute(now.mixStart(), scene.zone()), weight(now), who(now, scene)));
        PlannedBowl was = found.get();
        boolean same = was.mixStart().equals(now.mixStart())
                && was.formula().totalMilligrams() == now.formula().totalMilligrams()
                && was.personId().equals(now.personId());
        if (same) return Optional.empty();
        boolean sameWeight = was.formula().totalMilligrams() == now.formula().totalMilligrams();
        boolean samePerson = was.personId().equals(now.personId());
        return Optional.of(row(
                now.bowl(),
                "mix " + times(was.mixStart(), now.mixStart(), scene.zone()),
                sameWeight ? weight(now) : weight(was) + ARROW + weight(now),
                samePerson ? who(now, scene) : who(was, scene) + ARROW + who(now, scene)));
    }

    private static String weight(PlannedBowl bowl) {
        return WeightText.grams(bowl.formula().totalMilligrams()) + " g";
    }

    private static String who(PlannedBowl bowl, UiState scene) {
        return bowl.personId().map(scene::name).orElse("the stylist");
    }

    private static Optional<String> gone(String bowl, DayView now) {
        boolean planned = now.queue().stream().anyMatch(row -> row.bowl().bowl().equals(bowl));
        if (planned) return Optional.empty();
        boolean begun = now.live().stream().anyMatch(live -> live.bowl().equals(bowl))
                || now.done().stream().anyMatch(done -> done.bowl().equals(bowl));
        return Optional.of(row(bowl, begun ? "begun meanwhile" : "not planned any more", "", ""));
    }

    private static String row(String name, String first, String second, String third) {
        return String.format(Locale.ROOT, "  %-8s %-20s %-20s %s", name, first, second, third)
                .stripTrailing();
    }

    @Override
    public UiEffect press(Key key, boolean machine, UiState scene) {
        KeyAction action =
                KeyTable.action(place(), key, scene.mayWrite(), false).orElse(KeyAction.ERASE);
        if (action != KeyAction.MARK || scene.view().isEmpty()) return super.press(key, machine, scene);
        return new UiEffect.Turn(scene.pages().marked(scene.view().get()));
    }
}
