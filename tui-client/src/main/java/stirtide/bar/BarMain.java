package stirtide.bar;

import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import stirtide.bar.cli.BarOptions;
import stirtide.bar.cli.OptionsReader;

/** Starts the terminal of the color bar. */
public final class BarMain {
    private BarMain() {}

    /** Runs the program and ends the process. */
    public static void main(String[] arguments) {
        Runtime.getRuntime().exit(run(List.of(arguments)));
    }

    /** Runs the program; the answer is the exit code. Callable from another program that owns the terminal. */
    public static int run(List<String> arguments) {
        var out = new PrintStream(new FileOutputStream(FileDescriptor.out), false, StandardCharsets.UTF_8);
        var errors = new PrintStream(new FileOutputStream(FileDescriptor.err), true, StandardCharsets.UTF_8);
        OptionsReader.Answer answer =
                OptionsReader.read(arguments, System.getenv(), System.getProperty("user.home", "."));
        if (answer instanceof OptionsReader.Answer.Wrong wrong) {
            errors.println("bar: " + wrong.sentence());
            return BarExitCode.USAGE;
        }
        if (answer instanceof OptionsReader.Answer.Text asked) {
            out.print(asked.text());
            out.flush();
            return BarExitCode.OK;
        }
        try {
            return run(((OptionsReader.Answer.Understood) answer).options(), out, errors);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return BarExitCode.INTERNAL;
        }
    }

    private static int run(BarOptions options, PrintStream out, PrintStream errors) throws InterruptedException {
        return switch (options.mode()) {
            case PLAIN -> PlainTextMode.run(options, out, errors);
            case ONCE, JSON -> SnapshotPrinter.print(options, out, errors);
            case LIVE ->
                terminal().isPresent()
                        ? new TerminalApp(options, errors).run()
                        : SnapshotPrinter.print(options, out, errors);
            case BEGIN -> begin(options, out, errors);
        };
    }

    private static int begin(BarOptions options, PrintStream out, PrintStream errors) throws InterruptedException {
        Optional<Console> console = terminal();
        if (console.isEmpty()) {
            errors.println("bar: --begin needs a terminal to ask at");
            return BarExitCode.USAGE;
        }
        Consumer<String> print = text -> {
            out.print(text);
            out.flush();
        };
        var dialog = new FirstDayDialog(
                prompt -> {
                    print.accept(prompt);
                    return Optional.ofNullable(console.get().readLine());
                },
                line -> print.accept(line + System.lineSeparator()));
        Optional<FirstDayDialog.Opened> opened = dialog.run(options.source().server(), Instant.now());
        if (opened.isEmpty()) return BarExitCode.NO_SERVICE;
        return new TerminalApp(options.on(opened.get().day(), opened.get().personId()), errors).run();
    }

    // On Java 17 a console exists only when input and output are both terminals; from 22 on it must be asked.
    private static Optional<Console> terminal() {
        Optional<Console> console = Optional.ofNullable(System.console());
        if (console.isEmpty()) return console;
        try {
            boolean isTerminal = (boolean) Console.class.getMethod("isTerminal").invoke(console.get());
            return isTerminal ? console : Optional.empty();
        } catch (ReflectiveOperationException beforeJava22) {
            return console;
        }
    }
}
