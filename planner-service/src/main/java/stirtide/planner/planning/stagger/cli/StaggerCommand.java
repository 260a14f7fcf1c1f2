package stirtide.planner.planning.stagger.cli;

import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import stirtide.planner.check.stagger.CertificateCheck;
import stirtide.planner.check.stagger.StaggerPlanCheck;
import stirtide.planner.planning.floor.cli.FloorCommand;
import stirtide.planner.planning.floor.cli.FloorDayFile;
import stirtide.planner.planning.stagger.StaggerEngine;
import stirtide.planner.planning.stagger.StaggerPlan;

/**
 * Plans day files and prints one JSON line each; times are processor time of the planning thread. Exit code 0 when every day got a complete plan, 1 when one did not, 2 when
 * the command line or a file was refused.
 */
public final class StaggerCommand {
    private static final String USAGE =
            "usage: stagger [--seconds N] FILE...   (N whole seconds of processor time for each"
                    + " day, 10 if not given; each FILE a day of the plain model or a floor day in JSON)";
    private static final long SEED = 1;

    private StaggerCommand() {}

    /** Runs the command. */
    public static void main(String[] arguments) {
        PrintStream out =
                new PrintStream(new java.io.FileOutputStream(java.io.FileDescriptor.out), true, StandardCharsets.UTF_8);
        int code = run(List.of(arguments), out, System.err);
        if (code != 0) {
            System.exit(code);
        }
    }

    static int run(List<String> arguments, PrintStream out, PrintStream err) {
        List<Path> files = new ArrayList<>();
        long seconds = 10;
        for (int i = 0; i < arguments.size(); i++) {
            String argument = arguments.get(i);
            if (argument.equals("--seconds")) {
                i++;
                if (i == arguments.size() || !arguments.get(i).matches("[0-9]{1,5}")) {
                    err.println("--seconds needs a whole number from 0 to 99999\n" + USAGE);
                    return 2;
                }
                seconds = Long.parseLong(arguments.get(i));
            } else if (argument.startsWith("-")) {
                err.println(argument + " is not known\n" + USAGE);
                return 2;
            } else {
                files.add(Path.of(argument));
            }
        }
        if (files.isEmpty()) {
            err.println(USAGE);
            return 2;
        }
        return plan(files, seconds, out, err);
    }

    private static int plan(List<Path> files, long seconds, PrintStream out, PrintStream err) {
        boolean complete = true;
        for (Path file : files) {
            try {
                Optional<FloorDayFile> floor = FloorDayFile.read(file);
                complete &= floor.isPresent()
                        ? FloorCommand.plan(floor.get(), seconds, out, err)
                        : plan(DayFile.read(file), seconds, out, err);
            } catch (DayFile.Refused | FloorDayFile.Refused e) {
                err.println(e.getMessage());
                return 2;
            }
        }
        return complete ? 0 : 1;
    }

    private static boolean plan(DayFile day, long seconds, PrintStream out, PrintStream err) throws DayFile.Refused {
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
