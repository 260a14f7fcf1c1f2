package stirtide.demo;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import stirtide.demo.live.LiveDay;
import stirtide.demo.live.PrintedDay;
import stirtide.planner.cli.CommandLines;

/** {@code demo-day/run}: the demo day in the terminal, or printed. */
@Command(
        name = "demo-day/run",
        synopsisHeading = "usage: ",
        customSynopsis = "demo-day/run [--print | --hands-free] [--scale] [--rate N] [-- TERMINAL OPTIONS]",
        sortOptions = false,
        description = {
            "%nOpens the terminal on an invented salon's busy day, shortly before the first peak. Clients sit down and"
                    + " stylists work by themselves; the bar is yours. The log is in a temporary folder that is removed"
                    + " when you leave with q or Ctrl-C.%n",
        },
        footer = {
            "  -- OPTIONS     options of the terminal; see docs/terminal.md",
            "",
            "Exit codes: 0 done, 64 wrong usage, 65 a file is not accepted, 69 something needed cannot be had, 70 a"
                    + " check of the played day does not hold.",
        })
final class RunCommand implements Callable<Integer> {
    private static final int PERMILLE = 1000;

    @Option(
            names = "--print",
            description = "no terminal: print the prep sheet, play the day to its end, print what happened; also what"
                    + " happens when standard output is not a terminal")
    private boolean print;

    @Option(names = "--hands-free", description = "the assistants work by themselves too")
    private boolean handsFree;

    @Option(
            names = "--scale",
            description = "a played scale stands beside the bar: in the weigh-in, Enter on an empty weight takes what"
                    + " lies still on it")
    private boolean scale;

    @Option(
            names = "--rate",
            paramLabel = "N",
            converter = Rate.class,
            description = "minutes of the salon for a minute of yours at first, 1 to 600 (10)")
    private int rate = 10;

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "print this help")
    @SuppressWarnings("UnusedVariable") // picocli prints the help when this is set
    private boolean help;

    @Option(names = "--start-and-stop", hidden = true, description = "start the service on the day and end")
    private boolean startAndStop;

    private final Path salon;
    private final List<String> terminalOptions;
    private final PrintStream out;

    static final class Rate extends CommandLines.WholeNumber {
        Rate() {
            super(1, 600);
        }
    }

    /**
     * @param salon folder of the demo salon
     * @param terminalOptions the arguments after {@code --}
     * @param out where a printed day goes
     */
    RunCommand(Path salon, List<String> terminalOptions, PrintStream out) {
        this.salon = salon;
        this.terminalOptions = List.copyOf(terminalOptions);
        this.out = out;
    }

    @Override
    public Integer call() throws IOException, InterruptedException {
        if (startAndStop) {
            LiveDay.startAndStop(salon);
            return 0;
        }
        // Without a terminal on both ends there is nothing to open.
        if (print || System.console() == null) {
            PrintedDay.print(salon, out);
            return 0;
        }
        return LiveDay.run(salon, new LiveDay.Options(handsFree, scale, rate * PERMILLE, terminalOptions));
    }
}
