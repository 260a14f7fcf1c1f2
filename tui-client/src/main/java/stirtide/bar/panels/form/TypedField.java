package stirtide.bar.panels.form;

import java.util.Optional;
import stirtide.bar.keys.Key;

/** A field that is typed into, character by character, up to a number of them. */
public abstract class TypedField implements FormField {
    /** A character that is dropped without a reason. */
    static final Optional<String> DROPPED = Optional.of("");

    private final String label;
    private final int longest;
    private String typed;

    TypedField(String label, int longest, String first) {
        this.label = label;
        this.longest = longest;
        typed = first;
    }

    /** Why a character is rejected, {@link #DROPPED} to give no reason, empty when it is accepted. */
    abstract Optional<String> refusal(char letter, boolean machine);

    /** Erases the content. */
    public final void clear() {
        typed = "";
    }

    @Override
    public final String label() {
        return label;
    }

    @Override
    public final String text() {
        return typed;
    }

    @Override
    public final Optional<String> press(Key key, boolean machine) {
        if (key.is(Key.Kind.ERASE)) typed = typed.isEmpty() ? typed : typed.substring(0, typed.length() - 1);
        if (!key.isText()) return Optional.empty();
        Optional<String> refused = refusal(key.character(), machine);
        if (refused.isPresent()) return refused.filter(why -> !why.isEmpty());
        if (typed.length() >= longest) return Optional.of("is full: takes up to " + longest + " characters");
        typed += key.character();
        return Optional.empty();
    }
}
