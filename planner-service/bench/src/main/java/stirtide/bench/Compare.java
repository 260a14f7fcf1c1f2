package stirtide.bench;

import com.sun.management.OperatingSystemMXBean;
import java.io.File;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import stirtide.planner.stagger.Plan;
import stirtide.planner.stagger.Problem;
import stirtide.planner.stagger.Score;
import stirtide.planner.stagger.StaggerEngine;
import stirtide.planner.stagger.check.CertificateCheck;
import stirtide.planner.stagger.check.PlanCheck;
import stirtide.planner.stagger.cli.DayFile;

/**
 * Engine and reference solver on the same days in the same call, several seeds each; prints medians and, where both proved the
 * same figures on all levels, how many times as long the solver took: by the clock, and by processor time of the whole process,
 * of the solver's the share of one of its two workers. Loading its library is not counted.
 */
public final class Compare {
    private static final int WORKERS = 2;
    private static final OperatingSystemMXBean PROCESS =
            (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();

    private Compare() {}

    private record Took(Score score, int proven, long micros, long processorMicros) {}

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
                "%-12s %-28s %-28s %s%n", "day", "engine", "reference solver", "solver / engine: clock, processor");
        List<Double> ratios = new ArrayList<>();
        List<Double> processorRatios = new ArrayList<>();
        for (int i = 2; i < arguments.length; i++) {
            String name = new File(arguments[i]).getName().replace(".json", "");
            Problem problem = DayFile.read(Path.of(arguments[i])).problem();
            List<Took> engine = new ArrayList<>();
            List<Took> solver = new ArrayList<>();
            for (int seed = 1; seed <= seeds; seed++) {
                engine.add(engine(problem, seconds, seed));
                solver.add(solver(problem, seconds, seed));
            }
            String ratio = ratio(engine, solver, ratios, processorRatios);
            System.out.printf("%-12s %-28s %-28s %s%n", name, text(engine), text(solver), ratio);
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

    private static void warmUp(Problem problem) {
        for (int seed = 0; seed < 20; seed++) {
            engine(problem, 0.2, seed);
        }
        Reference.solve(problem, WORKERS, 2, 1);
    }

    private static Took engine(Problem problem, double seconds, int seed) {
        long processor = processorMicros();
        long begin = System.nanoTime();
        long end = begin + (long) (seconds * 1e9);
        Plan plan = new StaggerEngine(problem, new SplittableRandom(seed)).improve(rounds -> System.nanoTime() < end);
        long micros = Math.max(1, (System.nanoTime() - begin) / 1_000);
        long processorMicros = Math.max(1, processorMicros() - processor);
        int proven = PlanCheck.faults(problem, plan).isEmpty() ? CertificateCheck.provenLevels(problem, plan) : -1;
        return new Took(plan.score(), proven, micros, processorMicros);
    }

    private static Took solver(Problem problem, double seconds, int seed) {
        long processor = processorMicros();
        Reference.Outcome found = Reference.solve(problem, WORKERS, seconds, seed);
        long processorMicros = (processorMicros() - processor) / WORKERS;
        long[] figures = found.figures();
        Score score = new Score(0, figures[0], figures[1], figures[2]);
        return new Took(score, found.provenLevels(), 1_000 * found.millis(), processorMicros);
    }

    private static long processorMicros() {
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
        Score worst = all.stream().map(Took::score).max(Score::compareTo).orElseThrow();
        int proven = all.stream().mapToInt(Took::proven).min().orElse(0);
        return worst.waitMinutes() < 0
                ? "nothing in " + millis(all)
                : worst.waitMinutes() + "/" + worst.mixCost() + "/" + worst.ageMinutes() + " proven " + proven + ", "
                        + millis(all);
    }

    private static String millis(List<Took> all) {
        return String.format(Locale.ROOT, "%.1f ms", median(all) / 1000.0);
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
