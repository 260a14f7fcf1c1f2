package stirtide.bar.cli;

import java.util.List;
import java.util.Optional;

/** The options of the command line: reading them, the help and the completion all go by this list. */
enum BarOption {
    DAY("--day", "SALON/DATE", "the day to follow, such as harbor-loft/2027-05-14"),
    BEGIN("--begin", "", "asks for a salon that has nothing yet, opens its day, leads to its setup"),
    PERSON("--person", "ID", "who works here; without it the terminal reads, or people sign on with a code"),
    SERVER("--server", "URL", "address of the service, " + BarOptions.DEFAULT_SERVER + " if left out"),
    READ_ONLY("--read-only", "", "no keys that change the day"),
    ONCE("--once", "", "print one picture and end; also what happens without a terminal"),
    JSON("--json", "", "with --once: print the day as JSON and end"),
    VIEW("--view", "NAME", "the view shown first", "bar", "floor", "day", "setup"),
    WIDTH("--width", "N", "columns of the printed picture, 80 if left out"),
    HEIGHT("--height", "N", "rows of the printed picture, 24 if left out"),
    THEME("--theme", "NAME", "colors; term are the terminal's own", "dark", "light", "mono", "term"),
    COLOR("--color", "NAME", "number of colors; NO_COLOR is honored", "auto", "24", "256", "16", "none"),
    GLYPHS("--glyphs", "NAME", "characters that are drawn", "auto", "full", "cp437", "ascii"),
    NO_SYNC("--no-sync", "", "no marks around frames"),
    BELL("--bell", "", "a new alarm rings the bell, once in 10 seconds at most"),
    KIOSK("--kiosk", "", "no key leaves the program"),
    PLAIN("--plain", "", "lines one after the other, for readers of screens; reads only"),
    SCALE("--scale", "usb|PATH", "scale whose weight Enter takes: the first on USB, or a device"),
    DIALECT("--dialect", "FILE", "how a serial scale at PATH writes its lines"),
    REPORTS("--reports", "DIR", "where the day is written to, the current folder if left out"),
    STATE("--state", "DIR", "where entries wait while the link is down"),
    TOKEN_FILE("--token-file", "FILE", "token of this terminal, for a service that asks who it is"),
    IDLE_MINUTES("--idle-minutes", "N", "who signed on is signed off after so long without a key: 10, 0 for never"),
    TRUST("--trust", "FILE", "certificates (PEM) by which an https service is known"),
    HELP("--help", "", "this text"),
    VERSION("--version", "", "the version"),
    COMPLETION("--completion", "", "a script that completes these options in bash and zsh");

    private final String word;
    private final String value;
    private final String description;
    private final List<String> choices;

    BarOption(String word, String value, String description, String... choices) {
        this.word = word;
        this.value = value;
        this.description = description;
        this.choices = List.of(choices);
    }

    /** What is typed, such as {@code --day}. */
    String word() {
        return word;
    }

    /** What the value is, empty text for an option without one. */
    String value() {
        return value;
    }

    String description() {
        return choices.isEmpty() ? description : description + ": " + String.join(", ", choices);
    }

    /** The values there are, the default first; empty when any may be tried. */
    List<String> choices() {
        return choices;
    }

    static Optional<BarOption> named(String word) {
        for (BarOption option : values()) if (option.word.equals(word)) return Optional.of(option);
        return Optional.empty();
    }
}
