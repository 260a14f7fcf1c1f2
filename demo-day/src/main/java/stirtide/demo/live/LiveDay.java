package stirtide.demo.live;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stirtide.demo.folder.FolderPlanner;
import stirtide.demo.play.DayScript;
import stirtide.demo.play.SalonSimulation;
import stirtide.demo.play.SetupLookup;
import stirtide.events.setup.Person;
import stirtide.planner.salonfiles.FolderResult;

/** {@code demo-day/run}: service and terminal on the demo day, with simulated clients and staff. */
public final class LiveDay {
    private static final int START_STEPS = 4;

    private LiveDay() {}

    /**
     * How the day is to be played.
     *
     * @param handsFree whether the assistants are simulated too
     * @param scale whether a simulated scale is connected
     * @param ratePermille rate of the salon's clock at first, in thousandths of real time
     * @param terminalOptions further options of the terminal
     */
    public record Options(boolean handsFree, boolean scale, int ratePermille, List<String> terminalOptions) {
        public Options {
            terminalOptions = List.copyOf(terminalOptions);
        }
    }

    /**
     * Opens the terminal and returns its exit code when it is left.
     *
     * @param folder folder of the demo salon, script included
     * @throws IOException when the service does not answer
     */
    public static int run(Path folder, Options options) throws IOException, InterruptedException {
        StartProgress progress = new StartProgress(System.err, START_STEPS);
        progress.next("reading the salon's files");
        DayScript script = PrintedDay.script(folder);
        FolderResult.Read salon = FolderPlanner.read(folder, Optional.empty());
        SetupLookup lookup = new SetupLookup(salon.setup());
        progress.next("starting the service");
        DemoService service = DemoService.start(salon, script, () -> progress.next("planning the day"));
        // A signal ends the process from within the terminal; a hook runs in both cases.
        Runtime.getRuntime().addShutdownHook(new Thread(service::close, "close-demo"));
        progress.next("going on to " + script.liveFrom());
        service.client().service().advanceClock(lookup.at(script.liveFrom()));
        service.client().service().setClockRate(options.ratePermille());
        SalonSimulation simulation = new SalonSimulation(lookup, script, service.bookings(), options.handsFree());
        try (LivePlayer player = new LivePlayer(service.client(), simulation)) {
            player.start();
            progress.done();
            return open(options, service, lookup);
        }
    }

    /**
     * Starts the service on the demo day, shows the day once and stops: for the class data archive of the scripts.
     *
     * @param folder folder of the demo salon, script included
     * @throws IOException when the service does not answer
     */
    public static void startAndStop(Path folder) throws IOException, InterruptedException {
        FolderResult.Read salon = FolderPlanner.read(folder, Optional.empty());
        try (DemoService service = DemoService.start(salon, PrintedDay.script(folder), () -> {})) {
            service.client().view();
        }
    }

    private static int open(Options options, DemoService service, SetupLookup lookup) {
        String operator = lookup.people(Person.Role.ASSISTANT).stream()
                .findFirst()
                .map(Person::personId)
                .orElseGet(lookup::receptionist);
        List<String> words = new ArrayList<>(List.of(
                "--day",
                service.day(),
                "--person",
                operator,
                "--state",
                service.scratch().toString()));
        if (!options.scale()) {
            words.addAll(options.terminalOptions());
            return TerminalLauncher.open(service.port(), words);
        }
        try (PlayedScale scale = PlayedScale.start(service.scratch(), service.client())) {
            words.addAll(scale.options());
            words.addAll(options.terminalOptions());
            return TerminalLauncher.open(service.port(), words);
        }
    }
}
