package stirtide.planner.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.time.DateTimeException;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import picocli.CommandLine;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.TypeConversionException;
import stirtide.planner.access.AccessFailure;
import stirtide.planner.eventlog.LogFailure;

/** Command lines that report every failure as {@code stirtide: SENTENCE} with an exit code of {@link CommandException}. */
public final class CommandLines {
    private CommandLines() {}

    /** The command line of a picocli command; a failure never shows a stack trace. */
    public static CommandLine of(Object command) {
        return new CommandLine(command)
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setParameterExceptionHandler((refused, words) -> refuse(refused))
                .setExecutionExceptionHandler((failed, line, parsed) -> report(failed, line.getErr()));
    }

    private static int refuse(ParameterException refused) {
        CommandLine line = refused.getCommandLine();
        line.getErr().println("stirtide: " + refused.getMessage());
        line.usage(line.getErr());
        return CommandException.USAGE;
    }

    /** Prints why a command failed; the result is its exit code. */
    public static int report(Exception failed, PrintWriter err) {
        CommandException reported = reported(failed);
        err.println("stirtide: " + reported.getMessage());
        return reported.exitCode();
    }

    private static CommandException reported(Exception failed) {
        if (failed instanceof CommandException known) return known;
        if (failed instanceof LogFailure log) return CommandException.of(log);
        if (failed instanceof AccessFailure access)
            return new CommandException(
                    access.isUnwritable() ? CommandException.CANNOT_CREATE : CommandException.LOG_BROKEN,
                    String.valueOf(failed.getMessage()));
        if (failed instanceof IOException)
            return new CommandException(CommandException.CANNOT_CREATE, "cannot read or write: " + failed.getMessage());
        return new CommandException(
                CommandException.SOFTWARE, "a defect of this program ended it: " + failed + "; please report it");
    }

    /** Takes an option that is not given from the environment: {@code --clock-start} from {@code STIRTIDE_CLOCK_START}. */
    public static void useEnvironment(CommandLine line, Map<String, String> environment) {
        line.setDefaultValueProvider(argument ->
                argument instanceof OptionSpec option && option.arity().max() > 0
                        ? environment.get(variable(option.longestName()))
                        : null);
    }

    private static String variable(String option) {
        return "STIRTIDE" + option.substring(1).toUpperCase(Locale.ROOT).replace('-', '_');
    }

    /**
     * A converter whose refusal names the value and what would be accepted.
     *
     * @param accepted what is accepted, for people
     * @param parse throws {@link IllegalArgumentException} or {@link DateTimeException} for every other text
     */
    public static <T> ITypeConverter<T> accepting(String accepted, Function<String, T> parse) {
        return text -> converted(text, accepted, parse);
    }

    private static <T> T converted(String text, String accepted, Function<String, T> parse) {
        try {
            return parse.apply(text);
        } catch (IllegalArgumentException | DateTimeException refused) {
            throw new TypeConversionException("'" + text + "' is not accepted; accepted is " + accepted);
        }
    }

    /** Accepts whole numbers of a range; for the {@code converter} of an option. */
    public abstract static class WholeNumber implements ITypeConverter<Integer> {
        private final int lowest;
        private final int highest;

        /** A converter for {@code lowest} to {@code highest}, both included. */
        protected WholeNumber(int lowest, int highest) {
            this.lowest = lowest;
            this.highest = highest;
        }

        @Override
        public Integer convert(String text) {
            return converted(text, "a whole number from " + lowest + " to " + highest, this::parse);
        }

        private Integer parse(String text) {
            int number = Integer.parseInt(text);
            if (number < lowest || number > highest) throw new IllegalArgumentException(text);
            return number;
        }
    }
}
