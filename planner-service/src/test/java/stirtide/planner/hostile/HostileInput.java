package stirtide.planner.hostile;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/**
 * Throws requests of every kind at a real service and holds every answer against the contract, the rights and the
 * canaries. Usage: see {@code planner-service/hostile-input}.
 */
public final class HostileInput {
    private static final int SENDERS = 4;

    private HostileInput() {}

    /** What came of it. */
    record Report(Map<String, Integer> answers, Map<String, Integer> operations, List<String> faults) {}

    /** Ends with 0 when nothing was found, with 1 otherwise. */
    public static void main(String[] arguments) throws Exception {
        int requests = Integer.parseInt(arguments[0]);
        long seed = Long.parseLong(arguments[1]);
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
        System.exit(report.faults().isEmpty() ? 0 : 1);
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
