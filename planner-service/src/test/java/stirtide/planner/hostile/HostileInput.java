package stirtide.planner.hostile;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/**
 * Sends requests of every kind to a real service and checks every answer against the contract, the rights and the
 * canaries.
 */
@Command(
        name = "planner-service/trials/run hostile-input",
        synopsisHeading = "usage: ",
        mixinStandardHelpOptions = true,
        exitCodeOnInvalidInput = 64,
        description =
                "Sends random requests and raw bytes to a real service and checks every answer against the contract,"
                        + " the rights and the canaries. Ends with 1 when a fault is found.")
public final class HostileInput implements Callable<Integer> {
    private static final int SENDERS = 4;

    @Option(names = "--requests", defaultValue = "100000", description = "number of requests (${DEFAULT-VALUE})")
    private int requests;

    @Option(names = "--seed", defaultValue = "1", description = "seed of the requests (${DEFAULT-VALUE})")
    private long seed;

    /** What came of it. */
    record Report(Map<String, Integer> answers, Map<String, Integer> operations, List<String> faults) {}

    /** Ends with 0 when no fault was found, with 1 otherwise. */
    public static void main(String[] arguments) {
        System.exit(new CommandLine(new HostileInput()).execute(arguments));
    }

    @Override
    public Integer call() throws Exception {
        Path folder = Files.createTempDirectory("hostile");
        long began = System.nanoTime();
        Report report = run(folder, requests, seed);
        System.out.println("requests " + requests + ", seed " + seed + ", seconds "
                + (System.nanoTime() - began) / 1_000_000_000L);
        report.answers().forEach((kind, count) -> System.out.println("  " + kind + ": " + count));
        System.out.println("by operation and status");
        report.operations().forEach((kind, count) -> System.out.println("  " + kind + ": " + count));
        report.faults().forEach(fault -> System.out.println("FAULT " + fault));
        System.out.println("faults " + report.faults().size());
        remove(folder);
        return report.faults().isEmpty() ? 0 : 1;
    }

    static Report run(Path folder, int requests, long seed)
            throws IOException, InterruptedException, ExecutionException {
        Path data = Files.createDirectories(folder.resolve("data"));
        HostileSalons salons = new HostileSalons(data);
        ContractBook contract = new ContractBook();
        Report report = new Report(new TreeMap<>(), new TreeMap<>(), new ArrayList<>());
        ExecutorService threads = Executors.newFixedThreadPool(SENDERS);
        try (HostileService service = HostileService.start(data, folder.resolve("output"))) {
            List<HostileRun> runs = new ArrayList<>();
            for (int number = 0; number < SENDERS; number++)
                runs.add(new HostileRun(contract, salons, service.port(), requests / SENDERS, number, seed));
            for (Future<HostileRun> done : threads.invokeAll(runs)) add(report, done.get());
            if (!service.isAlive()) report.faults().add("the service ended");
            if (report.answers().values().stream().mapToInt(Integer::intValue).sum() < requests / 2)
                report.faults().add("fewer than half of the requests were sent: " + report.answers());
            if (report.operations().keySet().stream().noneMatch(line -> line.endsWith(" 200")))
                report.faults().add("no request was answered with 200: " + report.operations());
            service.wrongLines().forEach(line -> report.faults().add("in its own output: " + line));
        } finally {
            threads.shutdownNow();
        }
        return report;
    }

    private static void add(Report report, HostileRun run) {
        run.answers.forEach((kind, count) -> report.answers().merge(kind, count, Integer::sum));
        run.operations.forEach((kind, count) -> report.operations().merge(kind, count, Integer::sum));
        report.faults().addAll(run.faults);
    }

    private static void remove(Path folder) throws IOException {
        try (var paths = Files.walk(folder)) {
            for (Path path : paths.sorted(Comparator.reverseOrder()).toList()) Files.delete(path);
        }
    }
}
