package stirtide.bar.panels;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import stirtide.bar.keys.Key;
import stirtide.bar.keys.KeyBinding;
import stirtide.bar.keys.KeyContext;
import stirtide.bar.model.UiEffect;
import stirtide.bar.model.UiState;

/** All keys by place; typing narrows them down. */
public final class KeysPanel extends TextPanel {
    private static final int LONGEST = 20;

    private String typed = "";

    @Override
    public String title() {
        return "KEYS" + (typed.isEmpty() ? "  (type to narrow down)" : "  with \"" + typed + "\"");
    }

    @Override
    protected List<String> sentences(UiState scene) {
        var lines = new ArrayList<String>();
        for (KeyContext place : hereFirst(scene.pages().page())) {
            List<String> rows = lines(scene.keys(place)).stream()
                    .filter(line -> line.toLowerCase(Locale.ROOT).contains(typed.toLowerCase(Locale.ROOT)))
                    .toList();
            if (rows.isEmpty()) continue;
            lines.add("In " + place.words() + ":");
            lines.addAll(rows);
        }
        return lines.isEmpty() ? List.of("no key with that word") : lines;
    }

    private static List<KeyContext> hereFirst(KeyContext here) {
        var places = new ArrayList<>(List.of(KeyContext.values()));
        places.remove(here);
        places.add(0, here);
        return places;
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

    @Override
    public UiEffect press(Key key, boolean machine, UiState scene) {
        if (key.isText() && !machine && typed.length() < LONGEST) typed += key.character();
        else if (key.is(Key.Kind.ERASE) && !typed.isEmpty()) typed = typed.substring(0, typed.length() - 1);
        else return super.press(key, machine, scene);
        return new UiEffect.Stay();
    }
}
