package stirtide.bench;

import com.sun.management.OperatingSystemMXBean;
import java.io.File;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import stirtide.planner.check.stagger.CertificateCheck;
import stirtide.planner.check.stagger.StaggerPlanCheck;
import stirtide.planner.planning.stagger.StaggerEngine;
import stirtide.planner.planning.stagger.StaggerPlan;
import stirtide.planner.planning.stagger.StaggerProblem;
import stirtide.planner.planning.stagger.StaggerScore;
import stirtide.planner.planning.stagger.cli.DayFile;

/**
 * Engine and reference solver on the same days in the same call, several seeds each; prints medians and, where both proved the
 * same figures on all levels, how many times as long the solver took: by the clock, and by processor time. Of the engine that is
 * the time of its thread, in nanoseconds; of the solver that of the process, which the system counts in hundredths of a second, and
 * of it the share of one of two workers. Both solve short days again and again until enough has been counted. Loading the solver's
 * library is not counted.
 */
public final class Compare {
    private static final int WORKERS = 2;
    private static final OperatingSystemMXBean PROCESS =
            (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();

    /** Processor time to be counted for one figure: thirty of the system's ticks. */
    private static final long ENOUGH_MICROS = 300_000;

    private static final int MOST_REPEATS = 20;

    private Compare() {}

    private record Took(StaggerScore score, int proven, long micros, long processorMicros) {}

    /** Arguments: seconds for each day and seed, number of seeds, day files. */
    public static void main(String[] arguments) throws DayFile.Refused {
        if (arguments.length < 3 || !arguments[0].matches("[1-9][0-9]{0,3}") || !arguments[1].matches("[1-9][0-9]?")) {
            System.err.println("usage: compare SECONDS SEEDS FILE...   (seconds 1 to 9999, seeds 1 to 99)");
            System.exit(2);
        }
        double seconds = Double.parseDouble(arguments[0]);
        int seeds = Integer.parseInt(arguments[1]);
        Reference.load();
        warmUp(DayFile.read(Path.of(arguments[2])).problem());
        System.out.printf(
                "%-12s %-40s %-40s %s%n",
                "day", "engine: clock, processor", "reference solver: clock, processor", "solver / engine");
        List<Double> ratios = new ArrayList<>();
        List<Double> processorRatios = new ArrayList<>();
        for (int i = 2; i < arguments.length; i++) {
            String name = new File(arguments[i]).getName().replace(".json", "");
            StaggerProblem problem = DayFile.read(Path.of(arguments[i])).problem();
            List<Took> engine = new ArrayList<>();
            List<Took> solver = new ArrayList<>();
            for (int seed = 1; seed <= seeds; seed++) {
                engine.add(engine(problem, seconds, seed));
                solver.add(solver(problem, seconds, seed));
            }
            String ratio = ratio(engine, solver, ratios, processorRatios);
            System.out.printf("%-12s %-40s %-40s %s%n", name, text(engine), text(solver), ratio);
        }
        summary("clock", ratios);
        summary("processor", processorRatios);
    }

    private static void summary(String of, List<Double> ratios) {
        ratios.sort(null);
        if (!ratios.isEmpty()) {
            System.out.printf(
                    Locale.ROOT,
                    "%s: median ratio %.0f over %d days that both proved (smallest %.1f, largest %.0f)%n",
                    of,
                    ratios.get(ratios.size() / 2),
                    ratios.size(),
                    ratios.get(0),
                    ratios.get(ratios.size() - 1));
        }
    }

    private static void warmUp(StaggerProblem problem) {
        for (int seed = 0; seed < 20; seed++) {
            engine(problem, 0.2, seed);
        }
        Reference.solve(problem, WORKERS, 2, 1);
    }

    private static Took engine(StaggerProblem problem, double seconds, int seed) {
        long processor = threadMicros();
        long begin = System.nanoTime();
        StaggerPlan plan = plan(problem, seconds, seed);
        int repeats = 1;
        while (repeats < MOST_REPEATS && threadMicros() - processor < ENOUGH_MICROS) {
            plan = plan(problem, seconds, seed);
            repeats++;
        }
        long micros = Math.max(1, (System.nanoTime() - begin) / 1_000 / repeats);
        long processorMicros = Math.max(1, (threadMicros() - processor) / repeats);
        int proven = StaggerPlanCheck.faults(problem, plan).isEmpty() ? CertificateCheck.provenLevels(problem, plan) : -1;
        return new Took(plan.score(), proven, micros, processorMicros);
    }

    private static StaggerPlan plan(StaggerProblem problem, double seconds, int seed) {
        long end = threadMicros() + (long) (seconds * 1e6);
        return new StaggerEngine(problem, new SplittableRandom(seed)).improve(rounds -> threadMicros() < end);
    }

    private static Took solver(StaggerProblem problem, double seconds, int seed) {
        long processor = processMicros();
        long millis = 0;
        int repeats = 0;
        Reference.Outcome found;
        do {
            found = Reference.solve(problem, WORKERS, seconds, seed);
            millis += found.millis();
            repeats++;
        } while (repeats < MOST_REPEATS && processMicros() - processor < ENOUGH_MICROS);
        long processorMicros = Math.max(1, (processMicros() - processor) / WORKERS / repeats);
        long[] figures = found.figures();
        StaggerScore score = new StaggerScore(0, figures[0], figures[1], figures[2]);
        return new Took(score, found.provenLevels(), Math.max(1, 1_000 * millis / repeats), processorMicros);
    }

    private static long threadMicros() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() / 1_000;
    }

    private static long processMicros() {
        return PROCESS.getProcessCpuTime() / 1_000;
    }

    private static long median(List<Took> all) {
        long[] micros = all.stream().mapToLong(Took::micros).sorted().toArray();
        return micros[micros.length / 2];
    }

    private static long processorMedian(List<Took> all) {
        long[] micros = all.stream().mapToLong(Took::processorMicros).sorted().toArray();
        return micros[micros.length / 2];
    }

    /** Worst figures and fewest proven levels of all seeds, and the median time. */
    private static String text(List<Took> all) {
        StaggerScore worst = all.stream().map(Took::score).max(StaggerScore::compareTo).orElseThrow();
        int proven = all.stream().mapToInt(Took::proven).min().orElse(0);
        return worst.waitMinutes() < 0
                ? "nothing in " + millis(all)
                : worst.waitMinutes() + "/" + worst.mixCost() + "/" + worst.ageMinutes() + " proven " + proven + ", "
                        + millis(all);
    }

    private static String millis(List<Took> all) {
        return String.format(Locale.ROOT, "%.1f, %.1f ms", median(all) / 1000.0, processorMedian(all) / 1000.0);
    }

    private static String ratio(
            List<Took> engine, List<Took> solver, List<Double> ratios, List<Double> processorRatios) {
        boolean both = engine.stream().allMatch(one -> one.proven == 3)
                && solver.stream().allMatch(one -> one.proven == 3 && one.score.equals(engine.get(0).score));
        if (!both) {
            return "-";
        }
        ratios.add((double) median(solver) / median(engine));
        processorRatios.add((double) processorMedian(solver) / processorMedian(engine));
        int last = ratios.size() - 1;
        return String.format(Locale.ROOT, "%.1f, %.1f", ratios.get(last), processorRatios.get(last));
    }
}
