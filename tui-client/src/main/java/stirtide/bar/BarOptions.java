package stirtide.bar;

import java.net.URI;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import stirtide.bar.canvas.Glyphs;
import stirtide.bar.keys.KeyContext;
import stirtide.bar.link.Credentials;
import stirtide.bar.link.StateFolder;
import stirtide.bar.scale.ScaleInput;
import stirtide.bar.terminal.ColorDepth;
import stirtide.bar.terminal.Theme;

/**
 * What was asked for on the command line.
 *
 * @param server address of the service
 * @param day salon id and date
 * @param personId who works at the terminal, empty text for nobody
 * @param once whether one picture is printed instead of a live one
 * @param json whether that picture is the day as JSON
 * @param width columns of a printed picture
 * @param height rows of a printed picture
 * @param readOnly whether keys that change the day are taken away
 * @param depth colors
 * @param theme look
 * @param glyphs characters
 * @param synchronizedOutput whether frames are marked for terminals that know such marks
 * @param view view that is shown first
 * @param bell whether a new alarm rings the terminal's bell
 * @param kiosk whether the keys that leave are taken away
 * @param plain whether lines are printed one after the other instead of a picture
 * @param scale scale to read, empty for none
 * @param reports folder the day is written to on demand
 * @param state folder for entries on their way and the last picture
 * @param idleMinutes minutes without a key after which who signed on is signed off, 0 for never
 * @param credentials token and certificates for a service that asks who the terminal is
 */
public record BarOptions(
        URI server,
        String day,
        String personId,
        boolean once,
        boolean json,
        int width,
        int height,
        boolean readOnly,
        ColorDepth depth,
        Theme theme,
        Glyphs glyphs,
        boolean synchronizedOutput,
        KeyContext view,
        boolean bell,
        boolean kiosk,
        boolean plain,
        Optional<ScaleInput.Wanted> scale,
        Path reports,
        Path state,
        int idleMinutes,
        Credentials credentials) {
    /** Where a service listens that was started without a word about it. */
    public static final String USUAL_SERVER = "http://127.0.0.1:7464";

    private static final int MOST_CELLS = 500;
    private static final String USUAL_IDLE_MINUTES = "10";
    private static final List<String> SWITCHES = List.of(
            "--begin", "--once", "--json", "--read-only", "--no-sync", "--bell", "--kiosk", "--plain", "--help");
    private static final Map<String, List<String>> CHOICES = Map.of(
            "--view", List.of("bar", "floor", "day", "setup"),
            "--color", List.of("auto", "24", "256", "16", "none"),
            "--theme", List.of("dark", "light", "mono", "term"),
            "--glyphs", List.of("auto", "full", "cp437", "ascii"));
    private static final List<String> VALUES = List.of(
            "--server",
            "--day",
            "--person",
            "--view",
            "--width",
            "--height",
            "--color",
            "--theme",
            "--glyphs",
            "--scale",
            "--dialect",
            "--reports",
            "--state",
            "--idle-minutes",
            "--token-file",
            "--trust");

    /** Whether the first day of a salon is to be opened before anything is shown. */
    boolean begins() {
        return day.isEmpty();
    }

    /** The same for a day that was just opened, with its setup shown first. */
    BarOptions on(String opened, String whoIsHere) {
        return new BarOptions(
                server,
                opened,
                whoIsHere,
                once,
                json,
                width,
                height,
                readOnly,
                depth,
                theme,
                glyphs,
                synchronizedOutput,
                KeyContext.SETUP,
                bell,
                kiosk,
                plain,
                scale,
                reports,
                state,
                idleMinutes,
                credentials);
    }

    /** What came of reading a command line. */
    public sealed interface Answer {
        /** It is understood. */
        record Understood(BarOptions options) implements Answer {}

        /** Help was asked for. */
        record HelpWanted() implements Answer {}

        /** It is not understood; the sentence says what would be accepted. */
        record Wrong(String sentence) implements Answer {}
    }

    /** Reads a command line. */
    public static Answer read(List<String> words, Map<String, String> environment, String userHome) {
        var given = new TreeMap<String, String>();
        Deque<String> rest = new ArrayDeque<>(words);
        while (!rest.isEmpty()) {
            String word = rest.removeFirst();
            int equals = word.indexOf('=');
            String name = equals < 0 ? word : word.substring(0, equals);
            if (SWITCHES.contains(word)) given.put(word, "");
            else if (!VALUES.contains(name)) return wrong("unknown option " + word + "; --help lists the options");
            else if (equals < 0 && rest.isEmpty()) return wrong(name + " needs a value");
            else given.put(name, equals < 0 ? rest.removeFirst() : word.substring(equals + 1));
        }
        if (given.containsKey("--help")) return new Answer.HelpWanted();
        Optional<String> problem = problem(given);
        return problem.<Answer>map(Answer.Wrong::new)
                .orElseGet(() -> new Answer.Understood(build(given, environment, userHome)));
    }

    private static Answer wrong(String sentence) {
        return new Answer.Wrong(sentence);
    }

    private static Optional<String> problem(Map<String, String> given) {
        if (given.containsKey("--begin")) {
            boolean alone = List.of("--day", "--once", "--plain", "--read-only").stream()
                    .noneMatch(given::containsKey);
            if (!alone)
                return Optional.of("--begin opens a first day itself: without --day, --once, --plain, --read-only");
        } else if (!given.getOrDefault("--day", "").matches("[A-Za-z0-9._-]+/\\d{4}-\\d{2}-\\d{2}")) {
            return Optional.of("--day takes a salon id and a date, such as harbor-loft/2027-05-14");
        }
        if (!given.getOrDefault("--server", USUAL_SERVER).matches("https?://[^\\s/?#]+/?")) {
            return Optional.of("--server takes an address such as " + USUAL_SERVER);
        }
        for (Map.Entry<String, List<String>> choice : new TreeMap<>(CHOICES).entrySet()) {
            String value = given.getOrDefault(choice.getKey(), choice.getValue().get(0));
            if (!choice.getValue().contains(value)) {
                return Optional.of(choice.getKey() + " takes one of " + String.join(", ", choice.getValue()));
            }
        }
        for (String name : List.of("--width", "--height")) {
            String cells = given.getOrDefault(name, "80");
            if (!cells.matches("\\d{1,3}") || Integer.parseInt(cells) < 1 || Integer.parseInt(cells) > MOST_CELLS) {
                return Optional.of(name + " takes a number from 1 to " + MOST_CELLS);
            }
        }
        if (!given.getOrDefault("--idle-minutes", USUAL_IDLE_MINUTES).matches("\\d{1,3}"))
            return Optional.of("--idle-minutes takes a number from 0 (never) to 999");
        Optional<String> scale = ScaleOptions.problem(given);
        if (scale.isPresent()) return scale;
        Optional<String> files = credentials(given).problem();
        if (files.isPresent()) return files;
        boolean jsonAlone = given.containsKey("--json") && !given.containsKey("--once");
        return jsonAlone ? Optional.of("--json goes with --once") : Optional.empty();
    }

    private static Credentials credentials(Map<String, String> given) {
        return new Credentials(
                Optional.ofNullable(given.get("--token-file")).map(Path::of),
                Optional.ofNullable(given.get("--trust")).map(Path::of));
    }

    private static BarOptions build(Map<String, String> given, Map<String, String> environment, String userHome) {
        String theme = given.getOrDefault("--theme", "dark");
        ColorDepth depth = ColorDepth.choose(given.getOrDefault("--color", "auto"), environment);
        String glyphs = given.getOrDefault("--glyphs", "auto");
        // The text console of Linux has a PC's characters.
        boolean console =
                environment.getOrDefault("TERM", "").toLowerCase(Locale.ROOT).equals("linux");
        String person = given.getOrDefault("--person", "");
        return new BarOptions(
                URI.create(given.getOrDefault("--server", USUAL_SERVER)),
                given.getOrDefault("--day", ""),
                person,
                given.containsKey("--once"),
                given.containsKey("--json"),
                Integer.parseInt(given.getOrDefault("--width", "80")),
                Integer.parseInt(given.getOrDefault("--height", "24")),
                given.containsKey("--read-only"),
                theme.equals("mono") ? ColorDepth.NONE : depth,
                Theme.named(theme),
                glyphs.equals("auto") ? console ? Glyphs.CP437 : Glyphs.FULL : Glyphs.named(glyphs),
                !given.containsKey("--no-sync"),
                KeyContext.valueOf(given.getOrDefault("--view", "bar").toUpperCase(Locale.ROOT)),
                given.containsKey("--bell"),
                given.containsKey("--kiosk"),
                given.containsKey("--plain"),
                ScaleOptions.wanted(given),
                Path.of(given.getOrDefault("--reports", ".")),
                given.containsKey("--state") ? Path.of(given.get("--state")) : StateFolder.usual(environment, userHome),
                Integer.parseInt(given.getOrDefault("--idle-minutes", USUAL_IDLE_MINUTES)),
                credentials(given));
    }

    /** The help text. */
    public static String help() {
        return """
                usage: bar --day SALON/DATE | --begin  [--person ID] [--server URL] [options]

                  --day SALON/DATE     the day to follow, such as harbor-loft/2027-05-14
                  --begin              asks for a salon that has nothing yet, opens its day, leads to its setup
                  --person ID          who works here; without it the terminal reads, or people sign on with a code
                  --server URL         address of the service, %s if left out
                  --read-only          no keys that change the day
                  --once               print one picture and end; also what happens without a terminal
                  --once --json        print the day as JSON and end
                  --view NAME          bar, floor, day or setup: the view shown first
                  --width N --height N size of the printed picture, 80 and 24 if left out
                  --theme NAME         dark, light, mono or term (the terminal's own colors)
                  --color NAME         auto, 24, 256, 16 or none; NO_COLOR is honored
                  --glyphs NAME        auto, full, cp437 or ascii
                  --no-sync            no marks around frames
                  --bell               a new alarm rings the bell, once in 10 seconds at most
                  --kiosk              no key leaves the program
                  --plain              lines one after the other, for readers of screens; reads only
                  --scale usb|PATH     scale whose weight Enter takes: the first on USB, or a device
                  --dialect FILE       how a serial scale at PATH writes its lines
                  --reports DIR        where the day is written to, the current folder if left out
                  --state DIR          where entries wait while the link is down
                  --token-file FILE    token of this terminal, for a service that asks who it is
                  --idle-minutes N     who signed on is signed off after so long without a key: 10, 0 for never
                  --trust FILE         certificates (PEM) by which an https service is known
                  --help               this text

                ends with 0, 64 wrong usage, 69 no service (with --once), 70 a fault of the program, 74 terminal gone
                """.formatted(USUAL_SERVER);
    }
}
