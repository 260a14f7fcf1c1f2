package stirtide.bench;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import stirtide.planner.check.stagger.CertificateCheck;
import stirtide.planner.check.stagger.StaggerPlanCheck;
import stirtide.planner.planning.stagger.Certificate;
import stirtide.planner.planning.stagger.Claim;
import stirtide.planner.planning.stagger.StaggerEngine;
import stirtide.planner.planning.stagger.StaggerPlan;
import stirtide.planner.planning.stagger.StaggerProblem;
import stirtide.planner.planning.stagger.StaggerScore;

/**
 * Days on which everybody books at nine or at one: engine and reference solver in the same call, with figures and bounds of
 * both. The engine's bounds are printed only where the separate checker confirms them.
 */
public final class Unlevelled {
    private static final int WORKERS = 2;
    private static final int DAYS_OF_EACH_SIZE = 3;

    private Unlevelled() {}

    /** Services and assistants of a day. */
    private record Size(int services, int people) {}

    private static final List<Size> SIZES = List.of(new Size(8, 1), new Size(12, 1), new Size(20, 2), new Size(40, 3));

    /** Arguments: seconds for each day and program, then the numbers of services, all four sizes if there are none. */
    public static void main(String[] arguments) {
        if (arguments.length < 1
                || !arguments[0].matches("[1-9][0-9]{0,3}")
                || !Arrays.stream(arguments).skip(1).allMatch("8|12|20|40"::contains)) {
            System.err.println("usage: unlevelled SECONDS [8|12|20|40]...   (seconds 1 to 9999)");
            System.exit(2);
        }
        double seconds = Double.parseDouble(arguments[0]);
        List<String> wanted = List.of(arguments).subList(1, arguments.length);
        Reference.load();
        warmUp();
        System.out.println("wait minutes/bowls/age minutes, after > what is proved to be the least");
        System.out.printf("%-10s %5s %7s  %-50s %s%n", "day", "runs", "people", "engine", "reference solver");
        for (Size size : SIZES) {
            for (int seed = 1; seed <= DAYS_OF_EACH_SIZE; seed++) {
                if (wanted.isEmpty() || wanted.contains(String.valueOf(size.services))) {
                    measure(size, seed, seconds);
                }
            }
        }
    }

    private static void warmUp() {
        StaggerProblem problem = InventedDays.unlevelled(8, 1, 0);
        for (int seed = 0; seed < 20; seed++) {
            new StaggerEngine(problem, new SplittableRandom(seed)).improve(rounds -> rounds < 20);
        }
        Reference.solve(problem, WORKERS, 2, 1);
    }

    private static void measure(Size size, int seed, double seconds) {
        StaggerProblem problem = InventedDays.unlevelled(size.services, size.people, seed);
        String day = size.services + "-" + seed;
        System.out.printf(
                "%-10s %5d %7d  %-50s %s%n",
                day, problem.runs().size(), size.people, engine(problem, seconds), solver(problem, seconds));
    }

    private static String engine(StaggerProblem problem, double seconds) {
        long begin = System.nanoTime();
        long end = begin + (long) (seconds * 1e9);
        StaggerPlan plan = new StaggerEngine(problem, new SplittableRandom(1)).improve(rounds -> System.nanoTime() < end);
        long millis = (System.nanoTime() - begin) / 1_000_000;
        int faults = StaggerPlanCheck.faults(problem, plan).size();
        StaggerScore score = plan.score();
        long[] figures = {score.waitMinutes(), score.mixCost(), score.ageMinutes()};
        String text = text(figures, confirmed(problem, plan), CertificateCheck.provenLevels(problem, plan), millis);
        return text
                + (score.lastResorts() > 0 ? ", by stylists " + score.lastResorts() : "")
                + (faults > 0 ? ", FAULTS " + faults : "");
    }

    private static String solver(StaggerProblem problem, double seconds) {
        Reference.Outcome found = Reference.solve(problem, WORKERS, seconds, 1);
        return text(found.figures(), found.bounds(), found.provenLevels(), found.millis());
    }

    private static String text(long[] figures, long[] bounds, int proven, long millis) {
        return figures[0] < 0
                ? "nothing"
                : String.format(
                        Locale.ROOT,
                        "%d/%d/%d > %s/%s/%s proven %d, %d ms",
                        figures[0],
                        figures[1],
                        figures[2],
                        bound(bounds[0]),
                        bound(bounds[1]),
                        bound(bounds[2]),
                        proven,
                        millis);
    }

    private static String bound(long bound) {
        return bound < 0 ? "-" : String.valueOf(bound);
    }

    /** The bound of each level for which the plan brings a certificate that the checker can follow; 0 needs none. */
    private static long[] confirmed(StaggerProblem problem, StaggerPlan plan) {
        long wait = plan.score().waitMinutes();
        long[] least = {0, 0, 0};
        for (Certificate certificate : plan.certificates()) {
            Claim claim = certificate.claim();
            boolean anyBowls = claim.mixCost() == Claim.ANY;
            boolean anyAge = claim.ageMinutes() == Claim.ANY;
            int level = anyBowls ? 0 : anyAge ? 1 : 2;
            boolean fits = level == 0
                    || claim.waitMinutes() == wait
                            && (level == 1 || claim.mixCost() == plan.score().mixCost());
            long refuted = level == 0 ? claim.waitMinutes() : level == 1 ? claim.mixCost() : claim.ageMinutes();
            if (fits && refuted >= least[level] && CertificateCheck.refutes(problem, certificate)) {
                least[level] = refuted + 1;
            }
        }
        return least;
    }
}
