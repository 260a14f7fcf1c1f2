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
import stirtide.events.view.DayView;

/** Three rows: what just happened, then the keys of this place in two rows, from the key table. */
final class FooterView {
    private static final String GAP = "  ";
    private static final int ROWS = 2;

    private FooterView() {}

    static void draw(Pane rows, UiState scene) {
        happened(rows, scene);
        List<String> lines = lines(scene, rows.width());
        for (int i = 0; i < lines.size(); i++) rows.put(0, 1 + i, lines.get(i), Style.DIM);
    }

    private static void happened(Pane rows, UiState scene) {
        String shelved = scene.alarms().shelved() == 0 ? "" : scene.alarms().shelved() + " shelved  ";
        int entries = scene.link().waitingEntries();
        String unsent = entries == 0 ? "" : entries + (entries == 1 ? " waits" : " wait") + " to be sent";
        String waiting = (shelved + unsent).strip();
        int room = rows.width() - (waiting.isEmpty() ? 0 : waiting.length() + 2);
        List<Notice> notices = scene.notices();
        if (notices.isEmpty()) {
            rows.fit(0, 0, room, last(scene, room), Style.DIM);
        } else {
            Notice newest = notices.get(notices.size() - 1);
            long lasting = notices.stream().filter(Notice::lasting).count();
            String more = lasting > 1 ? " (" + lasting + ")" : "";
            String tail = newest.lasting() ? more + "  Esc clears" : "";
            rows.put(0, 0, Pane.cut(newest.words(), room - tail.length()) + tail, Style.STRONG);
        }
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
