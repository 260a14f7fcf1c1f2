package stirtide.demo.live;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stirtide.demo.RunCommand;
import stirtide.demo.folder.FolderPlanner;
import stirtide.demo.link.SalonLink;
import stirtide.demo.play.DayScript;
import stirtide.demo.play.SalonSimulation;
import stirtide.demo.play.SetupLookup;
import stirtide.planner.salonfiles.FolderResult;

/** {@code run}: service and terminal on the demo day, with the people of the day moving by themselves. */
public final class LiveDay {
    /** Steps of a start that are told. */
    public static final int STEPS = 4;

    private LiveDay() {}

    /**
     * Opens the terminal and returns when it is left.
     *
     * @param wanted what was asked for on the command line
     * @param ratePermille how fast the salon's clock runs at first, in thousandths of real time
     * @param steps where it is told how far the start is
     * @return the terminal's exit code
     */
    public static int run(RunCommand wanted, int ratePermille, StartProgress steps) {
        steps.next("reading the salon's files");
        DayScript script = PrintedDay.script(wanted.salon());
        FolderResult.Read salon = FolderPlanner.read(wanted.salon(), Optional.empty());
        SetupLookup knowledge = new SetupLookup(salon.setup());
        steps.next("starting the service");
        DemoService service = DemoService.start(salon, script, () -> steps.next("planning the day"));
        // Leaving by a signal ends the process from within the terminal: only a hook sees both ways out.
        Thread clean = new Thread(service::close, "close-demo");
        Runtime.getRuntime().addShutdownHook(clean);
        steps.next("going on to " + script.liveFrom());
        SalonLink link = service.link();
        link.advance(knowledge.at(script.liveFrom()));
        link.setRate(ratePermille);
        SalonSimulation cast = new SalonSimulation(knowledge, script, service.bookings(), wanted.handsFree());
        try (LivePlayer people = new LivePlayer(service.link(), cast)) {
            people.start();
            steps.done();
            return open(wanted, service, knowledge);
        }
    }

    private static int open(RunCommand wanted, DemoService service, SetupLookup knowledge) {
        if (!wanted.scale())
            return TerminalLauncher.open(service, knowledge, service.scratch(), wanted.terminalOptions());
        try (PlayedScale scale = PlayedScale.start(service.scratch(), service.link())) {
            List<String> options = new ArrayList<>(scale.options());
            options.addAll(wanted.terminalOptions());
            return TerminalLauncher.open(service, knowledge, service.scratch(), options);
        }
    }
}
