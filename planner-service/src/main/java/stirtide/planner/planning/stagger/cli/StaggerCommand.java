package stirtide.planner.planning.stagger.cli;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import picocli.AutoComplete.GenerateCompletion;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import stirtide.planner.check.stagger.CertificateCheck;
import stirtide.planner.check.stagger.StaggerPlanCheck;
import stirtide.planner.cli.CommandException;
import stirtide.planner.cli.CommandLines;
import stirtide.planner.cli.CommandLines.WholeNumber;
import stirtide.planner.cli.ProgramVersion;
import stirtide.planner.planning.floor.cli.FloorCommand;
import stirtide.planner.planning.floor.cli.FloorDayFile;
import stirtide.planner.planning.stagger.StaggerEngine;
import stirtide.planner.planning.stagger.StaggerPlan;

/**
 * The command line of {@code planner-service/stagger}: plans day files and prints one JSON line each; times are processor time
 * of the planning thread. Exit code 0 when every day got a complete plan, 1 when one did not, 2 when the command line or a
 * file was refused.
 */
@Command(
        name = "stagger",
        description = "Plans plain days and floor days, and prints one JSON line each.",
        mixinStandardHelpOptions = true,
        versionProvider = ProgramVersion.class,
        subcommands = GenerateCompletion.class)
public final class StaggerCommand implements Callable<Integer> {
    private static final int REFUSED = 2;
    private static final long SEED = 1;

    private static final class Seconds extends WholeNumber {
        Seconds() {
            super(0, 99_999);
        }
    }

    private final PrintStream out;
    private final PrintStream err;

    @Option(
            names = "--seconds",
            paramLabel = "N",
            converter = Seconds.class,
            description = "seconds of processor time for each day (${DEFAULT-VALUE})")
    private int seconds = 10;

    @Parameters(paramLabel = "FILE", arity = "1..*", description = "a day of the plain model or a floor day, in JSON")
    private List<Path> files = new ArrayList<>();

    private StaggerCommand(PrintStream out, PrintStream err) {
        this.out = out;
        this.err = err;
    }

    /** Runs the command. */
    public static void main(String[] arguments) {
        PrintStream out =
                new PrintStream(new java.io.FileOutputStream(java.io.FileDescriptor.out), true, StandardCharsets.UTF_8);
        int code = run(List.of(arguments), out, System.err);
        if (code != 0) System.exit(code);
    }

    static int run(List<String> arguments, PrintStream out, PrintStream err) {
        int code = CommandLines.of(new StaggerCommand(out, err))
                .setOut(new PrintWriter(out, true, StandardCharsets.UTF_8))
                .setErr(new PrintWriter(err, true, StandardCharsets.UTF_8))
                .execute(arguments.toArray(String[]::new));
        return code == CommandException.USAGE ? REFUSED : code;
    }

    @Override
    public Integer call() {
        boolean complete = true;
        for (Path file : files) {
            try {
                Optional<FloorDayFile> floor = FloorDayFile.read(file);
                complete &= floor.isPresent()
                        ? FloorCommand.plan(floor.get(), seconds, out, err)
                        : plan(DayFile.read(file));
            } catch (DayFile.Refused | FloorDayFile.Refused refused) {
                err.println(refused.getMessage());
                return REFUSED;
            }
        }
        return complete ? 0 : 1;
    }

    private boolean plan(DayFile day) throws DayFile.Refused {
        long begin = processorNanos();
        long end = begin + TimeUnit.SECONDS.toNanos(seconds);
        StaggerEngine engine;
        try {
            engine = new StaggerEngine(day.problem(), new SplittableRandom(SEED));
        } catch (IllegalArgumentException e) {
            throw new DayFile.Refused(day.name() + ": " + e.getMessage());
        }
        long first = processorNanos();
        StaggerPlan plan = engine.improve(rounds -> processorNanos() < end);
        long done = processorNanos();
        List<String> faults = StaggerPlanCheck.faults(day.problem(), plan);
        faults.forEach(fault -> err.println(day.name() + ": " + fault));
        int proven = faults.isEmpty() ? CertificateCheck.provenLevels(day.problem(), plan) : 0;
        out.println(PlanLine.of(day, plan, proven, millis(first - begin), millis(done - begin)));
        return faults.isEmpty() && plan.score().lastResorts() == 0;
    }

    /** Processor time of this thread: what else runs on the machine takes nothing from a day. */
    private static long processorNanos() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private static long millis(long nanos) {
        return TimeUnit.NANOSECONDS.toMillis(nanos);
    }
}
