package stirtide.planner.planning.search;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import stirtide.events.plan.Plan;

/**
 * A command, no test: prints how much processor time plans take on invented days of 16, 40 and 80 services, warm. Processor
 * time of the thread, so that other work on the machine matters less; what the compiler does beside is not in it.
 */
public final class PlanTimes {
    private static final int DAYS = 20;
    private static final int STEPS = 10;
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private PlanTimes() {}

    public static void main(String[] arguments) {
        measure(40, false);
        measure(40, false);
        for (int services : new int[] {16, 40, 80}) measure(services, true);
    }

    private static long cpuNanos() {
        return THREADS.getCurrentThreadCpuTime();
    }

    private static void measure(int services, boolean print) {
        long[] first = new long[DAYS];
        long[] again = new long[DAYS * STEPS];
        for (int seed = 0; seed < DAYS; seed++) {
            LivedDay day = new LivedDay(seed, RandomQuestion.of(seed, services));
            long start = cpuNanos();
            Plan plan = Planner.draw(day.question(), 0);
            first[seed] = cpuNanos() - start;
            for (int step = 0; step < STEPS; step++) {
                day.pass(plan, step == 0 ? 45 : 20);
                start = cpuNanos();
                plan = Planner.draw(day.question(), 0);
                again[seed * STEPS + step] = cpuNanos() - start;
            }
        }
        Arrays.sort(first);
        Arrays.sort(again);
        if (print)
            System.out.printf(
                    "%2d services, processor time: first plan p50 %.1f ms, max %.1f ms, replan p50 %.1f ms, p99 %.1f ms"
                            + " (%d and %d plans)%n",
                    services,
                    first[DAYS / 2] / 1e6,
                    first[DAYS - 1] / 1e6,
                    again[again.length / 2] / 1e6,
                    again[again.length * 99 / 100] / 1e6,
                    first.length,
                    again.length);
    }
}
