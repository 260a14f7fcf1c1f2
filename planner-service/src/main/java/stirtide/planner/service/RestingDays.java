package stirtide.planner.service;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import stirtide.planner.day.Clients;
import stirtide.planner.day.Day;
import stirtide.planner.day.PastDay;

/** What stays in memory of days that are over: little enough for years of them. Confined to one context. */
final class RestingDays {
    private final SortedMap<String, Resting> days = new TreeMap<>();

    /**
     * A day that is over.
     *
     * @param revision its newest event
     * @param time time of that event
     * @param past what later days learn from it
     * @param clients ids of clients it holds anything of
     * @param erased ids of clients who were erased on it
     */
    record Resting(long revision, Instant time, PastDay past, List<String> clients, List<String> erased) {
        static Resting of(Day day) {
            // Regular clients stand on every day: one copy of each id does for all.
            List<String> clients =
                    Clients.idsOn(day).stream().map(String::intern).toList();
            return new Resting(day.revision(), day.time(), PastDay.of(day), clients, Clients.erasedOn(day));
        }
    }

    void keep(String name, Day day) {
        days.put(name, Resting.of(day));
    }

    boolean holds(String name) {
        return days.containsKey(name);
    }

    void forget(String name) {
        days.remove(name);
    }

    SortedMap<String, Resting> all() {
        return days;
    }

    /** Names of those that hold anything of a client. */
    List<String> knowing(String clientId) {
        return days.entrySet().stream()
                .filter(day -> day.getValue().clients().contains(clientId))
                .map(day -> day.getKey())
                .toList();
    }

    Stream<String> erased() {
        return days.values().stream().flatMap(day -> day.erased().stream());
    }

    Optional<Instant> newestTime() {
        return days.values().stream().map(Resting::time).max(Instant::compareTo);
    }
}
