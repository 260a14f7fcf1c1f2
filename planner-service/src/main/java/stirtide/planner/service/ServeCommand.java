package stirtide.planner.service;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.logging.Level;
import org.jspecify.annotations.Nullable;
import picocli.AutoComplete.GenerateCompletion;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;
import stirtide.planner.cli.CommandLines;
import stirtide.planner.cli.CommandLines.WholeNumber;
import stirtide.planner.cli.ProgramVersion;
import stirtide.planner.http.HttpSecurity.Encryption;

/** The command line of {@code planner-service/serve}. */
@Command(
        name = "serve",
        description = "Runs the planner service until the process is told to end.",
        mixinStandardHelpOptions = true,
        versionProvider = ProgramVersion.class,
        sortOptions = false,
        footer = {
            "Each option can also be set in the environment: STIRTIDE_DATA, STIRTIDE_MANAGEMENT_PORT and so on.",
            "serve " + ServeCommand.COMPLETION + " prints a completion script for bash and zsh."
        })
final class ServeCommand implements Runnable {
    static final String COMPLETION = "generate-completion";

    private enum Clock {
        WALL,
        DRIVEN
    }

    private static final class Port extends WholeNumber {
        Port() {
            super(0, 65_535);
        }
    }

    private static final class Rate extends WholeNumber {
        Rate() {
            super(0, DrivenClock.FASTEST_PERMILLE);
        }
    }

    private static final class Rounds extends WholeNumber {
        Rounds() {
            super(0, 100_000);
        }
    }

    private final Consumer<Settings> service;

    @Spec
    private @Nullable CommandSpec spec;

    @Option(names = "--data", paramLabel = "FOLDER", description = "data folder, created if absent (required)")
    private Optional<Path> data = Optional.empty();

    @Option(
            names = "--port",
            paramLabel = "N",
            converter = Port.class,
            description = "port for the salon, 0 for any free one (${DEFAULT-VALUE})")
    private int port = Settings.PORT;

    @Option(
            names = "--management-port",
            paramLabel = "N",
            converter = Port.class,
            description = "port for health and metrics, 0 for any free one (${DEFAULT-VALUE})")
    private int managementPort = Settings.MANAGEMENT_PORT;

    @Option(
            names = "--host",
            paramLabel = "ADDRESS",
            description = "address to bind; any other than ${DEFAULT-VALUE} needs encryption and tokens")
    private String host = Settings.LOOPBACK;

    @Option(
            names = "--salon",
            paramLabel = "FOLDER",
            description = "files of a salon, whose day is opened if it is not open yet")
    private Optional<Path> salon = Optional.empty();

    @Option(names = "--date", paramLabel = "YYYY-MM-DD", description = "day to open (the only day of the bookings)")
    private Optional<LocalDate> date = Optional.empty();

    @Option(names = "--clock", paramLabel = "wall|driven", description = "clock the salon runs by (wall)")
    private Clock clock = Clock.WALL;

    @Option(
            names = "--clock-start",
            paramLabel = "INSTANT",
            description = "start of a driven clock, such as 2027-03-09T08:00:00Z")
    private Optional<Instant> clockStart = Optional.empty();

    @Option(
            names = "--rate-permille",
            paramLabel = "N",
            converter = Rate.class,
            description = "rate of a driven clock, 0 to 1000000 thousandths of real time (${DEFAULT-VALUE})")
    private int ratePermille = 1000;

    @Option(
            names = "--plan-rounds",
            paramLabel = "N",
            converter = Rounds.class,
            description = "rounds of the search for a better plan after a first one, 0 to 100000 (${DEFAULT-VALUE})")
    private int planRounds = Settings.PLAN_ROUNDS;

    @Option(names = "--tls-certificate", paramLabel = "FILE", description = "certificate chain, PEM")
    private Optional<Path> certificate = Optional.empty();

    @Option(names = "--tls-key", paramLabel = "FILE", description = "private key of the certificate, PEM (PKCS 8)")
    private Optional<Path> key = Optional.empty();

    @Option(names = "--log", paramLabel = "text|json", description = "form of the log on standard error (text)")
    private LogOutput.Form log = LogOutput.Form.TEXT;

    private ServeCommand(Consumer<Settings> service) {
        this.service = service;
    }

    /**
     * The command line.
     *
     * @param arguments what will be parsed
     * @param environment where options that are not given are looked up
     * @param service runs with the settings; the log is set up by then
     */
    static CommandLine of(List<String> arguments, Map<String, String> environment, Consumer<Settings> service) {
        CommandLine line = CommandLines.of(new ServeCommand(service))
                .registerConverter(
                        LocalDate.class, CommandLines.accepting("a date such as 2027-03-09", LocalDate::parse))
                .registerConverter(
                        Instant.class,
                        CommandLines.accepting("an instant such as 2027-03-09T08:00:00Z", Instant::parse));
        // Not otherwise: loading it would take time of every start.
        if (arguments.contains(COMPLETION)) line.addSubcommand(COMPLETION, new GenerateCompletion());
        CommandLines.useEnvironment(line, environment);
        return line;
    }

    /**
     * Runs the service when every option is well formed, without the parser: its classes are compiled for Java 5, which no
     * class data archive takes, and loading them is a tenth of a start.
     *
     * @return exit code; empty when the parser has to read the options, to help or to refuse
     */
    static Optional<Integer> runWellFormed(
            List<String> arguments, Map<String, String> environment, Consumer<Settings> service) {
        ServeCommand command = new ServeCommand(service);
        boolean read = arguments.size() % 2 == 0
                && environment.keySet().stream().noneMatch(name -> name.startsWith("STIRTIDE_"));
        Set<String> given = new HashSet<>();
        for (int i = 0; read && i < arguments.size(); i += 2)
            read = given.add(arguments.get(i)) && command.take(arguments.get(i), arguments.get(i + 1));
        if (!read || command.conflict().isPresent()) return Optional.empty();
        try {
            command.run();
            return Optional.of(0);
        } catch (RuntimeException failed) {
            return Optional.of(CommandLines.report(failed, new PrintWriter(System.err, true, StandardCharsets.UTF_8)));
        }
    }

    private boolean take(String name, String value) {
        if (value.startsWith("-")) return false;
        try {
            switch (name) {
                case "--data" -> data = Optional.of(Path.of(value));
                case "--port" -> port = new Port().convert(value);
                case "--management-port" -> managementPort = new Port().convert(value);
                case "--salon" -> salon = Optional.of(Path.of(value));
                case "--date" -> date = Optional.of(LocalDate.parse(value));
                case "--clock" -> clock = Clock.valueOf(value.toUpperCase(Locale.ROOT));
                case "--clock-start" -> clockStart = Optional.of(Instant.parse(value));
                case "--rate-permille" -> ratePermille = new Rate().convert(value);
                case "--plan-rounds" -> planRounds = new Rounds().convert(value);
                default -> {
                    return false;
                }
            }
            return true;
        } catch (IllegalArgumentException | DateTimeException | TypeConversionException malformed) {
            return false;
        }
    }

    @Override
    public void run() {
        conflict().ifPresent(reason -> {
            throw new ParameterException(Objects.requireNonNull(spec).commandLine(), reason);
        });
        Settings settings = new Settings(
                data.orElseThrow(),
                host,
                port,
                managementPort,
                salon,
                date,
                clockStart,
                ratePermille,
                planRounds,
                certificate.map(file -> new Encryption(file, key.orElseThrow())));
        LogOutput.start(log, Level.INFO);
        service.accept(settings);
    }

    private Optional<String> conflict() {
        if (data.isEmpty()) return Optional.of("Missing required option: '--data=FOLDER'");
        if (clock == Clock.WALL && clockStart.isPresent())
            return Optional.of("--clock-start goes with --clock driven only");
        if (clock == Clock.DRIVEN && clockStart.isEmpty()) return Optional.of("--clock driven needs --clock-start");
        if (certificate.isPresent() != key.isPresent())
            return Optional.of("--tls-certificate and --tls-key go together");
        return Optional.empty();
    }
}
