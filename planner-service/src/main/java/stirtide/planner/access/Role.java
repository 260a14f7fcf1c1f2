package stirtide.planner.access;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What a caller may be. */
public enum Role {
    /** A screen without a signed-on person: it shows the day and changes nothing. */
    TERMINAL,
    /** Works at the bar. */
    ASSISTANT,
    /** Plans the floor, decides on clients and allowances. */
    COLORIST,
    /** Answers for the salon: its setup, its days, its clients' data. */
    MANAGER,
    /** A program: books and reads, never sees who a client is, never touches a bowl. */
    SERVICE;

    /** Lower case, as files, options and the wire write it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The role of a word, if there is one. */
    public static Optional<Role> of(String word) {
        return Arrays.stream(values()).filter(role -> role.word().equals(word)).findFirst();
    }
}
