package stirtide.demo;

import java.net.URI;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import stirtide.demo.exit.CommandFailure;
import stirtide.demo.link.SalonLink;
import stirtide.demo.live.StartProgress;
import stirtide.events.view.DayView;
import stirtide.planner.service.PlannerService;
import stirtide.planner.service.Settings;
import stirtide.planner.cli.CommandException;

/** {@code begin FOLDER [-- TERMINAL OPTIONS]}: service and terminal for a salon of one's own, from an empty folder on. */
public final class BeginCommand {
    /** One line of usage. */
    public static final String USAGE = "usage: demo-day/begin FOLDER [-- TERMINAL OPTIONS]";

    /** What the command is for. */
    public static final String HELP = USAGE + """


            Starts the service with its log in FOLDER/log, on the real clock, and opens the terminal.
            With an empty folder the terminal asks for the salon and leads through its setup; later it
            opens the newest day of the log. e in the setup writes the salon's files into FOLDER.

            Exit codes: those of the terminal, and 64 wrong usage, 69 something needed cannot be had.
            """;

    private BeginCommand() {}

    /**
     * Runs until the terminal is left; gives the exit code.
     *
     * @throws CommandFailure when the arguments are not as {@link #USAGE} says or the service cannot start
     */
    public static int run(List<String> arguments) {
        int options = arguments.indexOf("--");
        List<String> own = options < 0 ? arguments : arguments.subList(0, options);
        if (own.size() != 1) throw new CommandFailure(CommandFailure.USAGE, USAGE);
        Path folder = folder(own.get(0));
        if (System.console() == null)
            throw new CommandFailure(CommandFailure.UNAVAILABLE, "demo-day/begin needs a terminal");
        StartProgress steps = new StartProgress(System.err, 1);
        steps.next("starting the service on " + folder.resolve("log"));
        PlannerService service = start(folder);
        // Leaving by a signal ends the process from within the terminal: only a hook sees both ways out.
        Runtime.getRuntime().addShutdownHook(new Thread(service::close, "close-service"));
        URI address = URI.create("http://127.0.0.1:" + service.port() + "/");
        List<String> words = new ArrayList<>(List.of("--server", "http://127.0.0.1:" + service.port()));
        words.addAll(List.of("--state", folder.resolve("terminal").toString(), "--reports", folder.toString()));
        List<String> days = new SalonLink(address, "").days();
        if (days.isEmpty()) words.add("--begin");
        else words.addAll(newest(address, days.get(days.size() - 1)));
        if (options >= 0) words.addAll(arguments.subList(options + 1, arguments.size()));
        steps.done();
        return stirtide.bar.BarMain.run(words);
    }

    private static PlannerService start(Path folder) {
        try {
            return PlannerService.start(Settings.inProcess(folder.resolve("log")));
        } catch (CommandException failure) {
            throw new CommandFailure(CommandFailure.UNAVAILABLE, String.valueOf(failure.getMessage()));
        }
    }

    /** The day, with whoever may change its setup at the terminal. */
    private static List<String> newest(URI address, String day) {
        List<DayView.PersonCard> people = new SalonLink(address, day).view().people();
        String person = people.stream()
                .filter(one -> List.of("MANAGER", "COLORIST").contains(one.role()))
                .findFirst()
                .or(() -> people.stream().findFirst())
                .map(DayView.PersonCard::personId)
                .orElse("");
        return person.isEmpty() ? List.of("--day", day) : List.of("--day", day, "--person", person);
    }

    private static Path folder(String text) {
        try {
            return Path.of(text);
        } catch (InvalidPathException notAPath) {
            throw new CommandFailure(CommandFailure.USAGE, "\"" + text + "\" is not a folder name\n" + USAGE);
        }
    }
}
