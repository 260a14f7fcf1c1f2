package stirtide.bar.cli;

import java.net.URI;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import stirtide.bar.canvas.Glyphs;
import stirtide.bar.client.Credentials;
import stirtide.bar.keys.KeyContext;
import stirtide.bar.link.StateFolder;
import stirtide.bar.terminal.ColorDepth;
import stirtide.bar.terminal.Theme;

/** Reads a command line. */
public final class OptionsReader {
    private static final int MOST_CELLS = 500;

    private final ParsedOptions parsed;

    private OptionsReader(ParsedOptions parsed) {
        this.parsed = parsed;
    }

    /** What came of reading a command line. */
    public sealed interface Answer {
        /** It is understood. */
        record Understood(BarOptions options) implements Answer {}

        /** A text was asked for: help, version or completion. */
        record Text(String text) implements Answer {}

        /** It is rejected; the sentence says what would be accepted. */
        record Wrong(String sentence) implements Answer {}
    }

    /**
     * Reads a command line.
     *
     * @param environment environment variables
     * @param userHome home folder of the user
     */
    public static Answer read(List<String> words, Map<String, String> environment, String userHome) {
        Optional<ParsedOptions> parsed = ParsedOptions.of(words);
        if (parsed.isEmpty()) return new Answer.Wrong(BarUsage.refusal(words));
        var reader = new OptionsReader(parsed.get());
        if (reader.has(BarOption.HELP)) return new Answer.Text(BarUsage.help());
        if (reader.has(BarOption.VERSION)) return new Answer.Text(BarUsage.version());
        if (reader.has(BarOption.COMPLETION)) return new Answer.Text(BarUsage.completion());
        return reader.problem()
                .<Answer>map(Answer.Wrong::new)
                .orElseGet(() -> new Answer.Understood(reader.options(environment, userHome)));
    }

    private boolean has(BarOption option) {
        return parsed.has(option);
    }

    private Optional<String> problem() {
        return dayProblem()
                .or(this::serverProblem)
                .or(this::choiceProblem)
                .or(() -> numberProblem(BarOption.WIDTH, 1, MOST_CELLS, ""))
                .or(() -> numberProblem(BarOption.HEIGHT, 1, MOST_CELLS, ""))
                .or(() -> numberProblem(BarOption.IDLE_MINUTES, 0, 999, " (never)"))
                .or(() -> ScaleOptions.problem(parsed))
                .or(() -> credentials().problem())
                .or(() -> has(BarOption.JSON) && !has(BarOption.ONCE)
                        ? Optional.of("--json goes with --once")
                        : Optional.empty());
    }

    private Optional<String> dayProblem() {
        if (has(BarOption.BEGIN)) {
            boolean alone =
                    !has(BarOption.DAY) && !has(BarOption.ONCE) && !has(BarOption.PLAIN) && !has(BarOption.READ_ONLY);
            return alone
                    ? Optional.empty()
                    : Optional.of("--begin opens a first day itself: without --day, --once, --plain, --read-only");
        }
        return parsed.value(BarOption.DAY, "").matches("[A-Za-z0-9._-]+/\\d{4}-\\d{2}-\\d{2}")
                ? Optional.empty()
                : Optional.of("--day takes a salon id and a date, such as harbor-loft/2027-05-14");
    }

    private Optional<String> serverProblem() {
        return parsed.value(BarOption.SERVER, BarOptions.DEFAULT_SERVER).matches("https?://[^\\s/?#]+/?")
                ? Optional.empty()
                : Optional.of("--server takes an address such as " + BarOptions.DEFAULT_SERVER);
    }

    private Optional<String> choiceProblem() {
        for (BarOption option : BarOption.values())
            if (!option.choices().isEmpty() && !option.choices().contains(parsed.choice(option)))
                return Optional.of(option.word() + " takes one of " + String.join(", ", option.choices()));
        return Optional.empty();
    }

    private Optional<String> numberProblem(BarOption option, int least, int most, String whatLeastMeans) {
        String text = parsed.value(option, "" + most);
        if (text.matches("\\d{1,3}") && Integer.parseInt(text) >= least && Integer.parseInt(text) <= most)
            return Optional.empty();
        return Optional.of(option.word() + " takes a number from " + least + whatLeastMeans + " to " + most);
    }

    private Credentials credentials() {
        return new Credentials(
                parsed.value(BarOption.TOKEN_FILE).map(Path::of),
                parsed.value(BarOption.TRUST).map(Path::of));
    }

    private BarOptions options(Map<String, String> environment, String userHome) {
        var source = new BarOptions.DaySource(
                URI.create(parsed.value(BarOption.SERVER, BarOptions.DEFAULT_SERVER)),
                parsed.value(BarOption.DAY, ""),
                parsed.value(BarOption.PERSON, ""),
                credentials());
        return new BarOptions(
                mode(),
                source,
                appearance(environment),
                has(BarOption.READ_ONLY),
                has(BarOption.KIOSK),
                has(BarOption.BELL),
                number(BarOption.IDLE_MINUTES, 10),
                ScaleOptions.wanted(parsed),
                Path.of(parsed.value(BarOption.REPORTS, ".")),
                parsed.value(BarOption.STATE).map(Path::of).orElseGet(() -> StateFolder.usual(environment, userHome)));
    }

    private BarOptions.Mode mode() {
        if (has(BarOption.PLAIN)) return BarOptions.Mode.PLAIN;
        if (has(BarOption.JSON)) return BarOptions.Mode.JSON;
        if (has(BarOption.ONCE)) return BarOptions.Mode.ONCE;
        return has(BarOption.BEGIN) ? BarOptions.Mode.BEGIN : BarOptions.Mode.LIVE;
    }

    private BarOptions.Appearance appearance(Map<String, String> environment) {
        String theme = parsed.choice(BarOption.THEME);
        return new BarOptions.Appearance(
                theme.equals("mono") ? ColorDepth.NONE : ColorDepth.choose(parsed.choice(BarOption.COLOR), environment),
                Theme.named(theme),
                glyphs(environment),
                !has(BarOption.NO_SYNC),
                KeyContext.valueOf(parsed.choice(BarOption.VIEW).toUpperCase(Locale.ROOT)),
                number(BarOption.WIDTH, 80),
                number(BarOption.HEIGHT, 24));
    }

    private Glyphs glyphs(Map<String, String> environment) {
        String name = parsed.choice(BarOption.GLYPHS);
        if (!name.equals("auto")) return Glyphs.named(name);
        // The text console of Linux has a PC's characters.
        boolean console =
                environment.getOrDefault("TERM", "").toLowerCase(Locale.ROOT).equals("linux");
        return console ? Glyphs.CP437 : Glyphs.FULL;
    }

    private int number(BarOption option, int otherwise) {
        return parsed.value(option).map(Integer::parseInt).orElse(otherwise);
    }
}
