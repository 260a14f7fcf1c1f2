package stirtide.planner.admin;

import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.AutoComplete.GenerateCompletion;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;
import stirtide.planner.access.AccessFile;
import stirtide.planner.cli.CommandException;
import stirtide.planner.cli.CommandLines;
import stirtide.planner.cli.ProgramVersion;
import stirtide.planner.eventlog.EventLog.Damage;
import stirtide.planner.eventlog.LogMaintenance;

/** The command line of {@code planner-service/care}: maintenance of a log, clients' data, tokens and sign-on codes. */
@Command(
        name = "care",
        description = "Maintains the data folder of a planner service.",
        mixinStandardHelpOptions = true,
        scope = ScopeType.INHERIT,
        versionProvider = ProgramVersion.class,
        subcommands = {ClientCommands.class, TokenCommands.class, PersonCommands.class, GenerateCompletion.class})
public final class CareMain {
    private static final String OPEN =
            "lets everybody on this machine in, as a service does that never gave a token; without it nobody is let in"
                    + " until a token or code is given";

    @Spec
    private CommandSpec spec = CommandSpec.create();

    private CareMain() {}

    /** Runs one command and ends the process with its exit code. */
    public static void main(String[] arguments) {
        System.exit(run(List.of(arguments), System.out, System.err));
    }

    static int run(List<String> arguments, PrintStream out, PrintStream err) {
        PrintWriter results = new PrintWriter(out, false, StandardCharsets.UTF_8);
        CommandLine line = CommandLines.of(new CareMain())
                .setOut(results)
                .setErr(new PrintWriter(err, true, StandardCharsets.UTF_8));
        // A reference may begin with a dash.
        Optional.ofNullable(line.getSubcommands().get("client"))
                .ifPresent(client -> client.setUnmatchedOptionsArePositionalParams(true));
        int code = line.execute(arguments.toArray(String[]::new));
        results.flush();
        return code;
    }

    @Command(name = "verify", description = "Reads the whole log and names the first damage, if there is any.")
    void verify(@Parameters(paramLabel = "FOLDER", description = "data folder") Path folder) {
        List<Damage> damages = LogMaintenance.verify(folder);
        if (!damages.isEmpty()) throw new CommandException(CommandException.LOG_BROKEN, "damaged: " + damages.get(0));
        spec.commandLine().getOut().println("every event is as it was written");
        LogMaintenance.anchorNews(folder)
                .ifPresent(news -> spec.commandLine().getErr().println("stirtide: the file anchor " + news));
    }

    @Command(
            name = "export",
            description = "Prints the events, one CloudEvent a line, each day up to its first damage.")
    int export(
            @Parameters(paramLabel = "FOLDER", description = "data folder") Path folder,
            @Option(names = "--day", paramLabel = "SALON/DATE", description = "the only day wanted (all)")
                    Optional<String> day) {
        CommandLine line = spec.commandLine();
        List<Damage> damages =
                LogMaintenance.export(folder, day, event -> line.getOut().println(event));
        for (Damage damage : damages) line.getErr().println("stirtide: not exported from here on: " + damage);
        return damages.isEmpty() ? 0 : CommandException.LOG_BROKEN;
    }

    @Command(name = "import", description = "Replays exported events, stores them in an empty folder and verifies it.")
    void bring(
            @Parameters(paramLabel = "FILE", description = "exported events") Path file,
            @Parameters(paramLabel = "FOLDER", description = "new or empty folder") Path folder,
            @Option(names = "--open", description = OPEN) boolean open)
            throws IOException {
        int events = EventImport.bring(file, folder, open);
        spec.commandLine().getErr().println("stirtide: " + events + " events imported and verified");
        sayWhoComesIn(folder);
    }

    @Command(name = "backup", description = "Writes the whole log into one new file; the service may be running.")
    void backup(
            @Parameters(paramLabel = "FOLDER", description = "data folder") Path folder,
            @Parameters(paramLabel = "FILE", description = "new file") Path file)
            throws IOException {
        Backups.backup(folder, file);
    }

    @Command(name = "restore", description = "Verifies a backup and writes it into an empty folder.")
    void restore(
            @Parameters(paramLabel = "FILE", description = "a backup") Path file,
            @Parameters(paramLabel = "FOLDER", description = "new or empty folder") Path folder,
            @Parameters(
                            paramLabel = "KEYS",
                            arity = "0..1",
                            description =
                                    "folder with clients.keys, clients.erased and access.json, to be restored too")
                    Optional<Path> keys,
            @Option(names = "--open", description = OPEN) boolean open)
            throws IOException {
        Backups.restore(file, folder, keys, open);
        sayWhoComesIn(folder);
    }

    private void sayWhoComesIn(Path folder) {
        if (new AccessFile(folder).closed() && !Files.exists(folder.resolve("access.json")))
            spec.commandLine()
                    .getErr()
                    .println("stirtide: nobody may come in yet; restore access.json too, or give a token:"
                            + " planner-service/care token " + folder + " add --role manager --name PERSON");
    }
}
