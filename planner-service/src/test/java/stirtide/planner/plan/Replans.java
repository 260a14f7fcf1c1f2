package stirtide.planner.plan;

import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import stirtide.events.plan.Plan;
import stirtide.planner.check.PlanChecker;
import stirtide.planner.proof.ProvenPlanner;

/**
 * A command, no test: invented days of 40 services at four loads, on which one thing after the other comes between. After each
 * the plan is drawn at once and checked, and its waits are set against those of a full search with rounds.
 */
public final class Replans {
    private static final int SERVICES = 40;
    private static final int EVENTS = 50;
    private static final int MINUTES_BETWEEN = 10;
    private static final int ROUNDS = 100;
    private static final int[] LOADS = {0, 40, 70, 90};
    private static final int WARM_UP_DAYS = 2;

    private final Map<EventfulDay.Happening, Integer> kinds = new EnumMap<>(EventfulDay.Happening.class);
    private final long[] nanos;
    private int events;
    private int invalid;
    private int without;
    private long waits;
    private long fullWaits;
    private int equal;
    private int better;
    private int worse;

    private Replans(int most) {
        nanos = new long[most];
    }

    /** Takes the number of days for each load, 26 if none is given: 4 loads of 26 days of 50 events. */
    public static void main(String[] arguments) {
        int days = arguments.length == 0 ? 26 : Integer.parseInt(arguments[0]);
        for (int load : LOADS) new Replans(WARM_UP_DAYS * EVENTS).days(WARM_UP_DAYS, load, 1000);
        int allInvalid = 0;
        for (int load : LOADS) {
            Replans replans = new Replans(days * EVENTS);
            replans.days(days, load, 0);
            replans.print(load == 0 ? "natural" : load + " %");
            allInvalid += replans.invalid + replans.without;
        }
        if (allInvalid > 0) System.exit(1);
    }

    private void days(int days, int load, int firstSeed) {
        for (int seed = firstSeed; seed < firstSeed + days; seed++) {
            EventfulDay day = new EventfulDay(seed, RandomDay.loaded(seed, SERVICES, load));
            Plan plan = Planner.draw(day.question(), ROUNDS);
            for (int event = 0; event < EVENTS; event++) {
                kinds.merge(day.next(plan, MINUTES_BETWEEN), 1, Integer::sum);
                plan = replan(day.question());
            }
        }
    }

    private Plan replan(PlanQuestion question) {
        long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        Plan once = ProvenPlanner.draw(question, 0);
        nanos[events++] = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start;
        Plan full = Planner.draw(question, ROUNDS);
        if (!PlanChecker.check(question, once).isEmpty()) invalid++;
        if (!PlanChecker.check(question, full).isEmpty()) invalid++;
        if (once.services().size() != question.services().size()) without++;
        int wait = once.totals().waitMinutes();
        int fullWait = full.totals().waitMinutes();
        waits += wait;
        fullWaits += fullWait;
        if (wait == fullWait) equal++;
        else if (wait < fullWait) better++;
        else worse++;
        return full;
    }

    private void print(String load) {
        long[] sorted = Arrays.copyOf(nanos, events);
        Arrays.sort(sorted);
        System.out.printf(
                "%-8s %d events %s: %d invalid, %d without a plan; at once p50 %.1f ms, p99 %.1f ms, max %.1f ms of processor"
                        + " time; waits %d min at once, %d min with %d rounds; equal %d, better %d, worse %d%n",
                load,
                events,
                kinds,
                invalid,
                without,
                sorted[events / 2] / 1e6,
                sorted[(int) (events * 99L / 100)] / 1e6,
                sorted[events - 1] / 1e6,
                waits,
                fullWaits,
                ROUNDS,
                equal,
                better,
                worse);
    }
}
