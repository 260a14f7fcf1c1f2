package stirtide.planner.eventlog;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import stirtide.events.day.StoredEvent;

/** A log that lives as long as its process. It stores bytes like the embedded one, so that reading is the same. */
public final class MemoryEventLog implements EventLog {
    private final Map<String, List<byte[]>> streams = new TreeMap<>();
    private final Map<List<String>, KnownCommand> commands =
            new TreeMap<>((left, right) -> Arrays.compare(left.toArray(String[]::new), right.toArray(String[]::new)));

    @Override
    public Append append(
            String day, long expectedRevision, String commandId, byte[] requestDigest, List<StoredEvent> events) {
        EventEncoder.requireContinues(day, expectedRevision, events);
        Optional<KnownCommand> known = command(day, commandId);
        if (known.isPresent()) return known.get().answer(requestDigest);
        long head = head(day);
        if (head != expectedRevision) return new Append.Conflict(head);
        List<byte[]> stream = streams.computeIfAbsent(day, fresh -> new ArrayList<>());
        events.forEach(event -> stream.add(EventEncoder.of(event)));
        if (!commandId.equals(NO_COMMAND)) {
            KnownCommand now = new KnownCommand(requestDigest.clone(), head + 1, head + events.size());
            commands.put(List.of(day, commandId), now);
        }
        return new Append.Appended(head + 1, head + events.size());
    }

    @Override
    public Optional<KnownCommand> command(String day, String commandId) {
        return Optional.ofNullable(commands.get(List.of(day, commandId)));
    }

    @Override
    public List<StoredEvent> read(String day, long after, int limit) {
        return streams.getOrDefault(day, List.of()).stream()
                .skip(after)
                .limit(Math.min(limit, READ_LIMIT))
                .map(EventEncoder::read)
                .toList();
    }

    @Override
    public List<String> days() {
        return streams.entrySet().stream()
                .filter(stream -> !stream.getValue().isEmpty())
                .map(Map.Entry::getKey)
                .toList();
    }

    @Override
    public long head(String day) {
        return streams.getOrDefault(day, List.of()).size();
    }

    @Override
    public String seal(String day) {
        byte[] hash = HashChain.start(day);
        long revision = 0;
        for (byte[] body : streams.getOrDefault(day, List.of())) hash = HashChain.next(hash, ++revision, body);
        return revision + "-" + HexFormat.of().formatHex(hash);
    }

    @Override
    public SortedMap<String, String> seals() {
        SortedMap<String, String> seals = new TreeMap<>();
        days().forEach(day -> seals.put(day, seal(day)));
        return seals;
    }

    @Override
    public List<Damage> verify() {
        return List.of();
    }

    @Override
    public void close() {}
}
