package stirtide.bar.views;

import java.util.List;
import java.util.stream.IntStream;
import stirtide.bar.canvas.Pane;
import stirtide.bar.canvas.Style;
import stirtide.bar.model.UiState;
import stirtide.events.plan.Plan;
import stirtide.events.view.DayView;

/** All clients of the day over time, chair by chair, what the bar has to mix under them, and the picked service; or the people. */
final class FloorView {
    private static final int LABELS = 9;
    private static final int STRIP_ROWS = 2;
    private static final int LEAST_DETAIL_ROWS = 4;
    private static final int MOST_DETAIL_ROWS = 9;
    private static final int LARGEST_DIGIT = 9;

    private FloorView() {}

    /** Draws between the alarm rows and the footer. */
    static void draw(Pane pane, UiState scene) {
        if (scene.view().isEmpty()) {
            pane.put(2, 1, "no picture of the day yet", Style.DIM);
            return;
        }
        DayView view = scene.view().get();
        int chairs = view.choices().chairs();
        int room = pane.height() - 1 - STRIP_ROWS - 1 - LEAST_DETAIL_ROWS;
        int rowsEach = rowsEach(chairs, room);
        TimeAxis axis = TimeAxis.of(scene, LABELS, pane.width());
        axis.draw(pane, 0, scene.zone(), scene.now());
        if (scene.pages().floor().people()) {
            PeopleLanes.draw(pane, axis, scene, view);
            return;
        }
        int shown = Math.min(chairs, room / rowsEach);
        int first = first(view, scene, chairs, shown);
        for (int i = 0; i < shown; i++)
            ChairRow.draw(pane.part(0, 1 + i * rowsEach, pane.width(), rowsEach), axis, first + i, scene, view);
        int strip = 1 + shown * rowsEach;
        strip(pane.part(0, strip, pane.width(), STRIP_ROWS), axis, scene, view);
        pane.rule(strip + STRIP_ROWS);
        int below = strip + STRIP_ROWS + 1;
        int detail = Math.min(MOST_DETAIL_ROWS, pane.height() - below);
        FloorDetail.draw(pane.part(0, below, pane.width(), detail), scene, view, axis.cellMinutes());
    }

    // A bar, a name below it, and a free row where the lines at the bottom lose nothing by it.
    private static int rowsEach(int chairs, int room) {
        if (chairs * 3 <= room + LEAST_DETAIL_ROWS - MOST_DETAIL_ROWS) return 3;
        return chairs * 2 <= room ? 2 : 1;
    }

    // With more chairs than rows the picked service's chair stays in sight.
    private static int first(DayView view, UiState scene, int chairs, int shown) {
        int picked =
                scene.pages().floor().in(view).map(DayView.ServiceCard::chair).orElse(1);
        return Math.max(1, Math.min(picked - shown / 2, chairs - shown + 1));
    }

    private static void strip(Pane pane, TimeAxis axis, UiState scene, DayView view) {
        int[] load = BarLoad.count(axis, view);
        long assistants = view.people().stream()
                .filter(person -> person.role().equals("ASSISTANT") && person.onDutyNow())
                .count();
        pane.put(0, 0, "mixing", Style.TEXT);
        IntStream.range(0, load.length).filter(cell -> load[cell] > 0).forEach(cell -> {
            String digit = load[cell] > LARGEST_DIGIT ? "+" : String.valueOf(load[cell]);
            boolean many = assistants > 0 && load[cell] > assistants;
            pane.put(axis.left() + cell, 0, digit, many ? Style.STRONG : Style.TEXT);
        });
        List<Plan.WaitReason> waits = BarLoad.ahead(view, scene);
        if (waits.isEmpty()) return;
        pane.put(0, 1, "too much", Style.TEXT);
        waits.forEach(wait -> axis.fill(pane, 1, wait.from(), wait.to(), "▲", Style.MEDIUM));
    }
}
