package stirtide.bar.panels;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stirtide.bar.keys.Key;
import stirtide.bar.keys.KeyBinding;
import stirtide.bar.keys.KeyContext;
import stirtide.bar.model.Panel;
import stirtide.bar.model.Panel.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.bar.panels.list.TextPanel;

/** All keys by context; typing filters them. */
public final class KeysPanel {
    private static final int LONGEST = 20;

    private String typed = "";

    private KeysPanel() {}

    /** All keys, those of the view on show first. */
    public static Panel of() {
        var filter = new KeysPanel();
        return new TextPanel(
                KeyContext.READING,
                filter::title,
                filter::lines,
                (key, machine, state) ->
                        filter.press(key, machine) ? Optional.of(new UiEffect.Stay()) : Optional.empty());
    }

    private String title() {
        return "KEYS" + (typed.isEmpty() ? "  (type to narrow down)" : "  with \"" + typed + "\"");
    }

    private List<String> lines(UiState state) {
        var contexts = new ArrayList<>(List.of(KeyContext.values()));
        contexts.remove(state.pages().page());
        contexts.add(0, state.pages().page());
        var lines = new ArrayList<String>();
        for (KeyContext context : contexts) {
            List<String> rows = lines(state.keys(context)).stream()
                    .filter(line -> line.toLowerCase(Locale.ROOT).contains(typed.toLowerCase(Locale.ROOT)))
                    .toList();
            if (rows.isEmpty()) continue;
            lines.add("In " + context.words() + ":");
            lines.addAll(rows);
        }
        return lines.isEmpty() ? List.of("no key with that word") : lines;
    }

    // Several keys that do the same stand in one line.
    private static List<String> lines(List<KeyBinding> bindings) {
        var keysBySentence = new LinkedHashMap<String, String>();
        bindings.forEach(binding ->
                keysBySentence.merge(binding.sentence(), binding.shown(), (keys, next) -> keys + ", " + next));
        return keysBySentence.entrySet().stream()
                .map(line -> line.getValue() + ":  " + line.getKey())
                .toList();
    }

    private boolean press(Key key, boolean machine) {
        if (key.isText() && !machine && typed.length() < LONGEST) typed += key.character();
        else if (key.is(Key.Kind.ERASE) && !typed.isEmpty()) typed = typed.substring(0, typed.length() - 1);
        else return false;
        return true;
    }
}
