package stirtide.bar.views;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import stirtide.bar.canvas.Pane;
import stirtide.bar.canvas.Style;
import stirtide.bar.model.AlarmList;
import stirtide.bar.model.LinkStatus;
import stirtide.bar.model.UiState;
import stirtide.bar.text.CodeText;
import stirtide.bar.text.CountText;
import stirtide.bar.text.TimeText;
import stirtide.events.view.AlarmCard;
import stirtide.events.view.DayView;

/** Alarms, one a row: high first, then oldest; the row says how many there are. */
final class AlarmView {
    private static final int TAIL = 18;

    private AlarmView() {}

    static void draw(Pane rows, UiState scene) {
        List<Line> lines = lines(scene);
        if (lines.isEmpty()) {
            rows.put(0, 0, quiet(scene), Style.DIM);
            return;
        }
        for (int row = 0; row < Math.min(rows.height(), lines.size()); row++) draw(rows, row, lines, scene);
    }

    private static void draw(Pane rows, int row, List<Line> lines, UiState scene) {
        Line line = lines.get(row);
        int tail = rows.width() - TAIL;
        String sign = line.signIsOff() ? " " : line.text().substring(0, 1);
        rows.fit(0, row, tail - 1, sign + line.text().substring(1), line.style());
        rows.put(tail, row, line.tail(scene.mayWrite()), Style.TEXT);
        String count = "1 of " + lines.size();
        if (row == 0) rows.right(rows.width(), row, 8, count, Style.DIM);
    }

    private static List<Line> lines(UiState scene) {
        var lines = new ArrayList<Line>();
        LinkStatus link = scene.link();
        if (link.state() == LinkStatus.State.LOST) {
            String waiting = link.waitingEntries() == 0 ? "" : "   " + link.waitingEntries() + " entries waiting";
            String text =
                    "NO LINK for " + TimeText.age(link.ageSeconds()) + ": clocks run on" + waiting + because(link);
            lines.add(new Line(1, "▲ MEDIUM  " + text, Style.MEDIUM, "", false, false));
        }
        scene.alarms().rows().forEach(row -> lines.add(line(row, scene)));
        lines.sort(Comparator.comparingInt(Line::rank));
        return lines;
    }

    private static String because(LinkStatus link) {
        return link.why().isEmpty() ? "" : "   " + link.why();
    }

    private static Line line(AlarmList.Row row, UiState scene) {
        AlarmCard alarm = row.first();
        String seen =
                row.unseen() ? "" : alarm.acknowledgedBy().map(scene::name).orElse("here");
        String what = scene.alarms().flood() ? kind(row) : words(alarm, scene);
        String text = symbol(alarm.priority()) + " " + alarm.priority() + "  " + what;
        boolean off = row.signIsOff(scene.nanos());
        return new Line(rank(alarm.priority()), text, style(alarm.priority()), seen, row.unseen(), off);
    }

    // In a flood one line stands for a kind: how many there are, and at which chairs.
    private static String kind(AlarmList.Row row) {
        String chairs = row.alarms().stream()
                .map(AlarmCard::chair)
                .distinct()
                .sorted()
                .map(String::valueOf)
                .collect(Collectors.joining(", "));
        String name = CodeText.words(row.first().kind());
        String what = row.first().bowl().isEmpty() ? "alarm" : "bowl";
        return CountText.of(row.alarms().size(), what)
                + (what.equals("alarm") ? ": " : " ")
                + name
                + (chairs.contains(",") ? ", chairs " : ", chair ")
                + chairs;
    }

    // The service's sentence is long; where the life of a bowl is at stake the time left says it in a line.
    private static String words(AlarmCard alarm, UiState scene) {
        String bowlName = alarm.bowl().isEmpty() ? "" : "bowl " + alarm.bowl() + "  ";
        String head = bowlName + (alarm.chair() == 0 ? "" : "chair " + alarm.chair() + "  ");
        Optional<String> left = scene.view()
                .flatMap(view -> view.live(alarm.bowl()))
                .map(bowl -> TimeText.left(bowl.lifeEnds(), scene.now()));
        if (left.isPresent() && alarm.kind().equals("PAST_LIFE")) {
            return head + "PAST LIFE " + left.get() + ": bin it, mix again";
        }
        if (left.isPresent() && alarm.kind().equals("LOW_LIFE")) {
            return head + "LOW LIFE " + left.get() + ": use it up or bin it";
        }
        String place = alarm.bowl().isEmpty() ? "chair " + alarm.chair() : alarm.bowl();
        boolean named = alarm.sentence().contains(place);
        return named ? alarm.sentence() : head + alarm.sentence();
    }

    private static String quiet(UiState scene) {
        if (scene.view().isEmpty()) return "waiting for the service" + because(scene.link());
        DayView view = scene.view().get();
        if (view.closed()) return "the day is closed";
        long waiting = view.services().stream()
                .filter(service -> service.waitMinutes() > 0)
                .count();
        String waits =
                waiting == 0 ? "" : "   " + waiting + (waiting == 1 ? " client waits" : " clients wait") + ": i why";
        String notes = view.notes().isEmpty() ? "" : "   " + view.notes().size() + " not as wished: i why";
        String better = view.betterPlanSought() ? "   looking for a better plan" : "";
        String settled = view.planSettled() ? better : "   planning";
        return "no alarms" + waits + notes + settled;
    }

    private static int rank(String priority) {
        return priority.equals("HIGH") ? 0 : priority.equals("MEDIUM") ? 1 : 2;
    }

    private static Style style(String priority) {
        return rank(priority) == 0 ? Style.HIGH : rank(priority) == 1 ? Style.MEDIUM : Style.LOW;
    }

    private static String symbol(String priority) {
        return rank(priority) == 0 ? "■" : rank(priority) == 1 ? "▲" : "i";
    }

    private record Line(int rank, String text, Style style, String seenBy, boolean canBeSeen, boolean signIsOff) {
        String tail(boolean mayWrite) {
            if (!seenBy.isEmpty()) return "seen " + Pane.cut(seenBy, 5);
            return canBeSeen && mayWrite ? "a seen" : "";
        }
    }
}
