package stirtide.bar.panels.form;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Optional;
import java.util.function.IntPredicate;
import stirtide.bar.text.TimeText;

/** A line of text with a rule for its characters and one for the whole. */
public final class TextField extends TypedField {
    private final IntPredicate characters;
    private final String pattern;
    private final String accepted;

    /**
     * A field.
     *
     * @param longest most characters
     * @param characters characters it takes
     * @param pattern regular expression the whole must match to be kept
     * @param accepted what it takes, in words
     * @param first content at the start
     */
    public TextField(
            String label, int longest, IntPredicate characters, String pattern, String accepted, String first) {
        super(label, longest, first);
        this.characters = characters;
        this.pattern = pattern;
        this.accepted = accepted;
    }

    /** A field that takes any printable character. */
    public TextField(String label, int longest, String pattern, String accepted, String first) {
        this(label, longest, letter -> letter >= ' ', pattern, accepted, first);
    }

    /** A level of hair, 1 to 10; nothing is accepted too where {@code optional}. */
    public static TextField level(String label, boolean optional) {
        String level = "([1-9]([.,]\\d)?|10([.,]0)?)";
        String accepted = "a level of 1 to 10, such as 5 or 7.5" + (optional ? ", or nothing" : "");
        return new TextField(label, 4, optional ? level + "?" : level, accepted, "");
    }

    /** A time of day such as {@code 14:05}; the field begins with one. */
    public static TextField time(String label, Instant first, ZoneId zone) {
        return new TextField(
                label,
                5,
                letter -> letter == ':' || Character.isDigit(letter),
                "([01]\\d|2[0-3]):[0-5]\\d",
                "a time such as 14:05",
                TimeText.minute(first, zone));
    }

    /** The time typed, on a date; the field must be valid. */
    public Instant instant(LocalDate date, ZoneId zone) {
        return date.atTime(LocalTime.parse(text())).atZone(zone).toInstant();
    }

    @Override
    Optional<String> refusal(char letter, boolean machine) {
        // A scale types figures; letters that come in a bunch were held up by a slow line.
        boolean figure = !Character.isLetter(letter) && letter != ' ';
        if (machine && figure) {
            // The first keys of a burst cannot be distinguished from typing; half a weight would be a wrong one.
            clear();
            return Optional.of("takes fingers only: keys came faster than a person types");
        }
        return characters.test(letter) ? Optional.empty() : Optional.of("takes " + accepted);
    }

    @Override
    public Optional<String> problem() {
        return text().matches(pattern) ? Optional.empty() : Optional.of("takes " + accepted);
    }
}
