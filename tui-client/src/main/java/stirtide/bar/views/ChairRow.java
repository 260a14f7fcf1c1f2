package stirtide.bar.views;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import stirtide.bar.canvas.Pane;
import stirtide.bar.canvas.Style;
import stirtide.bar.model.FloorSelection;
import stirtide.bar.model.UiState;
import stirtide.events.plan.PlannedService.PlannedZone;
import stirtide.events.view.DayView;

/** One chair over time: who sits there, when for whom is mixed, applied, processed and rinsed. */
final class ChairRow {
    private static final int SHORTEST_NAME = 3;
    private static final int LONGEST_NAME = 26;

    private ChairRow() {}

    static void draw(Pane pane, TimeAxis axis, int chair, UiState scene, DayView view) {
        pane.put(0, 0, "chair " + chair, Style.TEXT);
        for (int row = 0; row < pane.height(); row++) axis.mark(pane, row, scene.now(), "│", Style.RULE);
        List<DayView.ServiceCard> cards = FloorSelection.inOrder(view).stream()
                .filter(card -> card.chair() == chair)
                .sorted(Comparator.comparing(card -> start(card, scene, view)))
                .toList();
        for (int i = 0; i < cards.size(); i++) {
            DayView.ServiceCard card = cards.get(i);
            if (isLifted(card, scene, view))
                lifted(pane, axis, card, scene.pages().floor().shiftMinutes());
            else service(pane, axis, card, scene, view);
            int end = i + 1 < cards.size() ? axis.cell(start(cards.get(i + 1), scene, view)) - 1 : axis.cells();
            Style style = scene.pages().floor().isOn(card, view) ? Style.PICKED : Style.TEXT;
            name(pane, axis, card, start(card, scene, view), Math.min(end, axis.cells()), style);
        }
    }

    private static boolean isLifted(DayView.ServiceCard card, UiState scene, DayView view) {
        return scene.pages().floor().lifted() && scene.pages().floor().isOn(card, view);
    }

    private static Instant start(DayView.ServiceCard card, UiState scene, DayView view) {
        return isLifted(card, scene, view) ? scene.pages().floor().start(card) : card.plannedStart();
    }

    private static void service(Pane pane, TimeAxis axis, DayView.ServiceCard card, UiState scene, DayView view) {
        boolean isPicked = scene.pages().floor().isOn(card, view);
        axis.fill(pane, 0, card.bookedStart(), card.plannedStart(), "·", Style.DIM);
        phases(pane, axis, card, 0, Style.TEXT);
        for (DayView.QueuedBowl bowl : BarLoad.bowls(view, card.service()))
            axis.fill(pane, 0, bowl.bowl().mixStart(), bowl.bowl().mixEnd(), "m", Style.STRONG);
        if (isPicked) axis.mark(pane, 0, card.plannedStart().minus(cell(axis)), ">", Style.STRONG);
    }

    private static Duration cell(TimeAxis axis) {
        return Duration.ofMinutes(axis.cellMinutes());
    }

    private static void phases(Pane pane, TimeAxis axis, DayView.ServiceCard card, int shiftMinutes, Style style) {
        Duration shift = Duration.ofMinutes(shiftMinutes);
        for (PlannedZone zone : card.zones())
            axis.fill(pane, 0, zone.applyEnd().plus(shift), zone.rinseAt().plus(shift), "░", style);
        for (PlannedZone zone : card.zones())
            axis.fill(pane, 0, zone.applyStart().plus(shift), zone.applyEnd().plus(shift), "█", style);
        for (PlannedZone zone : card.zones()) axis.mark(pane, 0, zone.rinseAt().plus(shift), "R", Style.STRONG);
    }

    // Where it was stays as a dotted line, so that both places are in sight.
    private static void lifted(Pane pane, TimeAxis axis, DayView.ServiceCard card, int shiftMinutes) {
        axis.fill(pane, 0, card.plannedStart(), card.plannedEnd(), "·", Style.DIM);
        Instant start = card.plannedStart().plus(Duration.ofMinutes(shiftMinutes));
        Instant end = card.plannedEnd().plus(Duration.ofMinutes(shiftMinutes));
        axis.fill(pane, 0, start, end, " ", Style.PICKED);
        phases(pane, axis, card, shiftMinutes, Style.PICKED);
    }

    // A name never runs into the next client's.
    private static void name(
            Pane pane, TimeAxis axis, DayView.ServiceCard card, Instant start, int endCell, Style style) {
        String client = card.clientRef().isEmpty() ? "" : " " + card.clientRef();
        String text = card.service() + client;
        int from = Math.max(0, axis.cell(start));
        int room = endCell - from;
        if (axis.cell(card.plannedEnd()) < 0 || room < SHORTEST_NAME) return;
        if (pane.height() > 1) {
            String more = " " + card.menuName();
            pane.fit(axis.left() + from, 1, Math.min(room, LONGEST_NAME), text + more, style);
        } else {
            pane.fit(axis.left() + from + 1, 0, Math.min(room, text.length() + 2), " " + text + " ", style);
        }
    }
}
