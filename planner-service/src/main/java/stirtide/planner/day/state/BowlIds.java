package stirtide.planner.day.state;

import java.util.OptionalInt;

/** Bowl ids: the service number and a letter, {@code "7a"}, {@code "7b"}, after {@code "7z"} comes {@code "7aa"}. */
public final class BowlIds {
    private static final int LETTERS = 26;
    private static final int MAX_DIGITS = 6;

    private BowlIds() {}

    /** Id of the bowl with the given place among the bowls of its service, from 0. */
    public static String of(int service, int place) {
        var letters = new StringBuilder();
        // Ends: each round divides the rest by 26.
        for (int rest = place; rest >= 0; rest = rest / LETTERS - 1) letters.insert(0, (char) ('a' + rest % LETTERS));
        return service + letters.toString();
    }

    /** Service number of a bowl id, empty when the text is no bowl id. */
    public static OptionalInt serviceOf(String bowl) {
        int digits = 0;
        while (digits < bowl.length() && bowl.charAt(digits) >= '0' && bowl.charAt(digits) <= '9') digits++;
        if (digits == 0 || digits > MAX_DIGITS || digits == bowl.length()) return OptionalInt.empty();
        for (int i = digits; i < bowl.length(); i++)
            if (bowl.charAt(i) < 'a' || bowl.charAt(i) > 'z') return OptionalInt.empty();
        return OptionalInt.of(Integer.parseInt(bowl.substring(0, digits)));
    }
}
