package stirtide.planner.planning.floor.cli;

import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import stirtide.planner.check.floor.FloorBoundCheck;
import stirtide.planner.check.floor.FloorPlanCheck;
import stirtide.planner.planning.floor.FloorEngine;
import stirtide.planner.planning.floor.FloorPlan;

/** Plans one floor day, has plan and bounds checked and prints it; times are processor time of the planning thread. */
public final class FloorCommand {
    private static final long SEED = 1;

    private FloorCommand() {}

    /**
     * Plans a day.
     *
     * @param file the day
     * @param seconds processor time to be spent
     * @param out takes the line
     * @param err takes what is wrong
     * @return whether the day got a plan that keeps all rules
     */
    public static boolean plan(FloorDayFile file, long seconds, PrintStream out, PrintStream err) {
        long begin = processorNanos();
        long end = begin + TimeUnit.SECONDS.toNanos(seconds);
        FloorEngine engine = new FloorEngine(file.day(), new SplittableRandom(SEED));
        long first = processorNanos();
        engine.improve(steps -> processorNanos() < end);
        long done = processorNanos();
        if (engine.plan().isEmpty()) {
            err.println(file.name() + ": no plan found in which every service is worked");
            return false;
        }
        FloorPlan plan = engine.plan().get();
        List<String> faults = new ArrayList<>(FloorPlanCheck.faults(file.day(), plan));
        faults.addAll(FloorBoundCheck.faults(file.day(), plan.score(), engine.bounds()));
        faults.forEach(fault -> err.println(file.name() + ": " + fault));
        int proven = faults.isEmpty() ? engine.provenLevels() : 0;
        out.println(new FloorPlanLine(
                        file.name(), plan, engine.bounds(), proven, millis(first - begin), millis(done - begin))
                .json());
        return faults.isEmpty();
    }

    private static long processorNanos() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private static long millis(long nanos) {
        return TimeUnit.NANOSECONDS.toMillis(nanos);
    }
}
