package stirtide.bar.keys;

/**
 * One line of the key table.
 *
 * @param place where it works
 * @param action what it does
 * @param kind kind of the key
 * @param character the character, for a character
 * @param control whether Control is held
 * @param shown how the key is written
 * @param label word for the footer, empty text when the footer leaves it out
 * @param sentence what it does, for the help and the handbook
 * @param writes whether it changes the day; such keys are gone when the terminal may only read
 * @param drivenClockOnly whether it needs a service whose clock can be driven
 */
public record KeyBinding(
        KeyContext place,
        KeyAction action,
        Key.Kind kind,
        char character,
        boolean control,
        String shown,
        String label,
        String sentence,
        boolean writes,
        boolean drivenClockOnly) {

    /** Whether a key is this one. */
    public boolean matches(Key key) {
        if (key.kind() != kind) return false;
        return kind != Key.Kind.CHARACTER || (key.character() == character && key.control() == control);
    }

    /** A key that does this. */
    public Key press(long nanos) {
        return new Key(kind, character, control, nanos);
    }

    KeyBinding writing() {
        return new KeyBinding(place, action, kind, character, control, shown, label, sentence, true, drivenClockOnly);
    }

    KeyBinding forDrivenClock() {
        return new KeyBinding(place, action, kind, character, control, shown, label, sentence, writes, true);
    }

    static KeyBinding character(KeyContext place, KeyAction action, char character, String label, String sentence) {
        String shown = String.valueOf(character);
        return new KeyBinding(
                place, action, Key.Kind.CHARACTER, character, false, shown, label, sentence, false, false);
    }

    static KeyBinding control(KeyContext place, KeyAction action, char character, String sentence) {
        String shown = "Ctrl-" + Character.toUpperCase(character);
        return new KeyBinding(place, action, Key.Kind.CHARACTER, character, true, shown, "", sentence, false, false);
    }

    static KeyBinding special(
            KeyContext place, KeyAction action, Key.Kind kind, String shown, String label, String sentence) {
        return new KeyBinding(place, action, kind, ' ', false, shown, label, sentence, false, false);
    }
}
