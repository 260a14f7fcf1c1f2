package stirtide.bar.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stirtide.bar.frame.Pane;
import stirtide.bar.frame.Style;
import stirtide.bar.scene.LinkLine;
import stirtide.bar.scene.Scene;
import stirtide.bar.words.TimeText;
import stirtide.events.view.DayView;

/** Alarms, one a row: high first, then oldest; the row says how many there are. */
final class AlarmView {
    private static final int TAIL = 18;

    private AlarmView() {}

    static void draw(Pane rows, Scene scene) {
        List<Line> lines = lines(scene);
        if (lines.isEmpty()) {
            rows.put(0, 0, quiet(scene), Style.DIM);
            return;
        }
        for (int row = 0; row < Math.min(rows.height(), lines.size()); row++) draw(rows, row, lines, scene);
    }

    private static void draw(Pane rows, int row, List<Line> lines, Scene scene) {
        Line line = lines.get(row);
        int tail = rows.width() - TAIL;
        rows.fit(0, row, tail - 1, line.text(), line.style());
        rows.put(tail, row, line.tail(scene.mayWrite()), Style.TEXT);
        if (row == 0) rows.right(rows.width(), row, 8, "1 of " + lines.size(), Style.DIM);
    }

    private static List<Line> lines(Scene scene) {
        var lines = new ArrayList<Line>();
        LinkLine link = scene.link();
        if (link.state() == LinkLine.State.LOST) {
            String waiting = link.waitingEntries() == 0 ? "" : "   " + link.waitingEntries() + " entries waiting";
            String text = "NO LINK for " + TimeText.age(link.ageSeconds()) + ": clocks run on" + waiting;
            lines.add(new Line(1, "▲ MEDIUM  " + text, Style.MEDIUM, "", false));
        }
        scene.view().ifPresent(view -> view.alarms().forEach(alarm -> lines.add(line(alarm, scene))));
        lines.sort(Comparator.comparingInt(Line::rank));
        return lines;
    }

    private static Line line(DayView.AlarmCard alarm, Scene scene) {
        String seen = alarm.acknowledgedBy().map(scene::name).orElse("");
        String text = AlarmStyles.symbol(alarm.priority()) + " " + alarm.priority() + "  " + words(alarm, scene);
        return new Line(AlarmStyles.rank(alarm.priority()), text, AlarmStyles.style(alarm.priority()), seen, true);
    }

    // The service's sentence is long; where the life of a bowl is at stake the time left says it in a line.
    private static String words(DayView.AlarmCard alarm, Scene scene) {
        String head = "bowl " + alarm.bowl() + "  chair " + alarm.chair() + "  ";
        Optional<String> left = scene.view().stream()
                .flatMap(view -> view.live().stream())
                .filter(bowl -> bowl.bowl().equals(alarm.bowl()))
                .map(bowl -> TimeText.left(bowl.lifeEnds(), scene.now()))
                .findFirst();
        if (left.isPresent() && alarm.kind().equals("PAST_LIFE")) {
            return head + "PAST LIFE " + left.get() + ": bin it, mix again";
        }
        if (left.isPresent() && alarm.kind().equals("LOW_LIFE")) {
            return head + "LOW LIFE " + left.get() + ": use it up or bin it";
        }
        boolean named = alarm.sentence().contains(alarm.bowl());
        return named ? alarm.sentence() : head + alarm.sentence();
    }

    private static String quiet(Scene scene) {
        if (scene.view().isEmpty()) return "waiting for the service";
        DayView view = scene.view().get();
        if (view.closed()) return "the day is closed";
        long waiting = view.services().stream()
                .filter(service -> service.waitMinutes() > 0)
                .count();
        String waits =
                waiting == 0 ? "" : "   " + waiting + (waiting == 1 ? " client waits" : " clients wait") + ": i why";
        String notes = view.notes().isEmpty() ? "" : "   " + view.notes().size() + " not as wished: i why";
        String settled = view.planSettled() ? "" : "   planning";
        return "no alarms" + waits + notes + settled;
    }

    private record Line(int rank, String text, Style style, String seenBy, boolean canBeSeen) {
        String tail(boolean mayWrite) {
            if (!seenBy.isEmpty()) return "seen " + Pane.cut(seenBy, 5);
            return canBeSeen && mayWrite ? "a seen" : "";
        }
    }
}
