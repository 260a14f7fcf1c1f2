package stirtide.bar.views;

import java.util.List;
import stirtide.bar.canvas.Pane;
import stirtide.bar.canvas.Style;
import stirtide.bar.model.PersonDay;
import stirtide.bar.model.UiState;
import stirtide.events.view.DayView;
import stirtide.events.view.PersonWork;
import stirtide.events.view.PersonWork.Kind;

/** The people over time: a row with the name and the minutes, and below it the lane on the floor's own axis. */
final class PeopleLanes {
    private static final int ROWS_EACH = 2;
    private static final int ROWS_BELOW = 2;

    private PeopleLanes() {}

    /** Draws below the row of the times, down to the lowest row of the pane. */
    static void draw(Pane pane, TimeAxis axis, UiState scene, DayView view) {
        List<DayView.PersonCard> people = view.people();
        int shown = Math.min(people.size(), (pane.height() - 1 - ROWS_BELOW) / ROWS_EACH);
        int picked = scene.pages().floor().personIn(view);
        int first = Math.max(0, Math.min(picked - shown / 2, people.size() - shown));
        if (people.isEmpty()) pane.put(2, 1, "nobody is at work on this day", Style.DIM);
        for (int i = 0; i < shown; i++) {
            Pane rows = pane.part(0, 1 + i * ROWS_EACH, pane.width(), ROWS_EACH);
            lane(rows, axis, scene, new PersonDay(people.get(first + i)), first + i == picked);
        }
        pane.rule(pane.height() - ROWS_BELOW);
        String hidden = hidden(first, people.size() - first - shown);
        if (!hidden.isEmpty()) pane.put(2, pane.height() - ROWS_BELOW, " " + hidden + " ", Style.DIM);
        String signs = "m mix  c carry  & both  7█ applies, service 7  - gap  · free  x off  cell ";
        pane.put(0, pane.height() - 1, signs + axis.cellMinutes() + " min", Style.DIM);
    }

    private static String hidden(int above, int below) {
        if (above <= 0 && below <= 0) return "";
        return "people not shown: " + Math.max(0, above) + " above, " + Math.max(0, below) + " below";
    }

    private static void lane(Pane rows, TimeAxis axis, UiState scene, PersonDay person, boolean isPicked) {
        Style style = rows.select(0, isPicked, Style.TEXT);
        String name = person.card().name();
        rows.fit(2, 0, rows.width() - 2, name, isPicked ? style : Style.STRONG);
        int column = 2 + name.length() + 2;
        rows.fit(column, 0, Math.max(0, rows.width() - column), person.words(), style);
        rows.put(axis.left(), 1, "x".repeat(axis.cells()), Style.DIM);
        person.card().hours().forEach(span -> axis.fill(rows, 1, span.from(), span.to(), "·", Style.DIM));
        axis.mark(rows, 1, scene.now(), "│", Style.RULE);
        for (PersonDay.Head head : person.heads()) axis.fill(rows, 1, head.from(), head.to(), "-", Style.TEXT);
        for (PersonWork zone : person.of(Kind.APPLYING)) axis.fill(rows, 1, zone.from(), zone.to(), "█", Style.TEXT);
        for (PersonDay.Head head : person.heads()) number(rows, axis, head);
        bowls(rows, axis, person);
    }

    // Which client it is, where the number is not longer than the lane has cells for that client.
    private static void number(Pane rows, TimeAxis axis, PersonDay.Head head) {
        String number = String.valueOf(head.service());
        int first = Math.max(0, axis.cell(head.from()));
        int last = Math.min(axis.cells() - 1, axis.cell(head.to().minusSeconds(1)));
        if (last - first + 1 > number.length()) rows.put(axis.left() + first, 1, number, Style.STRONG);
    }

    private static void bowls(Pane rows, TimeAxis axis, PersonDay person) {
        var mixing = cells(axis, person.of(Kind.MIXING));
        var carrying = cells(axis, person.of(Kind.CARRYING));
        for (int cell = 0; cell < axis.cells(); cell++) {
            String sign = mixing[cell] ? carrying[cell] ? "&" : "m" : carrying[cell] ? "c" : "";
            if (!sign.isEmpty()) rows.put(axis.left() + cell, 1, sign, Style.STRONG);
        }
    }

    private static boolean[] cells(TimeAxis axis, List<PersonWork> work) {
        var taken = new boolean[axis.cells()];
        for (PersonWork piece : work) {
            int last = Math.min(axis.cells() - 1, axis.cell(piece.to().minusSeconds(1)));
            for (int cell = Math.max(0, axis.cell(piece.from())); cell <= last; cell++) taken[cell] = true;
        }
        return taken;
    }
}
