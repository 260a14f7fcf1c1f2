package stirtide.planner.eventlog;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import stirtide.events.day.StoredEvent;

/**
 * Appends to the log and to a plain file that is forced to the disk after every write, turn and turn about in one run:
 * the plain file is what the disk allows, the ratio what the log makes of it.
 */
@Command(
        name = "planner-service/trials/run append-limit",
        synopsisHeading = "usage: ",
        mixinStandardHelpOptions = true,
        exitCodeOnInvalidInput = 64,
        description =
                "Appends to the log and, alternating, to a plain file that is forced to the disk: events a second and the ratio.")
public final class AppendLimit implements Callable<Integer> {
    private static final List<Integer> BATCHES = List.of(1, 10, 100);
    private static final long ROUND_NANOS = 300_000_000;
    private static final int ROUNDS = 15;
    private static final int WARM_ROUNDS = 4;

    @Parameters(arity = "0..1", paramLabel = "FOLDER", description = "an empty folder on the disk to be measured")
    private Optional<Path> place = Optional.empty();

    private interface Way {
        void append(List<StoredEvent> events) throws IOException;
    }

    /** One of the two, with a stream of its own and the milliseconds of its appends. */
    private static final class Side {
        private final Way way;
        private final List<Double> millis = new ArrayList<>();
        private long newest;

        private Side(Way way) {
            this.way = way;
        }

        /** Appends batches for one round; gives events a second, the making of the events included. */
        private double round(int batch) throws IOException {
            long before = newest;
            long began = System.nanoTime();
            long now = began;
            while (now - began < ROUND_NANOS) {
                String command = "command-" + newest;
                List<StoredEvent> events = EventLogContract.events(EventLogContract.DAY, newest, batch, command);
                long start = System.nanoTime();
                way.append(events);
                now = System.nanoTime();
                millis.add((now - start) / 1e6);
                newest += batch;
            }
            return (newest - before) * 1e9 / (now - began);
        }
    }

    /** Prints the figures. */
    public static void main(String[] arguments) {
        System.exit(new CommandLine(new AppendLimit()).execute(arguments));
    }

    @Override
    public Integer call() throws IOException {
        Path folder =
                place.isPresent() ? Files.createDirectories(place.get()) : Files.createTempDirectory("append-limit");
        try (SqliteEventLog log = SqliteEventLog.open(folder.resolve("log"));
                FileChannel plain = FileChannel.open(
                        folder.resolve("plain"), StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
            Side ours = new Side(events -> {
                StoredEvent first = events.get(0);
                EventLog.Append answer =
                        log.append(first.day(), first.revision() - 1, first.commandId(), EventLogContract.BODY, events);
                if (!(answer instanceof EventLog.Append.Appended))
                    throw new IOException("nothing was appended, is the folder empty? " + answer);
            });
            Side limit = new Side(events -> {
                for (StoredEvent event : events) plain.write(ByteBuffer.wrap(EventEncoder.of(event)));
                plain.force(false);
            });
            for (int batch : BATCHES) compare(batch, ours, limit);
        }
        return 0;
    }

    private static void compare(int batch, Side ours, Side limit) throws IOException {
        List<Double> ratios = new ArrayList<>();
        List<Double> rates = new ArrayList<>();
        for (int round = -WARM_ROUNDS; round < ROUNDS; round++) {
            if (round == 0) ours.millis.clear();
            boolean first = round % 2 == 0;
            double before = first ? limit.round(batch) : 0;
            double rate = ours.round(batch);
            double allowed = first ? before : limit.round(batch);
            if (round < 0) continue;
            ratios.add(rate / allowed);
            rates.add(rate);
        }
        System.out.printf(
                "batches of %d: %.0f events a second, %.2f of what the plain file reached (%.2f to %.2f over %d rounds);"
                        + " append p50 %.2f ms, p99 %.2f ms%n",
                batch,
                share(rates, 0.5),
                share(ratios, 0.5),
                share(ratios, 0),
                share(ratios, 1),
                ROUNDS,
                share(ours.millis, 0.5),
                share(ours.millis, 0.99));
    }

    private static double share(List<Double> values, double share) {
        List<Double> sorted = values.stream().sorted().toList();
        return sorted.get((int) Math.round(share * (sorted.size() - 1)));
    }
}
