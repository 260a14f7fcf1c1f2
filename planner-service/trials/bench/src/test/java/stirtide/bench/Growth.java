package stirtide.bench;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import stirtide.planner.check.stagger.StaggerPlanCheck;
import stirtide.planner.planning.stagger.StaggerEngine;
import stirtide.planner.planning.stagger.StaggerPlan;
import stirtide.planner.planning.stagger.StaggerProblem;

/**
 * How the engine grows: invented days of 125 to 2,000 services in ten hours at two loads of the assistants, with the time until
 * the plan is within a thousandth of the bound on bowls and age and nobody waits. Writes the figures as a plot.
 */
public final class Growth {
    private static final int DAY_MINUTES = 600;
    private static final int[] SERVICES = {125, 250, 500, 1000, 2000};
    private static final int WARM_UPS = 6;
    private static final int SERVICES_PER_ASSISTANT = 25;
    /** Share of the minutes on duty that the fewest bowls take. */
    private static final int[] LOADS = {46, 67};

    private Growth() {}

    /** Arguments: most seconds for one day, file of the plot. */
    public static void main(String[] arguments) throws IOException {
        if (arguments.length != 2 || !arguments[0].matches("[1-9][0-9]{0,3}")) {
            System.err.println("usage: growth SECONDS FILE.svg   (seconds 1 to 9999)");
            System.exit(2);
        }
        double seconds = Double.parseDouble(arguments[0]);
        for (int i = 0; i < WARM_UPS; i++) {
            measure(500, 46, 1, false);
        }
        List<GrowthPlot.Line> lines = new ArrayList<>();
        for (int load : LOADS) {
            List<GrowthPlot.Point> points = new ArrayList<>();
            for (int services : SERVICES) {
                points.add(measure(services, load, seconds, true));
            }
            lines.add(new GrowthPlot.Line(load + " % of the assistants' minutes", points));
        }
        Files.writeString(Path.of(arguments[1]), GrowthPlot.svg(lines));
        System.out.println(mostMemory());
    }

    /** Most memory the whole process held so far, where the operating system tells it. */
    private static String mostMemory() throws IOException {
        Path status = Path.of("/proc/self/status");
        return !Files.isReadable(status)
                ? "the operating system does not tell the memory of the process"
                : Files.readAllLines(status).stream()
                        .filter(line -> line.startsWith("VmHWM:"))
                        .map(line -> "most memory of the process: "
                                + Long.parseLong(line.replaceAll("[^0-9]", "")) / 1024 + " MB")
                        .findFirst()
                        .orElse("");
    }

    /** Processor time of this thread: what else runs on the machine takes nothing from a day. */
    private static long processorNanos() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private static GrowthPlot.Point measure(int services, int loadPercent, double seconds, boolean print) {
        int people = services / SERVICES_PER_ASSISTANT;
        StaggerProblem problem = InventedDays.spread(services, people, DAY_MINUTES, loadPercent, services);
        long begin = processorNanos();
        StaggerEngine engine = new StaggerEngine(problem, new SplittableRandom(1));
        long first = processorNanos() - begin;
        StaggerPlan plan =
                engine.improve(rounds -> !within(engine.plan()) && processorNanos() - begin < (long) (seconds * 1e9));
        long took = processorNanos() - begin;
        Runtime runtime = Runtime.getRuntime();
        long mixing = plan.mixes().stream()
                .mapToLong(mix -> problem.runs().get(mix.runIndex()).mixMinutes())
                .sum();
        long onDuty = problem.assistants().stream()
                .flatMap(assistant -> assistant.onDuty().stream())
                .mapToLong(window -> window.toMinute() - window.fromMinute())
                .sum();
        if (print) {
            System.out.printf(
                    "%4d services, %4d runs, %3d assistants, %2d %% load: first plan %4d ms, %5d ms, %d/%d/%d, bound"
                            + " %d/%d/%d, %s, faults %d, heap in use %d MB%n",
                    services,
                    problem.runs().size(),
                    people,
                    100 * mixing / onDuty,
                    first / 1_000_000,
                    took / 1_000_000,
                    plan.score().waitMinutes(),
                    plan.score().mixCost(),
                    plan.score().ageMinutes(),
                    plan.bound().waitMinutes(),
                    plan.bound().mixCost(),
                    plan.bound().ageMinutes(),
                    within(plan) ? "within 0.1 %" : "NOT within 0.1 %",
                    StaggerPlanCheck.faults(problem, plan).size(),
                    (runtime.totalMemory() - runtime.freeMemory()) >> 20);
        }
        return new GrowthPlot.Point(problem.runs().size(), took / 1_000_000);
    }

    private static boolean within(StaggerPlan plan) {
        return plan.score().lastResorts() == 0
                && plan.score().waitMinutes() == plan.bound().waitMinutes()
                && 1000 * (plan.score().mixCost() - plan.bound().mixCost())
                        <= plan.bound().mixCost()
                && 1000 * (plan.score().ageMinutes() - plan.bound().ageMinutes())
                        <= plan.bound().ageMinutes();
    }
}
