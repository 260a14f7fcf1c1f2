package stirtide.demo;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import stirtide.bar.client.DayClient;
import stirtide.bar.client.ServiceClient;
import stirtide.demo.live.StartProgress;
import stirtide.demo.live.TerminalLauncher;
import stirtide.events.view.DayView.PersonCard;
import stirtide.planner.cli.CommandException;
import stirtide.planner.service.PlannerService;
import stirtide.planner.service.Settings;

/** {@code demo-day/begin}: service and terminal for a salon of one's own, from an empty folder on. */
@Command(
        name = "demo-day/begin",
        synopsisHeading = "usage: ",
        customSynopsis = "demo-day/begin FOLDER [-- TERMINAL OPTIONS]",
        description = {
            "%nStarts the service with its log in FOLDER/log, on the real clock, and opens the terminal. With an empty"
                    + " folder the terminal asks for the salon and leads through its setup; later it opens the newest"
                    + " day of the log. e in the setup writes the salon's files into FOLDER.%n",
        },
        footer = {
            "  -- OPTIONS     options of the terminal; see docs/terminal.md",
            "",
            "Exit codes: those of the terminal, and 64 wrong usage, 69 something needed cannot be had.",
        })
final class BeginCommand implements Callable<Integer> {
    @Parameters(paramLabel = "FOLDER", description = "folder of the salon, made when it is not there")
    private Path folder = Path.of("");

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "print this help")
    @SuppressWarnings("UnusedVariable") // picocli prints the help when this is set
    private boolean help;

    private final List<String> terminalOptions;

    /** @param terminalOptions the arguments after {@code --} */
    BeginCommand(List<String> terminalOptions) {
        this.terminalOptions = List.copyOf(terminalOptions);
    }

    /** Runs until the terminal is left; returns its exit code. */
    @Override
    public Integer call() throws IOException, InterruptedException {
        if (System.console() == null)
            throw new CommandException(CommandException.UNAVAILABLE, "demo-day/begin needs a terminal");
        StartProgress progress = new StartProgress(System.err, 1);
        progress.next("starting the service on " + folder.resolve("log"));
        PlannerService service = start();
        // A signal ends the process from within the terminal; a hook runs in both cases.
        Runtime.getRuntime().addShutdownHook(new Thread(service::close, "close-service"));
        List<String> options = new ArrayList<>(
                List.of("--state", folder.resolve("terminal").toString(), "--reports", folder.toString()));
        options.addAll(newestDay(new ServiceClient(URI.create("http://127.0.0.1:" + service.port()))));
        options.addAll(terminalOptions);
        progress.done();
        return TerminalLauncher.open(service.port(), options);
    }

    private PlannerService start() {
        try {
            return PlannerService.start(Settings.inProcess(folder.resolve("log")));
        } catch (CommandException failure) {
            throw new CommandException(CommandException.UNAVAILABLE, String.valueOf(failure.getMessage()));
        }
    }

    /** Options for the newest day, with a person who may change its setup at the terminal; else for the first steps. */
    private static List<String> newestDay(ServiceClient service) throws IOException, InterruptedException {
        List<String> days = service.days();
        if (days.isEmpty()) return List.of("--begin");
        String day = days.get(days.size() - 1);
        List<PersonCard> people = new DayClient(service, day).view().people();
        return people.stream()
                .filter(one -> List.of("MANAGER", "COLORIST").contains(one.role()))
                .findFirst()
                .or(() -> people.stream().findFirst())
                .map(person -> List.of("--day", day, "--person", person.personId()))
                .orElse(List.of("--day", day));
    }
}
