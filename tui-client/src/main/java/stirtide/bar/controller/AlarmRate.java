package stirtide.bar.controller;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Comparator;
import java.util.Deque;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import stirtide.bar.model.AlarmList;
import stirtide.events.view.AlarmCard;

/**
 * Counts alarms as they come. More than ten in ten minutes are a flood, the limit that EEMUA 191 and ANSI/ISA-18.2 are
 * quoted with; it ends when fewer than five came in ten minutes.
 */
final class AlarmRate {
    private static final Duration WINDOW = Duration.ofMinutes(10);
    private static final int FLOOD_ABOVE = 10;
    private static final int FLOOD_ENDS_BELOW = 5;

    private final Deque<Instant> arrivals = new ArrayDeque<>();
    private final Map<String, Integer> kinds = new TreeMap<>();
    private final Map<String, Integer> priorities = new TreeMap<>();
    private Optional<Instant> since = Optional.empty();
    private Instant passedAt = Instant.EPOCH;
    private int most;
    private long floodSeconds;
    private boolean flood;

    void add(AlarmCard alarm) {
        arrivals.add(alarm.raisedAt());
        kinds.merge(alarm.kind(), 1, Integer::sum);
        priorities.merge(alarm.priority(), 1, Integer::sum);
    }

    /** The salon's clock has gone on. */
    void pass(Instant now) {
        if (since.isEmpty()) since = Optional.of(now);
        else if (flood && now.isAfter(passedAt)) {
            floodSeconds += Duration.between(passedAt, now).toSeconds();
        }
        passedAt = now;
        arrivals.removeIf(arrival -> arrival.isBefore(now.minus(WINDOW)));
        most = Math.max(most, arrivals.size());
        if (arrivals.size() > FLOOD_ABOVE) flood = true;
        if (arrivals.size() < FLOOD_ENDS_BELOW) flood = false;
    }

    boolean isFlood() {
        return flood;
    }

    AlarmList.Tally tally() {
        Optional<Map.Entry<String, Integer>> top =
                kinds.entrySet().stream().max(Comparator.comparingInt(Map.Entry::getValue));
        return new AlarmList.Tally(
                since.orElse(Instant.EPOCH),
                priorities.getOrDefault("HIGH", 0),
                priorities.getOrDefault("MEDIUM", 0),
                priorities.getOrDefault("LOW", 0),
                most,
                floodSeconds,
                top.map(Map.Entry::getKey).orElse(""),
                top.map(Map.Entry::getValue).orElse(0));
    }
}
