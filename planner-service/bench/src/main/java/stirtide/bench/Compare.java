package stirtide.bench;

import java.io.File;
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
 * same figures on all levels, how many times as long the solver took. Loading its library is not counted.
 */
public final class Compare {
    private static final int WORKERS = 2;

    private Compare() {}

    private record Took(Score score, int proven, long millis) {}

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
        System.out.printf("%-12s %-28s %-28s %s%n", "day", "engine", "reference solver", "solver / engine");
        List<Double> ratios = new ArrayList<>();
        for (int i = 2; i < arguments.length; i++) {
            String name = new File(arguments[i]).getName().replace(".json", "");
            Problem problem = DayFile.read(Path.of(arguments[i])).problem();
            List<Took> engine = new ArrayList<>();
            List<Took> solver = new ArrayList<>();
            for (int seed = 1; seed <= seeds; seed++) {
                engine.add(engine(problem, seconds, seed));
                solver.add(solver(problem, seconds, seed));
            }
            String ratio = ratio(engine, solver, ratios);
            System.out.printf("%-12s %-28s %-28s %s%n", name, text(engine), text(solver), ratio);
        }
        ratios.sort(null);
        if (!ratios.isEmpty()) {
            System.out.printf(
                    Locale.ROOT,
                    "median ratio %.0f over %d days that both proved (smallest %.1f)%n",
                    ratios.get(ratios.size() / 2),
                    ratios.size(),
                    ratios.get(0));
        }
    }

    private static void warmUp(Problem problem) {
        for (int seed = 0; seed < 20; seed++) {
            engine(problem, 0.2, seed);
        }
        Reference.solve(problem, WORKERS, 2, 1);
    }

    private static Took engine(Problem problem, double seconds, int seed) {
        long begin = System.nanoTime();
        long end = begin + (long) (seconds * 1e9);
        Plan plan = new StaggerEngine(problem, new SplittableRandom(seed)).improve(rounds -> System.nanoTime() < end);
        long millis = Math.max(1, (System.nanoTime() - begin) / 1_000_000);
        int proven = PlanCheck.faults(problem, plan).isEmpty() ? CertificateCheck.provenLevels(problem, plan) : -1;
        return new Took(plan.score(), proven, millis);
    }

    private static Took solver(Problem problem, double seconds, int seed) {
        Reference.Outcome found = Reference.solve(problem, WORKERS, seconds, seed);
        long[] figures = found.figures();
        return new Took(new Score(0, figures[0], figures[1], figures[2]), found.provenLevels(), found.millis());
    }

    private static long median(List<Took> all) {
        long[] millis = all.stream().mapToLong(Took::millis).sorted().toArray();
        return millis[millis.length / 2];
    }

    /** Worst figures and fewest proven levels of all seeds, and the median time. */
    private static String text(List<Took> all) {
        Score worst = all.stream().map(Took::score).max(Score::compareTo).orElseThrow();
        int proven = all.stream().mapToInt(Took::proven).min().orElse(0);
        return worst.waitMinutes() < 0
                ? "nothing in " + median(all) + " ms"
                : worst.waitMinutes() + "/" + worst.mixCost() + "/" + worst.ageMinutes() + " proven " + proven + ", "
                        + median(all) + " ms";
    }

    private static String ratio(List<Took> engine, List<Took> solver, List<Double> ratios) {
        boolean both = engine.stream().allMatch(one -> one.proven == 3)
                && solver.stream().allMatch(one -> one.proven == 3 && one.score.equals(engine.get(0).score));
        if (!both) {
            return "-";
        }
        double ratio = (double) median(solver) / median(engine);
        ratios.add(ratio);
        return String.format(Locale.ROOT, "%.1f", ratio);
    }
}
