package stirtide.bar.cli;

import java.util.List;
import java.util.Map;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** What the command line prints about itself: help, version, completion, and why words are no options. */
final class BarUsage {
    private static final int COLUMNS = 120;
    private static final int OPTION_COLUMNS = 28;

    private BarUsage() {}

    static String help() {
        return commandLine().getUsageMessage(CommandLine.Help.Ansi.OFF);
    }

    static String version() {
        String version = BarUsage.class.getPackage().getImplementationVersion();
        return "bar " + (version == null ? "of no release" : version) + "\n";
    }

    static String completion() {
        return AutoComplete.bash("bar", commandLine());
    }

    /** Why words cannot be read as options, in a sentence; they were tried before. */
    static String refusal(List<String> words) {
        try {
            commandLine().parseArgs(words.toArray(String[]::new));
            return "the options cannot be read; --help lists them";
        } catch (MissingParameterException missing) {
            return ((OptionSpec) missing.getMissing().get(0)).longestName() + " needs a value";
        } catch (UnmatchedArgumentException unknown) {
            List<String> near = unknown.getSuggestions();
            return "unknown option " + unknown.getUnmatched().get(0) + (near.isEmpty() ? "" : ", maybe " + near.get(0))
                    + "; --help lists the options";
        } catch (ParameterException other) {
            return other.getMessage() + "; --help lists the options";
        }
    }

    static CommandLine commandLine() {
        CommandSpec spec = CommandSpec.create().name("bar");
        spec.parser().overwrittenOptionsAllowed(true).allowOptionsAsOptionParameters(true);
        for (BarOption option : BarOption.values()) spec.addOption(spec(option));
        spec.usageMessage()
                .customSynopsis("usage: bar --day SALON/DATE | --begin  [--person ID] [--server URL] [options]", "")
                .synopsisHeading("")
                .sortOptions(false)
                .width(COLUMNS)
                .longOptionsMaxWidth(OPTION_COLUMNS)
                .exitCodeListHeading("%nends with%n")
                .exitCodeList(Map.of(
                        "0",
                        "done",
                        "64",
                        "wrong usage",
                        "69",
                        "no service (with --once)",
                        "70",
                        "a fault of the program",
                        "74",
                        "terminal gone"));
        return new CommandLine(spec);
    }

    private static OptionSpec spec(BarOption option) {
        OptionSpec.Builder builder = OptionSpec.builder(option.word()).description(option.description());
        if (option.value().isEmpty())
            return builder.type(boolean.class).arity("0").build();
        if (!option.choices().isEmpty()) builder.completionCandidates(option.choices());
        return builder.type(String.class).paramLabel(option.value()).build();
    }
}
