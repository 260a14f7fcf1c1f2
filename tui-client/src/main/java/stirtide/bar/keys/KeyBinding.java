package stirtide.bar.keys;

/**
 * One line of the key table.
 *
 * @param context where it works
 * @param action what it does
 * @param key the key, with 0 as its time
 * @param shown how the key is written
 * @param label word for the footer, empty text when the footer leaves it out
 * @param sentence what it does, for the help and the handbook
 * @param writes whether it changes the day; such keys do nothing when the terminal may only read
 * @param drivenClockOnly whether it needs a service whose clock can be driven
 */
public record KeyBinding(
        KeyContext context,
        KeyAction action,
        Key key,
        String shown,
        String label,
        String sentence,
        boolean writes,
        boolean drivenClockOnly) {

    /** Whether a key is this one. */
    public boolean matches(Key pressed) {
        if (!pressed.is(key.kind())) return false;
        boolean sameCharacter = pressed.character() == key.character() && pressed.control() == key.control();
        return !key.is(Key.Kind.CHARACTER) || sameCharacter;
    }

    /** A key that does this, pressed at a monotonic reading. */
    public Key press(long nanos) {
        return new Key(key.kind(), key.character(), key.control(), nanos);
    }
}
