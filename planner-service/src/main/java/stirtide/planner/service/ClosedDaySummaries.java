package stirtide.planner.service;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import stirtide.events.json.ContractJson;
import stirtide.planner.day.history.CarriedDay;
import stirtide.planner.day.history.ClientRecords;
import stirtide.planner.day.state.Day;

/** What stays in memory of days that are over: little enough for years of them. Confined to one context. */
final class ClosedDaySummaries {
    private final SortedMap<String, Resting> days = new TreeMap<>();

    /**
     * A day that is over. What it teaches stays as it is written, which takes little memory, and is read anew each time: a
     * salon opens one day a day.
     *
     * @param revision its newest event
     * @param time time of that event
     * @param erased ids of clients who were erased on it
     * @param lessons JSON, in UTF-8, of what later days learn from it, and of whom it knows
     */
    record Resting(long revision, Instant time, List<String> erased, byte[] lessons) {
        static Resting of(Day day) {
            Lessons lessons = new Lessons(CarriedDay.of(day), ClientRecords.idsOn(day));
            return new Resting(
                    day.revision(), day.time(), ClientRecords.erasedOn(day), utf8(ContractJson.write(lessons)));
        }

        CarriedDay past() {
            return read().past();
        }

        boolean knows(String clientId) {
            // Nearly all days do not even hold the word.
            return text().contains(clientId) && read().clients().contains(clientId);
        }

        private Lessons read() {
            return ContractJson.read(text(), Lessons.class);
        }

        private String text() {
            return new String(lessons, StandardCharsets.UTF_8);
        }

        private static byte[] utf8(String text) {
            return text.getBytes(StandardCharsets.UTF_8);
        }
    }

    /**
     * As it is written.
     *
     * @param past what later days learn
     * @param clients ids of clients the day holds anything of
     */
    private record Lessons(CarriedDay past, List<String> clients) {}

    void keep(String name, Resting day) {
        days.put(name, day);
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
                .filter(day -> day.getValue().knows(clientId))
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
