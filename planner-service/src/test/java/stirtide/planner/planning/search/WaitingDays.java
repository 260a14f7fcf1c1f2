package stirtide.planner.planning.search;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import stirtide.events.plan.Plan;
import stirtide.planner.check.PlanChecker;

/** A command, no test: how long clients wait on invented days of two assistants at several loads. */
@Command(
        name = "planner-service/trials/run waits",
        synopsisHeading = "usage: ",
        mixinStandardHelpOptions = true,
        exitCodeOnInvalidInput = 64,
        description =
                "Minutes of waiting on invented days, for plans drawn at once and plans of 200 rounds, with processor time. Ends with 1 when a plan is invalid.")
public final class WaitingDays implements Callable<Integer> {
    private static final List<List<Integer>> SERVICES_AND_LOADS = List.of(
            List.of(8, 40),
            List.of(20, 40),
            List.of(20, 70),
            List.of(20, 90),
            List.of(40, 0),
            List.of(40, 70),
            List.of(40, 90));
    private static final int ROUNDS = 200;
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    @Parameters(paramLabel = "SEED", description = "seeds of the days, 0 to 19 if none is named")
    private List<Integer> seeds = IntStream.range(0, 20).boxed().toList();

    private int invalid;
    private long atOnceMinutes;
    private long searchedMinutes;
    private long atOnceNanos;
    private long searchedNanos;

    /** Runs the command. */
    public static void main(String[] arguments) {
        System.exit(new CommandLine(new WaitingDays()).execute(arguments));
    }

    @Override
    public Integer call() {
        for (List<Integer> row : SERVICES_AND_LOADS) {
            atOnceMinutes = searchedMinutes = atOnceNanos = searchedNanos = 0;
            for (int seed : seeds) draw(RandomQuestion.loaded(seed, row.get(0), row.get(1)));
            System.out.printf(
                    "%2d services, load %2d %%, %d days: waits %d min at once, %d min in %d rounds; %.1f and %.0f ms a day%n",
                    row.get(0),
                    row.get(1),
                    seeds.size(),
                    atOnceMinutes,
                    searchedMinutes,
                    ROUNDS,
                    atOnceNanos / 1e6 / seeds.size(),
                    searchedNanos / 1e6 / seeds.size());
        }
        System.out.println(invalid + " plans are invalid");
        return invalid == 0 ? 0 : 1;
    }

    private void draw(PlanQuestion question) {
        long start = THREADS.getCurrentThreadCpuTime();
        Plan atOnce = Planner.atOnce(question).plan();
        long middle = THREADS.getCurrentThreadCpuTime();
        Plan searched = Planner.draw(question, ROUNDS);
        searchedNanos += THREADS.getCurrentThreadCpuTime() - middle;
        atOnceNanos += middle - start;
        atOnceMinutes += atOnce.totals().waitMinutes();
        searchedMinutes += searched.totals().waitMinutes();
        if (!PlanChecker.check(question, atOnce).isEmpty()) invalid++;
        if (!PlanChecker.check(question, searched).isEmpty()) invalid++;
    }
}
