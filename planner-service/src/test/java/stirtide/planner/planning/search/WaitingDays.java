package stirtide.planner.planning.search;

import static java.nio.charset.StandardCharsets.US_ASCII;

import java.io.IOException;
import java.io.InputStream;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import stirtide.events.plan.Plan;
import stirtide.planner.check.PlanChecker;

/**
 * A command, no test: how long clients wait on invented days of two assistants at several loads. The minutes within which their services
 * start are kept in a file, so that the days stay the same whatever becomes of the planner.
 */
@Command(
        name = "planner-service/trials/run waits",
        synopsisHeading = "usage: ",
        mixinStandardHelpOptions = true,
        exitCodeOnInvalidInput = 64,
        description =
                "Minutes of waiting on invented days, for plans drawn at once and plans of some rounds, with processor time. Ends with 1 when a plan is invalid.")
public final class WaitingDays implements Callable<Integer> {
    private static final List<List<Integer>> SERVICES_AND_LOADS = List.of(
            List.of(8, 40),
            List.of(20, 40),
            List.of(20, 70),
            List.of(20, 90),
            List.of(40, 0),
            List.of(40, 70),
            List.of(40, 90));
    /** Days of 20 services at 70 % for which a solver's best plans are known: clients wait 29 minutes in all. */
    private static final List<Integer> JUDGED_SEEDS = List.of(3, 4, 6, 8, 11, 15, 17, 19);

    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    @Option(names = "--rounds", paramLabel = "N", description = "rounds of the search (${DEFAULT-VALUE})")
    private int rounds = 200;

    @Option(names = "--judged", description = "only the eight days for which a solver's best plans are known")
    private boolean judged;

    private final Map<String, Integer> spans = new HashMap<>();
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
    public Integer call() throws IOException {
        try (InputStream in = WaitingDays.class.getResourceAsStream("/planning/spans-of-loaded-days.txt")) {
            new String(in.readAllBytes(), US_ASCII).lines().forEach(line -> {
                String[] words = line.split(" ");
                spans.put(words[0], Integer.valueOf(words[1]));
            });
        }
        if (judged) draw(20, 70, JUDGED_SEEDS);
        else
            for (List<Integer> row : SERVICES_AND_LOADS)
                draw(row.get(0), row.get(1), IntStream.range(0, 20).boxed().toList());
        System.out.println(invalid + " plans are invalid");
        return invalid == 0 ? 0 : 1;
    }

    private void draw(int services, int load, List<Integer> seeds) {
        atOnceMinutes = searchedMinutes = atOnceNanos = searchedNanos = 0;
        for (int seed : seeds)
            draw(RandomQuestion.within(seed, services, spans.get(services + "-" + load + "-" + seed)));
        System.out.printf(
                "%2d services, load %2d %%, %d days: waits %d min at once, %d min in %d rounds; %.1f and %.0f ms a day%n",
                services,
                load,
                seeds.size(),
                atOnceMinutes,
                searchedMinutes,
                rounds,
                atOnceNanos / 1e6 / seeds.size(),
                searchedNanos / 1e6 / seeds.size());
    }

    private void draw(PlanQuestion question) {
        long start = THREADS.getCurrentThreadCpuTime();
        Plan atOnce = Planner.atOnce(question).plan();
        long middle = THREADS.getCurrentThreadCpuTime();
        Plan searched = Planner.draw(question, rounds);
        searchedNanos += THREADS.getCurrentThreadCpuTime() - middle;
        atOnceNanos += middle - start;
        atOnceMinutes += atOnce.totals().waitMinutes();
        searchedMinutes += searched.totals().waitMinutes();
        if (!PlanChecker.check(question, atOnce).isEmpty()) invalid++;
        if (!PlanChecker.check(question, searched).isEmpty()) invalid++;
    }
}
