package stirtide.planner.service;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import stirtide.planner.http.HttpSecurity;

/** Reads the settings from options, and from the environment where an option is not given. */
final class ServeCommand {
    static final String USAGE = """
            usage: planner-service/serve --data FOLDER [options]
              --data FOLDER            folder of the log, made when it is not there
              --port N                 port for the salon, 0 for any free one (7464)
              --management-port N      port for health and metrics, 0 for any free one (7465)
              --host ADDRESS           address to bind; another than 127.0.0.1 needs encryption and tokens
              --salon FOLDER           files of a salon, whose day is opened if it is not open yet
              --date YYYY-MM-DD        day to open (the only day the bookings have)
              --clock wall|driven      which clock the salon runs by (wall)
              --clock-start INSTANT    where a driven clock starts, such as 2027-03-09T08:00:00Z
              --rate-permille N        rate of a driven clock, 0 to 1000000 thousandths of real time (1000)
              --plan-rounds N          rounds granted to the better plan after a first one, 0 to 100000 (200)
              --tls-certificate FILE   certificate chain, PEM
              --tls-key FILE           its private key, PEM (PKCS 8)
              --log text|json          how the service's own output is written (text)
            Each option can also stand in the environment: STIRTIDE_DATA, STIRTIDE_MANAGEMENT_PORT and so on.
            """;

    private static final Set<String> OPTIONS = Set.of(
            "data",
            "port",
            "management-port",
            "host",
            "salon",
            "date",
            "clock",
            "clock-start",
            "rate-permille",
            "plan-rounds",
            "tls-certificate",
            "tls-key",
            "log");
    private static final int HIGHEST_PORT = 65_535;
    private static final int MOST_ROUNDS = 100_000;

    private final Map<String, String> given = new TreeMap<>();
    private final Map<String, String> environment;

    private ServeCommand(Map<String, String> environment) {
        this.environment = environment;
    }

    /**
     * Reads options and environment.
     *
     * @throws StartFailure with {@link StartFailure#USAGE} and what would be accepted
     */
    static Settings read(List<String> arguments, Map<String, String> environment) {
        ServeCommand reader = new ServeCommand(environment);
        reader.take(arguments);
        return reader.settings();
    }

    /**
     * How the service's own output is to be written.
     *
     * @throws StartFailure with {@link StartFailure#USAGE} and what would be accepted
     */
    static LogOutput.Form logForm(List<String> arguments, Map<String, String> environment) {
        ServeCommand reader = new ServeCommand(environment);
        reader.take(arguments);
        String form = reader.value("log").orElse("text");
        return switch (form) {
            case "text" -> LogOutput.Form.TEXT;
            case "json" -> LogOutput.Form.JSON;
            default -> throw usage("--log " + form + ": text or json is accepted");
        };
    }

    private void take(List<String> arguments) {
        for (int at = 0; at < arguments.size(); at += 2) {
            String option = arguments.get(at);
            if (!option.startsWith("--") || !OPTIONS.contains(option.substring(2)))
                throw usage(option + " is not an option");
            if (at + 1 == arguments.size()) throw usage(option + " needs a value");
            if (given.put(option.substring(2), arguments.get(at + 1)) != null) throw usage(option + " is given twice");
        }
    }

    private Settings settings() {
        Path data = path("data").orElseThrow(() -> usage("--data is missing"));
        return new Settings(
                data,
                value("host").orElse(Settings.LOOPBACK),
                number("port", Settings.PORT, HIGHEST_PORT),
                number("management-port", Settings.MANAGEMENT_PORT, HIGHEST_PORT),
                path("salon"),
                read("date", LocalDate::parse, "a day such as 2027-03-09"),
                drivenFrom(),
                number("rate-permille", 1000, DrivenClock.FASTEST_PERMILLE),
                number("plan-rounds", Settings.PLAN_ROUNDS, MOST_ROUNDS),
                encryption());
    }

    private Optional<HttpSecurity.Encryption> encryption() {
        Optional<Path> certificate = path("tls-certificate");
        Optional<Path> key = path("tls-key");
        if (certificate.isPresent() != key.isPresent()) throw usage("--tls-certificate and --tls-key go together");
        return certificate.map(file -> new HttpSecurity.Encryption(file, key.orElseThrow()));
    }

    private Optional<Instant> drivenFrom() {
        Optional<Instant> start = read("clock-start", Instant::parse, "an instant such as 2027-03-09T08:00:00Z");
        String clock = value("clock").orElse("wall");
        if (clock.equals("wall")) {
            if (start.isPresent()) throw usage("--clock-start goes with --clock driven only");
            return Optional.empty();
        }
        if (!clock.equals("driven")) throw usage("--clock " + clock + ": wall or driven is accepted");
        if (start.isEmpty()) throw usage("--clock driven needs --clock-start");
        return start;
    }

    private Optional<String> value(String option) {
        String variable = "STIRTIDE_" + option.toUpperCase(Locale.ROOT).replace('-', '_');
        return Optional.ofNullable(given.getOrDefault(option, environment.get(variable)));
    }

    private Optional<Path> path(String option) {
        return read(option, Path::of, "a folder");
    }

    private int number(String option, int otherwise, int highest) {
        String accepted = "a whole number from 0 to " + highest;
        int number = read(option, Integer::valueOf, accepted).orElse(otherwise);
        if (number < 0 || number > highest)
            throw usage("--" + option + " " + number + ": " + accepted + " is accepted");
        return number;
    }

    private <T> Optional<T> read(String option, Function<String, T> parse, String accepted) {
        Optional<String> text = value(option);
        try {
            return text.map(parse);
        } catch (DateTimeException | NumberFormatException | InvalidPathException unreadable) {
            throw usage("--" + option + " " + text.orElse("") + ": " + accepted + " is accepted");
        }
    }

    private static StartFailure usage(String reason) {
        return new StartFailure(StartFailure.USAGE, reason + "\n" + USAGE);
    }
}
