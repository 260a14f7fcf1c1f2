package stirtide.planner.service;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import stirtide.events.day.StoredEvent;
import stirtide.events.json.CloudEvent;
import stirtide.planner.eventlog.EventLog;
import stirtide.planner.eventlog.SqliteEventLog;

/** A log of many days: one day is played for real, the others are the same day on other dates. */
@Command(
        name = "planner-service/trials/run make-days",
        synopsisHeading = "usage: ",
        mixinStandardHelpOptions = true,
        exitCodeOnInvalidInput = 64,
        description = "Writes a log of many days and prints the number of events.")
final class ManyDays implements Callable<Integer> {
    private static final LocalDate PLAYED = LocalDate.parse("2027-03-09");

    @Parameters(index = "0", paramLabel = "FOLDER", description = "folder of the new log")
    private Path folder = Path.of("");

    @Parameters(index = "1", paramLabel = "DAYS", description = "number of days, some 3.5 MiB each")
    private int days;

    /** Prints the number of events. */
    public static void main(String[] arguments) {
        System.exit(new CommandLine(new ManyDays()).execute(arguments));
    }

    @Override
    public Integer call() throws Exception {
        System.out.println(write(folder, play(Files.createTempDirectory("played")), days));
        return 0;
    }

    /** Plays the small salon's day in a service of its own and gives its events as the wire has them. */
    static List<String> play(Path folder) throws Exception {
        try (PlannerService service = PlannerService.start(PlayedDayIT.settings(folder))) {
            SalonClient client = new SalonClient(service.port());
            PlayedDayIT.play(client);
            return client.events(SmallSalon.DAY);
        }
    }

    /** Writes so many days before the played one, newest last, and gives the number of events. */
    static long write(Path folder, List<String> played, int days) {
        long events = 0;
        try (EventLog log = SqliteEventLog.open(folder)) {
            for (int before = days; before >= 1; before--) {
                List<StoredEvent> day = onDate(played, PLAYED.minusDays(before));
                for (int at = 0; at < day.size(); at += EventLog.READ_LIMIT) {
                    List<StoredEvent> part = day.subList(at, Math.min(day.size(), at + EventLog.READ_LIMIT));
                    log.append(part.get(0).day(), at, EventLog.NO_COMMAND, new byte[0], part);
                }
                events += day.size();
            }
        }
        return events;
    }

    private static List<StoredEvent> onDate(List<String> played, LocalDate date) {
        List<StoredEvent> events = new ArrayList<>();
        for (String line : played) {
            StoredEvent event = CloudEvent.read(line.replace(PLAYED.toString(), date.toString()))
                    .toStored();
            events.add(new StoredEvent(
                    UUID.nameUUIDFromBytes((event.day() + "#" + event.revision()).getBytes(StandardCharsets.UTF_8))
                            .toString(),
                    event.day(),
                    event.revision(),
                    event.time(),
                    event.actor(),
                    event.commandId(),
                    event.event()));
        }
        return events;
    }
}
