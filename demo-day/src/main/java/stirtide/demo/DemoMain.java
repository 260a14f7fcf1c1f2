package stirtide.demo;

import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.logging.Level;
import picocli.CommandLine;
import stirtide.bar.client.ResponseText;
import stirtide.planner.cli.CommandException;
import stirtide.planner.cli.CommandLines;
import stirtide.planner.service.LogOutput;

/** Entry of the scripts in {@code demo-day}: the first argument names the command. */
public final class DemoMain {
    private static final String COMMANDS = "usage: demo-day/run, demo-day/begin or demo-day/plan";

    private DemoMain() {}

    /** Runs a command and ends the process with its exit code. */
    public static void main(String[] arguments) {
        // The service runs in this process; its log lines would appear in the middle of the screen.
        LogOutput.start(LogOutput.Form.TEXT, Level.SEVERE);
        PrintStream out = new PrintStream(System.out, false, StandardCharsets.UTF_8);
        PrintStream err = new PrintStream(System.err, true, StandardCharsets.UTF_8);
        System.exit(run(Arrays.asList(arguments), out, err));
    }

    /** Runs a command and returns its exit code. */
    static int run(List<String> arguments, PrintStream out, PrintStream err) {
        List<String> words = arguments.isEmpty() ? List.of() : arguments.subList(1, arguments.size());
        int end = words.indexOf("--");
        List<String> own = end < 0 ? words : words.subList(0, end);
        List<String> terminalOptions = end < 0 ? List.of() : words.subList(end + 1, words.size());
        Optional<Callable<Integer>> command =
                command(arguments.isEmpty() ? "" : arguments.get(0), terminalOptions, out);
        if (command.isEmpty()) {
            err.println(COMMANDS);
            return CommandException.USAGE;
        }
        int code = line(command.get(), out, err).execute(own.toArray(String[]::new));
        out.flush();
        return code;
    }

    private static Optional<Callable<Integer>> command(String name, List<String> terminalOptions, PrintStream out) {
        return switch (name) {
            case "plan" -> Optional.of(new PlanCommand(out));
            case "run" -> Optional.of(new RunCommand(salon(), terminalOptions, out));
            case "begin" -> Optional.of(new BeginCommand(terminalOptions));
            default -> Optional.empty();
        };
    }

    private static CommandLine line(Callable<Integer> command, PrintStream out, PrintStream err) {
        CommandLine line = CommandLines.of(command)
                .setOut(new PrintWriter(out, true, StandardCharsets.UTF_8))
                .setErr(new PrintWriter(err, true, StandardCharsets.UTF_8))
                .setExpandAtFiles(false)
                .setOverwrittenOptionsAllowed(true)
                .setUnmatchedOptionsAllowedAsOptionParameters(false);
        CommandLine.IExecutionExceptionHandler report = line.getExecutionExceptionHandler();
        return line.setExecutionExceptionHandler((failed, at, parsed) -> {
            out.flush();
            return report.handleExecutionException(unreachable(failed), at, parsed);
        });
    }

    /** The commands read and write over HTTP only: another failure of that kind means that the service is gone. */
    private static Exception unreachable(Exception failed) {
        return failed instanceof IOException unreachable
                ? new CommandException(CommandException.UNAVAILABLE, ResponseText.reason(unreachable))
                : failed;
    }

    /** Folder of the demo salon, set by the scripts. */
    private static Path salon() {
        return Path.of(System.getProperty("stirtide.demo.salon", "demo-day/salon"));
    }
}
