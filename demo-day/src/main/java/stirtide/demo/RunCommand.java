package stirtide.demo;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import stirtide.demo.exit.CommandFailure;
import stirtide.demo.live.LiveDay;
import stirtide.demo.live.PrintedDay;
import stirtide.demo.live.StartProgress;

/**
 * {@code run [--print] [--hands-free] [--scale] [--rate N] [-- TERMINAL OPTIONS]}.
 *
 * @param salon folder of the demo salon
 * @param print whether the day is printed in place of shown
 * @param handsFree whether the assistants work by themselves
 * @param scale whether a played scale stands beside the bar
 * @param rate minutes of the salon for a minute of yours
 * @param terminalOptions what stands after {@code --}
 */
public record RunCommand(
        Path salon, boolean print, boolean handsFree, boolean scale, int rate, List<String> terminalOptions) {
    public RunCommand {
        terminalOptions = List.copyOf(terminalOptions);
    }

    /** One line of usage. */
    public static final String USAGE =
            "usage: demo-day/run [--print | --hands-free] [--scale] [--rate N] [-- TERMINAL OPTIONS]";

    /** What the command is for, with its options. */
    public static final String HELP = USAGE + """


            Opens the terminal on an invented salon's busy day, shortly before the first peak. Clients
            sit down and stylists work by themselves; the bar is yours. The log is in a temporary
            folder that is removed when you leave with q or Ctrl-C.

              --print       no terminal: print the prep sheet, play the day to its end, print what
                            happened; also what happens when standard output is not a terminal
              --hands-free  the assistants work by themselves too
              --scale       a played scale stands beside the bar: in the weigh-in, Enter on an empty
                            weight takes what lies still on it
              --rate N      minutes of the salon for a minute of yours at first, 1 to 600 (10)
              -- OPTIONS    options of the terminal, such as -- --theme light; see docs/terminal.md

            Exit codes: 0 done, 64 wrong usage, 65 a file is not accepted, 69 something needed cannot
            be had, 70 a check of the played day does not hold.
            """;

    private static final int USUAL_RATE = 10;
    private static final int FASTEST_RATE = 600;
    private static final int PERMILLE = 1000;

    /**
     * Reads the arguments.
     *
     * @param salon folder of the demo salon
     * @throws CommandFailure with {@link CommandFailure#USAGE} when they are not as {@link #USAGE} says
     */
    public static RunCommand of(Path salon, List<String> arguments) {
        Deque<String> left = new ArrayDeque<>(arguments);
        boolean print = false;
        boolean handsFree = false;
        boolean scale = false;
        int rate = USUAL_RATE;
        while (!left.isEmpty()) {
            String argument = left.pop();
            if (argument.equals("--print")) print = true;
            else if (argument.equals("--hands-free")) handsFree = true;
            else if (argument.equals("--scale")) scale = true;
            else if (argument.equals("--rate")) rate = rate(left.isEmpty() ? "" : left.pop());
            else if (argument.equals("--"))
                return new RunCommand(salon, print, handsFree, scale, rate, List.copyOf(left));
            else throw usage("\"" + argument + "\" is not accepted here");
        }
        return new RunCommand(salon, print, handsFree, scale, rate, List.of());
    }

    /** Runs the command; gives the exit code. */
    public int run(PrintStream out) {
        // Without a terminal on both ends there is nothing to open.
        if (print || System.console() == null) {
            PrintedDay.print(salon, out);
            return 0;
        }
        return LiveDay.run(this, rate * PERMILLE, new StartProgress(System.err, LiveDay.STEPS));
    }

    private static int rate(String text) {
        try {
            int rate = Integer.parseInt(text);
            if (rate >= 1 && rate <= FASTEST_RATE) return rate;
        } catch (NumberFormatException notANumber) {
            // Said below, with what would be accepted.
        }
        throw usage("\"" + text + "\" is not a rate: a whole number from 1 to " + FASTEST_RATE);
    }

    private static CommandFailure usage(String why) {
        return new CommandFailure(CommandFailure.USAGE, why + "\n" + USAGE);
    }
}
