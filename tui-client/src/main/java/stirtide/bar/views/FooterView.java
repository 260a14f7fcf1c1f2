package stirtide.bar.views;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stirtide.bar.canvas.Pane;
import stirtide.bar.canvas.Style;
import stirtide.bar.keys.KeyAction;
import stirtide.bar.keys.KeyBinding;
import stirtide.bar.keys.KeyContext;
import stirtide.bar.model.Notice;
import stirtide.bar.model.Overlay;
import stirtide.bar.model.UiState;
import stirtide.bar.text.LineWrap;
import stirtide.events.view.DayView;

/** Three rows: what just happened, then the keys of this place in two rows, from the key table. */
final class FooterView {
    private static final String GAP = "  ";
    private static final int ROWS = 2;
    private static final int FOOT_ROWS = ROWS + 1;

    /** Rows of the frame of a panel. */
    private static final int FRAME_ROWS = 2;

    /** Rows of header, alarms and the line above a message: no message covers them. */
    private static final int HEAD_ROWS = 3;

    private FooterView() {}

    static void draw(Pane rows, UiState scene) {
        if (message(scene, rows.width()).size() <= 1) happened(rows, scene);
        List<String> lines = lines(scene, rows.width());
        for (int i = 0; i < lines.size(); i++) rows.put(0, 1 + i, lines.get(i), Style.DIM);
    }

    /** Rows above the footer that a long message takes, with a line above it. */
    static int rowsAbove(UiState scene, int columns) {
        int lines = message(scene, columns).size();
        return lines <= 1 || scene.panel().isPresent() ? 0 : lines;
    }

    /**
     * A message that is too long for its row: it takes rows of the view, or while a panel is open, which it must not cover,
     * those of the keys.
     */
    static void drawLong(Pane whole, UiState scene) {
        List<String> lines = message(scene, whole.width());
        boolean rowCovered = scene.panel()
                .filter(panel -> panel.rows() + FRAME_ROWS > whole.height() - HEAD_ROWS - FOOT_ROWS + 1)
                .isPresent();
        if (lines.isEmpty() || lines.size() == 1 && !rowCovered) return;
        boolean above = scene.panel().isEmpty();
        int room = above ? whole.height() - HEAD_ROWS - FOOT_ROWS : rowCovered ? ROWS : FOOT_ROWS;
        int shown = Math.min(lines.size(), room);
        int top = whole.height() - (above ? ROWS + shown : room);
        whole.part(0, top, whole.width(), above ? shown : room).clear();
        if (above) whole.rule(top - 1);
        for (int i = 0; i < shown; i++) {
            boolean last = i == shown - 1 && shown < lines.size();
            String line = last
                    ? Pane.cut(
                            lines.get(i) + " " + lines.get(i + 1), lines.get(i).length())
                    : lines.get(i);
            whole.put(0, top + i, line, Style.STRONG);
        }
        String waiting = waiting(scene);
        whole.put(whole.width() - waiting.length(), top + shown - 1, waiting, Style.STRONG);
    }

    /** The newest notice in lines; where there is none, why there is no link. */
    private static List<String> message(UiState scene, int columns) {
        int room = room(scene, columns);
        List<Notice> notices = scene.notices();
        String why = scene.link().why();
        String text = !notices.isEmpty() ? words(notices) : why.isEmpty() ? "" : "no link: " + why;
        if (text.isEmpty()) return List.of();
        return text.length() <= room ? List.of(text) : LineWrap.wrap(text, room);
    }

    private static String words(List<Notice> notices) {
        Notice newest = notices.get(notices.size() - 1);
        long others = notices.stream().filter(Notice::lasting).count() - 1;
        String more = newest.lasting() && others > 0 ? "  " + others + " more: i" : "";
        return newest.words() + more + (newest.lasting() ? "  Esc clears" : "");
    }

    private static int room(UiState scene, int columns) {
        String waiting = waiting(scene);
        return columns - (waiting.isEmpty() ? 0 : waiting.length() + 2);
    }

    private static String waiting(UiState scene) {
        String shelved = scene.alarms().shelved() == 0 ? "" : scene.alarms().shelved() + " shelved  ";
        int entries = scene.link().waitingEntries();
        String unsent = entries == 0 ? "" : entries + (entries == 1 ? " waits" : " wait") + " to be sent";
        return (shelved + unsent).strip();
    }

    private static void happened(Pane rows, UiState scene) {
        String waiting = waiting(scene);
        int room = room(scene, rows.width());
        List<String> message = message(scene, rows.width());
        if (!message.isEmpty()) rows.put(0, 0, message.get(0), Style.STRONG);
        else rows.fit(0, 0, room, last(scene, room), Style.DIM);
        rows.put(rows.width() - waiting.length(), 0, waiting, Style.STRONG);
    }

    // What does not fit whole is left out, but for the newest.
    private static String last(UiState scene, int room) {
        List<DayView.ActionCard> actions = scene.view().map(DayView::actions).orElse(List.of());
        var text = new StringBuilder();
        for (DayView.ActionCard action : actions.subList(0, Math.min(3, actions.size()))) {
            String next = (text.isEmpty() ? "last: " : "   ") + action.sentence() + "  " + scene.name(action.actor())
                    + " " + scene.minute(action.time());
            if (!text.isEmpty() && text.length() + next.length() > room) break;
            text.append(next);
        }
        return text.toString();
    }

    // Two rows; where not all keys fit, the last of them is the key that shows the others.
    private static List<String> lines(UiState scene, int columns) {
        KeyContext place =
                scene.panel().map(Overlay::context).orElse(scene.pages().page());
        var labeled = scene.keys(place).stream()
                .filter(binding -> !binding.label().isEmpty())
                .filter(binding -> scene.panel()
                        .map(panel -> panel.offers().test(binding.action()))
                        .orElse(true))
                .toList();
        List<String> lines = lines(labeled, columns);
        Optional<KeyBinding> others = labeled.stream()
                .filter(binding -> binding.action() == KeyAction.KEYS)
                .findFirst();
        if (lines.size() <= ROWS || others.isEmpty()) return lines.subList(0, Math.min(ROWS, lines.size()));
        var shown = new ArrayList<>(labeled.stream()
                .filter(binding -> binding.action() != KeyAction.KEYS)
                .toList());
        // Ends: one key less each round, and one key fits.
        while (lines.size() > ROWS) {
            shown.remove(shown.size() - 1);
            lines = lines(Stream.concat(shown.stream(), others.stream()).toList(), columns);
        }
        return lines;
    }

    private static List<String> lines(List<KeyBinding> bindings, int columns) {
        var lines = new ArrayList<String>();
        var line = new StringBuilder();
        for (KeyBinding binding : bindings) {
            String text = binding.shown() + " " + binding.label();
            if (line.length() > 0 && line.length() + GAP.length() + text.length() > columns) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() > 0 ? GAP : "").append(text);
        }
        Optional.of(line.toString()).filter(rest -> !rest.isEmpty()).ifPresent(lines::add);
        return lines;
    }
}
