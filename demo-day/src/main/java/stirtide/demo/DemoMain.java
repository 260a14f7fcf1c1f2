package stirtide.demo;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.logging.Level;
import stirtide.demo.exit.CommandFailure;
import stirtide.demo.link.ServiceSilent;
import stirtide.demo.live.LatencyCommand;
import stirtide.planner.service.LogOutput;

/** Entry of the scripts in {@code demo-day}: the first argument names the command. */
public final class DemoMain {
    private DemoMain() {}

    /** Runs a command and ends the process with its exit code. */
    public static void main(String[] arguments) {
        // The service runs in this process; what it says beside failures would stand in the middle of a screen.
        LogOutput.start(LogOutput.Form.TEXT, Level.SEVERE);
        PrintStream out = new PrintStream(System.out, false, StandardCharsets.UTF_8);
        PrintStream err = new PrintStream(System.err, true, StandardCharsets.UTF_8);
        System.exit(run(Arrays.asList(arguments), out, err));
    }

    static int run(List<String> arguments, PrintStream out, PrintStream err) {
        try {
            int code = command(arguments, out);
            out.flush();
            return code;
        } catch (CommandFailure exit) {
            out.flush();
            err.println(exit.getMessage());
            return exit.code();
        } catch (ServiceSilent silent) {
            out.flush();
            err.println(silent.getMessage());
            return CommandFailure.UNAVAILABLE;
        } catch (RuntimeException fault) {
            out.flush();
            err.println("This is a fault of the program, not of your files: " + fault);
            return CommandFailure.FAULT;
        }
    }

    private static int command(List<String> arguments, PrintStream out) {
        String name = arguments.isEmpty() ? "" : arguments.get(0);
        List<String> rest = arguments.isEmpty() ? List.of() : arguments.subList(1, arguments.size());
        boolean help = rest.contains("--help") || rest.contains("-h");
        switch (name) {
            case "plan" ->
                out.print(help ? PlanCommand.HELP : PlanCommand.of(rest).run());
            case "run" -> {
                if (!help) return RunCommand.of(salon(), rest).run(out);
                out.print(RunCommand.HELP);
            }
            case "begin" -> {
                if (!help) return BeginCommand.run(rest);
                out.print(BeginCommand.HELP);
            }
            case "latency" -> {
                if (help) out.println(LatencyCommand.USAGE);
                else LatencyCommand.run(salon(), rest, out);
            }
            default ->
                throw new CommandFailure(
                        CommandFailure.USAGE, "usage: demo-day/run, demo-day/begin, demo-day/plan or demo-day/latency");
        }
        return 0;
    }

    /** Folder of the demo salon, told by the scripts. */
    private static Path salon() {
        String folder = System.getProperty("stirtide.demo.salon", "");
        if (folder.isEmpty())
            throw new CommandFailure(CommandFailure.USAGE, "start this with demo-day/run or demo-day/latency");
        return Path.of(folder);
    }
}
