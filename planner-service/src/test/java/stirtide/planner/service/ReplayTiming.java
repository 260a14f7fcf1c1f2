package stirtide.planner.service;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import stirtide.events.day.StoredEvent;
import stirtide.planner.day.Evolver;
import stirtide.planner.day.state.Day;
import stirtide.planner.eventlog.EventLog;
import stirtide.planner.eventlog.SqliteEventLog;

/** Times opening, verifying and replaying a log of many days. */
@Command(
        name = "planner-service/trials/run time-replay",
        synopsisHeading = "usage: ",
        mixinStandardHelpOptions = true,
        exitCodeOnInvalidInput = 64,
        description = "Times opening, verifying and replaying a log of many days, three rounds.")
final class ReplayTiming implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "FOLDER", description = "folder of the log, which is made the first time")
    private Path folder = Path.of("");

    @Parameters(index = "1", arity = "0..1", defaultValue = "100000", description = "events wanted (${DEFAULT-VALUE})")
    private int wanted;

    /** Writes the log if the folder has none; then three rounds, the first of which is cold. */
    public static void main(String[] arguments) {
        System.exit(new CommandLine(new ReplayTiming()).execute(arguments));
    }

    @Override
    public Integer call() throws Exception {
        if (!Files.exists(folder.resolve("log.db"))) {
            List<String> played = ManyDays.play(Files.createTempDirectory("played"));
            int days = (wanted + played.size() - 1) / played.size();
            System.out.println(ManyDays.write(folder, played, days) + " events in " + days + " days, "
                    + Files.size(folder.resolve("log.db")) / (1 << 20) + " MiB");
        }
        for (int round = 1; round <= 3; round++) {
            long began = System.nanoTime();
            try (EventLog log = SqliteEventLog.open(folder)) {
                long opened = System.nanoTime();
                long events = 0;
                for (String day : log.days()) events += replay(log, day).revision();
                long replayed = System.nanoTime();
                if (events == 0) throw new IllegalStateException("the log in " + folder + " has no events");
                System.out.println("round " + round + ": opened and verified " + millis(began, opened)
                        + " ms, replayed " + events + " events in " + millis(opened, replayed) + " ms");
            }
        }
        return 0;
    }

    private static Day replay(EventLog log, String day) {
        List<StoredEvent> events = new ArrayList<>();
        Supplier<List<StoredEvent>> more = () -> log.read(day, events.size(), EventLog.READ_LIMIT);
        for (List<StoredEvent> page = more.get(); !page.isEmpty(); page = more.get()) events.addAll(page);
        return Evolver.replay(events);
    }

    private static long millis(long from, long to) {
        return (to - from) / 1_000_000;
    }
}
