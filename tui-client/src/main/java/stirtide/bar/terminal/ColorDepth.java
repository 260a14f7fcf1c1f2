package stirtide.bar.terminal;

import java.util.Locale;
import java.util.Map;

/** How many colors the terminal is given. */
public enum ColorDepth {
    /** None: bold, underline and reverse only. */
    NONE,
    /** The terminal's own sixteen. */
    SIXTEEN,
    /** The fixed table of 256. */
    TABLE,
    /** Red, green and blue. */
    FULL;

    /**
     * Chooses a depth.
     *
     * @param wanted {@code auto}, {@code 24}, {@code 256}, {@code 16} or {@code none}
     * @param environment environment variables
     */
    public static ColorDepth choose(String wanted, Map<String, String> environment) {
        return switch (wanted) {
            case "none" -> NONE;
            case "16" -> SIXTEEN;
            case "256" -> TABLE;
            case "24" -> FULL;
            default -> automatic(environment);
        };
    }

    private static ColorDepth automatic(Map<String, String> environment) {
        String term = environment.getOrDefault("TERM", "").toLowerCase(Locale.ROOT);
        String colorTerm = environment.getOrDefault("COLORTERM", "").toLowerCase(Locale.ROOT);
        // The NO_COLOR convention: present and not an empty string.
        if (!environment.getOrDefault("NO_COLOR", "").isEmpty() || term.equals("dumb")) return NONE;
        if (colorTerm.equals("truecolor") || colorTerm.equals("24bit")) return FULL;
        boolean table = term.endsWith("-256color") || term.startsWith("tmux");
        return table ? TABLE : SIXTEEN;
    }
}
