package stirtide.bar.keys;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Builds the bindings of one context, in the order in which the footer and the help show them. */
final class KeyBindings {
    private final KeyContext context;
    private final List<KeyBinding> bindings = new ArrayList<>();

    private KeyBindings(KeyContext context) {
        this.context = context;
    }

    /** No bindings yet. */
    static KeyBindings in(KeyContext context) {
        return new KeyBindings(context);
    }

    /** A character that changes nothing of the day. */
    KeyBindings key(char character, KeyAction action, String label, String sentence) {
        return add(Key.of(character, 0), "" + character, action, label, sentence, false, false);
    }

    /** A character that changes the day. */
    KeyBindings write(char character, KeyAction action, String label, String sentence) {
        return add(Key.of(character, 0), "" + character, action, label, sentence, true, false);
    }

    /** A character that drives the salon's clock. */
    KeyBindings drive(char character, KeyAction action, String label, String sentence) {
        return add(Key.of(character, 0), "" + character, action, label, sentence, false, true);
    }

    /** A character with Control held; the footer leaves it out. */
    KeyBindings control(char character, KeyAction action, String sentence) {
        String shown = "Ctrl-" + Character.toUpperCase(character);
        return add(Key.control(character, 0), shown, action, "", sentence, false, false);
    }

    /** A key that is no character and changes nothing of the day. */
    KeyBindings key(Key.Kind kind, KeyAction action, String label, String sentence) {
        return add(Key.of(kind, 0), shown(kind), action, label, sentence, false, false);
    }

    /** A key that is no character and changes the day. */
    KeyBindings write(Key.Kind kind, KeyAction action, String label, String sentence) {
        return add(Key.of(kind, 0), shown(kind), action, label, sentence, true, false);
    }

    /** The arrows left and right, and the letters h and l, which do the same. */
    KeyBindings leftAndRight(KeyAction left, String leftSentence, KeyAction right, String rightSentence) {
        return key(Key.Kind.LEFT, left, "", leftSentence)
                .key(Key.Kind.RIGHT, right, "", rightSentence)
                .key('h', left, "", leftSentence)
                .key('l', right, "", rightSentence);
    }

    /** The arrows up and down, which move by a row or line. */
    KeyBindings upAndDown(String step) {
        return key(Key.Kind.UP, KeyAction.UP, "", step + " up").key(Key.Kind.DOWN, KeyAction.DOWN, "", step + " down");
    }

    /** The arrows up and down, and the letters k and j, which move by a row. */
    KeyBindings rows() {
        return upAndDown("row").key('k', KeyAction.UP, "", "row up").key('j', KeyAction.DOWN, "", "row down");
    }

    List<KeyBinding> all() {
        return List.copyOf(bindings);
    }

    private static String shown(Key.Kind kind) {
        return switch (kind) {
            case ENTER -> "Enter";
            case ESCAPE -> "Esc";
            case TAB -> "Tab";
            case BACK_TAB -> "Shift-Tab";
            case ERASE -> "Backspace";
            default -> kind.name().toLowerCase(Locale.ROOT);
        };
    }

    private KeyBindings add(
            Key key, String shown, KeyAction action, String label, String sentence, boolean writes, boolean drives) {
        bindings.add(new KeyBinding(context, action, key, shown, label, sentence, writes, drives));
        return this;
    }
}
