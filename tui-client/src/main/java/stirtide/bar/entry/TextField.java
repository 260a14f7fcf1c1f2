package stirtide.bar.entry;

import java.util.Optional;
import java.util.function.IntPredicate;
import stirtide.bar.keys.Key;

/** A line of text with a rule for its characters and one for the whole. */
final class TextField implements Field {
    private final String label;
    private final int longest;
    private final IntPredicate characters;
    private final String pattern;
    private final String accepted;
    private String typed;

    /**
     * A field.
     *
     * @param longest most characters
     * @param characters characters it takes
     * @param pattern regular expression the whole must match to be kept
     * @param accepted what it takes, in words
     * @param first content at the start
     */
    TextField(String label, int longest, IntPredicate characters, String pattern, String accepted, String first) {
        this.label = label;
        this.longest = longest;
        this.characters = characters;
        this.pattern = pattern;
        this.accepted = accepted;
        typed = first;
    }

    @Override
    public String label() {
        return label;
    }

    @Override
    public String text() {
        return typed;
    }

    @Override
    public Optional<String> press(Key key, boolean machine) {
        if (key.is(Key.Kind.ERASE)) {
            typed = typed.isEmpty() ? typed : typed.substring(0, typed.length() - 1);
            return Optional.empty();
        }
        if (!key.isText()) return Optional.empty();
        if (machine) return Optional.of("takes fingers only: keys came faster than a person types");
        if (!characters.test(key.character())) return Optional.of("takes " + accepted);
        if (typed.length() >= longest) return Optional.of("is full: takes up to " + longest + " characters");
        typed += key.character();
        return Optional.empty();
    }

    @Override
    public Optional<String> problem() {
        return typed.matches(pattern) ? Optional.empty() : Optional.of("takes " + accepted);
    }
}
