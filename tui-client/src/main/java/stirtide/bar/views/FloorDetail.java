package stirtide.bar.views;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stirtide.bar.canvas.Pane;
import stirtide.bar.canvas.Style;
import stirtide.bar.model.FloorSelection;
import stirtide.bar.model.UiState;
import stirtide.bar.text.CountText;
import stirtide.events.view.DayView;

/** Below the chairs: the picked service, or what moving the lifted one would do; then why the bar has too much. */
final class FloorDetail {
    private FloorDetail() {}

    static void draw(Pane pane, UiState scene, DayView view, int cellMinutes) {
        FloorSelection pick = scene.pages().floor();
        Optional<DayView.ServiceCard> card = pick.in(view);
        int row = 0;
        if (card.isEmpty()) pane.put(0, row++, "no service on the floor", Style.DIM);
        else {
            pane.fit(0, row++, pane.width(), headline(card.get(), scene), Style.STRONG);
            List<String> lines = pick.lifted() ? moved(card.get(), pick, scene, view) : standing(card.get(), scene);
            for (String line : lines) pane.fit(2, row++, pane.width() - 2, line, Style.TEXT);
        }
        int last = pane.height() - 1;
        List<String> reasons = WaitText.of(view, scene, pane.width());
        // Why clients wait is worth more than what the signs mean, which the keys tell as well.
        boolean crowded = reasons.size() > last - row;
        for (String line : reasons) if (row < last || crowded && row == last) pane.put(0, row++, line, Style.TEXT);
        if (crowded) return;
        for (String line :
                WaitText.bowls(view, card.map(DayView.ServiceCard::service).orElse(0), pane.width()))
            if (row < last) pane.put(0, row++, line, Style.DIM);
        String legend = "m mix  █ apply  ░ process  R rinse  · waits   one cell is " + cellMinutes + " min";
        pane.put(0, last, legend, Style.DIM);
    }

    private static String headline(DayView.ServiceCard card, UiState scene) {
        String client = card.clientRef().isEmpty() ? "" : " " + card.clientRef();
        String head = scene.pages().floor().lifted() ? "LIFTED  service " : "service ";
        return head + card.service() + "  chair " + card.chair() + client + "  " + card.menuName() + "  "
                + card.state().toLowerCase(Locale.ROOT);
    }

    private static List<String> standing(DayView.ServiceCard card, UiState scene) {
        String times = "booked " + scene.minute(card.bookedStart()) + "   planned "
                + scene.minute(card.plannedStart()) + " to "
                + scene.minute(card.plannedEnd()) + "   waits " + card.waitMinutes() + " min";
        return List.of(times);
    }

    private static List<String> moved(DayView.ServiceCard card, FloorSelection pick, UiState scene, DayView view) {
        int shift = pick.shiftMinutes();
        Instant start = pick.start(card);
        Instant end = card.plannedEnd().plus(Duration.ofMinutes(shift));
        var lines = new ArrayList<String>();
        String signed = (shift < 0 ? "" : "+") + shift;
        lines.add(signed + " min: starts " + scene.minute(start) + ", ends " + scene.minute(end)
                + chair(card, start, end, scene, view));
        List<String> met = BarLoad.meets(view, card.service(), shift);
        List<String> metNow = BarLoad.meets(view, card.service(), 0);
        int bowls = BarLoad.bowls(view, card.service()).size();
        String mixes = CountText.of(bowls, "bowl") + " to mix";
        String meets = met.isEmpty() ? ", none at the same time as another" : ", at the same time as " + words(met);
        lines.add(mixes + meets + (shift == 0 ? "" : "; unmoved: " + (metNow.isEmpty() ? "none" : words(metNow))));
        return lines;
    }

    private static String words(List<String> bowls) {
        return String.join(", ", bowls.subList(0, Math.min(4, bowls.size()))) + (bowls.size() > 4 ? " and more" : "");
    }

    private static String chair(DayView.ServiceCard card, Instant start, Instant end, UiState scene, DayView view) {
        if (start.isBefore(scene.now())) return "   ! that is over already";
        return FloorSelection.inOrder(view).stream()
                .filter(other -> other.chair() == card.chair() && other.service() != card.service())
                .filter(other -> other.plannedStart().isBefore(end) && start.isBefore(other.plannedEnd()))
                .findFirst()
                .map(other -> "   ! chair taken by service " + other.service() + " from "
                        + scene.minute(other.plannedStart()))
                .orElse("   chair free");
    }
}
