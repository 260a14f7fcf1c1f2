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
        BarOptions.Answer answer = BarOptions.read(arguments, System.getenv(), System.getProperty("user.home", "."));
        if (answer instanceof BarOptions.Answer.Wrong wrong) {
            errors.println("bar: " + wrong.sentence());
            return BarExitCode.USAGE;
        }
        if (answer instanceof BarOptions.Answer.HelpWanted) {
            out.print(BarOptions.help());
            out.flush();
            return BarExitCode.OK;
        }
        return run(((BarOptions.Answer.Understood) answer).options(), out, errors);
    }

    private static int run(BarOptions options, PrintStream out, PrintStream errors) {
        try {
            if (options.plain()) return PlainTextMode.run(options, out, errors);
            if (options.begins() && !hasTerminal()) {
                errors.println("bar: --begin needs a terminal to ask at");
                return BarExitCode.USAGE;
            }
            if (options.once() || !hasTerminal()) return SnapshotPrinter.print(options, out, errors);
            if (!options.begins()) return new TerminalApp(options, errors).run();
            Optional<FirstDayDialog.Opened> opened = begin(options, out);
            if (opened.isEmpty()) return BarExitCode.NO_SERVICE;
            return new TerminalApp(options.on(opened.get().day(), opened.get().personId()), errors).run();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return BarExitCode.INTERNAL;
        }
    }

    private static Optional<FirstDayDialog.Opened> begin(BarOptions options, PrintStream out)
            throws InterruptedException {
        Console console = System.console();
        if (console == null) return Optional.empty();
        Consumer<String> tell = line -> {
            out.println(line);
            out.flush();
        };
        return new FirstDayDialog(
                        prompt -> {
                            out.print(prompt);
                            out.flush();
                            return Optional.ofNullable(console.readLine());
                        },
                        tell)
                .run(options.server(), Instant.now());
    }

    // On Java 17 a console exists only when input and output are both terminals; from 22 on it must be asked.
    private static boolean hasTerminal() {
        Console console = System.console();
        if (console == null) return false;
        try {
            return (boolean) Console.class.getMethod("isTerminal").invoke(console);
        } catch (ReflectiveOperationException beforeJava22) {
            return true;
        }
    }
}
