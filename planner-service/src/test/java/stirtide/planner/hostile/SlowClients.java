package stirtide.planner.hostile;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import stirtide.events.json.ContractJson;
import stirtide.planner.service.SmallSalon;

/**
 * Steady work beside hundreds of clients that do not read or send byte by byte: latency of the steady clients, when the
 * slow ones are closed, and memory.
 */
@Command(
        name = "planner-service/trials/run slow-clients",
        synopsisHeading = "usage: ",
        mixinStandardHelpOptions = true,
        exitCodeOnInvalidInput = 64,
        description =
                "Steady work beside clients that do not read or send byte by byte. Ends with 1 when the others wait,"
                        + " or a slow client is not closed.")
public final class SlowClients implements Callable<Integer> {
    private static final int SLOWEST_MILLIS = 250;
    private static final int MOST_MEBIBYTES = 32;
    private static final Pattern HEAP =
            Pattern.compile("(?m)^jvm_memory_used_bytes\\{area=\"heap\"[^}]*} ([0-9.E+]+)$");

    @Option(names = "--clients", defaultValue = "50", description = "clients of each of five kinds (${DEFAULT-VALUE})")
    private int each;

    @Option(names = "--seconds", defaultValue = "60", description = "time beside them (${DEFAULT-VALUE})")
    private int seconds;

    /** Ends with 0 when all held, with 1 otherwise. */
    public static void main(String[] arguments) {
        System.exit(new CommandLine(new SlowClients()).execute(arguments));
    }

    @Override
    public Integer call() throws Exception {
        if (each < 1 || seconds < 1) throw new IllegalArgumentException("clients and seconds are 1 or more");
        Path folder = Files.createTempDirectory("slow");
        try (HostileService service = HostileService.start(folder.resolve("data"), folder.resolve("output"))) {
            return measure(service, each, seconds) ? 0 : 1;
        }
    }

    private static boolean measure(HostileService service, int each, int seconds) throws Exception {
        try (Wire wire = new Wire(service.port())) {
            byte[] opening = ContractJson.write(SmallSalon.opening()).getBytes(StandardCharsets.UTF_8);
            Answer opened = wire.ask(RequestText.of("POST", "/days", "", opening), false)
                    .orElseThrow();
            if (opened.status() != 201) throw new IOException("the day cannot be opened: " + opened.body());
        }
        try (SteadyWork work = new SteadyWork(service.port());
                Wire metrics = new Wire(service.managementPort())) {
            Map<String, List<Long>> alone = work.run(10);
            long before = heap(metrics);
            List<SlowGroup> groups = new ArrayList<>();
            for (SlowGroup.Way way : SlowGroup.Way.values()) groups.add(new SlowGroup(way, service.port(), each));
            Map<String, List<Long>> beside = work.run(seconds);
            long most = heap(metrics);
            report("alone", alone);
            boolean fast = report("beside " + each + " of each kind", beside);
            boolean gone = true;
            for (SlowGroup group : groups) {
                System.out.println("  " + group);
                gone &= group.allClosed();
                group.close();
            }
            long grown = (most - before) / 1024 / 1024;
            System.out.println(
                    "heap in use before and after, MiB: " + before / 1024 / 1024 + ", " + most / 1024 / 1024);
            System.out.println("service alive: " + service.isAlive());
            service.wrongLines().forEach(line -> System.out.println("  in its own output: " + line));
            return fast
                    && gone
                    && service.isAlive()
                    && grown < MOST_MEBIBYTES
                    && service.wrongLines().isEmpty();
        }
    }

    /** The least of some readings: what the collector has not come to yet is not in use. */
    private static long heap(Wire metrics) throws IOException {
        long least = Long.MAX_VALUE;
        for (int times = 0; times < 40; times++) {
            Answer answer = metrics.ask(RequestText.of("GET", "/metrics", "", new byte[0]), false)
                    .orElseThrow();
            double sum = 0;
            Matcher found = HEAP.matcher(answer.body());
            while (found.find()) sum += Double.parseDouble(found.group(1));
            if (sum == 0) throw new IOException("the metrics do not tell the heap in use: " + answer.status());
            least = Math.min(least, (long) sum);
        }
        return least;
    }

    private static boolean report(String when, Map<String, List<Long>> millis) {
        boolean fast = true;
        for (var kind : new TreeMap<>(millis).entrySet()) {
            List<Long> sorted = kind.getValue().stream().sorted().toList();
            long p99 = sorted.get(sorted.size() * 99 / 100);
            System.out.println(when + ", " + kind.getKey() + " in ms: count " + sorted.size() + ", p50 "
                    + sorted.get(sorted.size() / 2) + ", p99 " + p99 + ", most " + sorted.get(sorted.size() - 1));
            fast &= p99 < SLOWEST_MILLIS;
        }
        return fast;
    }
}
