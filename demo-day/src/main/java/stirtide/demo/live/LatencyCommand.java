package stirtide.demo.live;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import stirtide.demo.exit.CommandFailure;
import stirtide.demo.folder.FolderPlanner;
import stirtide.demo.measure.LatencyTrial;
import stirtide.demo.play.SetupLookup;
import stirtide.planner.salonfiles.FolderResult;

/** {@code latency [--count N]}: measures on the demo day how long a listener waits. */
public final class LatencyCommand {
    /** One line of usage. */
    public static final String USAGE = "usage: demo-day/latency [--count N]";

    private static final int USUAL_COUNT = 300;
    private static final int MOST = 10_000;

    private LatencyCommand() {}

    /** Measures and prints. */
    public static void run(Path salonFolder, List<String> arguments, PrintStream out) {
        int count = count(arguments);
        FolderResult.Read salon = FolderPlanner.read(salonFolder, Optional.empty());
        String desk = new SetupLookup(salon.setup()).desk();
        try (DemoService service = DemoService.start(salon, PrintedDay.script(salonFolder))) {
            out.print(new LatencyTrial(service.link()).measure(desk, count));
        }
    }

    private static int count(List<String> arguments) {
        if (arguments.isEmpty()) return USUAL_COUNT;
        if (arguments.size() == 2
                && arguments.get(0).equals("--count")
                && arguments.get(1).matches("[1-9][0-9]{0,4}")) {
            int count = Integer.parseInt(arguments.get(1));
            if (count <= MOST) return count;
        }
        throw new CommandFailure(CommandFailure.USAGE, "a count is a whole number from 1 to " + MOST + "\n" + USAGE);
    }
}
