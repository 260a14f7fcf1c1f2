package stirtide.planner.admin;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import stirtide.events.day.StoredEvent;
import stirtide.events.json.CloudEvent;
import stirtide.events.json.UnreadableEvent;
import stirtide.planner.access.AccessFile;
import stirtide.planner.cli.CommandException;
import stirtide.planner.day.Evolver;
import stirtide.planner.day.state.Day;
import stirtide.planner.eventlog.EventLog;
import stirtide.planner.eventlog.SqliteEventLog;

/** Brings exported events into an empty place. */
final class EventImport {
    private EventImport() {}

    /**
     * Reads the whole file before anything is made, then stores and verifies. Gives the number of events.
     *
     * @param open whether a service on the log may let everybody in, as one does that never gave a token
     */
    static int bring(Path file, Path folder, boolean open) throws IOException {
        requireEmpty(folder);
        Map<String, List<StoredEvent>> days = read(file);
        days.values().forEach(EventImport::replay);
        try (EventLog log = SqliteEventLog.open(folder)) {
            days.forEach((day, events) -> store(log, day, events));
            if (!log.verify().isEmpty())
                throw new CommandException(
                        CommandException.LOG_BROKEN, "what was written to " + folder + " does not verify");
        }
        if (!open) new AccessFile(folder).close();
        return days.values().stream().mapToInt(List::size).sum();
    }

    static void requireEmpty(Path folder) throws IOException {
        if (!Files.exists(folder)) return;
        if (!Files.isDirectory(folder)) throw notEmpty(folder);
        try (Stream<Path> there = Files.list(folder)) {
            if (there.findAny().isPresent()) throw notEmpty(folder);
        }
    }

    private static CommandException notEmpty(Path folder) {
        return new CommandException(
                CommandException.CANNOT_CREATE, folder + " is not empty; name a folder that is new or empty");
    }

    private static Map<String, List<StoredEvent>> read(Path file) throws IOException {
        Map<String, List<StoredEvent>> days = new LinkedHashMap<>();
        int number = 0;
        for (String line : Files.readAllLines(file)) {
            number++;
            StoredEvent event = event(line, file + " line " + number);
            List<StoredEvent> events = days.computeIfAbsent(event.day(), day -> new ArrayList<>());
            if (event.revision() != events.size() + 1L)
                throw new CommandException(
                        CommandException.BAD_INPUT,
                        file + " line " + number + ": revision " + event.revision() + " of " + event.day()
                                + ", accepted is " + (events.size() + 1));
            events.add(event);
        }
        return days;
    }

    private static StoredEvent event(String line, String place) {
        try {
            return CloudEvent.read(line).toStored();
        } catch (UnreadableEvent | IllegalArgumentException unreadable) {
            throw new CommandException(CommandException.BAD_INPUT, place + ": " + unreadable.getMessage());
        }
    }

    private static void replay(List<StoredEvent> events) {
        Day day = Day.UNOPENED;
        for (StoredEvent event : events) {
            try {
                day = Evolver.evolve(day, event);
            } catch (RuntimeException doesNotFollow) {
                throw new CommandException(
                        CommandException.BAD_INPUT,
                        event.day() + " revision " + event.revision() + " does not follow from the events before it");
            }
        }
    }

    private static void store(EventLog log, String day, List<StoredEvent> events) {
        for (int at = 0; at < events.size(); at += EventLog.READ_LIMIT) {
            List<StoredEvent> part = events.subList(at, Math.min(events.size(), at + EventLog.READ_LIMIT));
            log.append(day, at, EventLog.NO_COMMAND, new byte[0], part);
        }
    }
}
