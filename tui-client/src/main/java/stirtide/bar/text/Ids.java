package stirtide.bar.text;

import java.util.Collection;
import java.util.Locale;

/** Ids made of names. */
public final class Ids {
    private static final int LONGEST = 32;

    private Ids() {}

    /** An id made of a name that is not among those taken: small letters, digits and hyphens, as the files want ids. */
    public static String of(String name, Collection<String> taken) {
        return of(name, LONGEST, taken);
    }

    /** The same, cut to {@code longest} characters before a number is added. */
    public static String of(String name, int longest, Collection<String> taken) {
        String plain =
                name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-+|-+$", "");
        String base = plain.isEmpty() ? "one" : plain.substring(0, Math.min(longest, plain.length()));
        String id = base;
        for (int i = 2; taken.contains(id); i++) id = base + "-" + i;
        return id;
    }
}
