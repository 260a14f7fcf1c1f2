package stirtide.planner.service;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import stirtide.events.json.ContractJson;
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
     * @param erased ids of clients who were erased on it
     * @param lessons what later days learn from it, and whom it knows
     */
    record Resting(long revision, Instant time, List<String> erased, Lessons lessons) {
        static Resting of(Day day) {
            return new Resting(day.revision(), day.time(), Clients.erasedOn(day), new Lessons(day));
        }
    }

    /** Read from its JSON when it is wanted first: a start wants none. */
    static final class Lessons {
        private final String json;
        private @Nullable Content content;

        /**
         * As it is written.
         *
         * @param past what later days learn
         * @param clients ids of clients the day holds anything of
         */
        record Content(PastDay past, List<String> clients) {}

        Lessons(Day day) {
            this.content = new Content(PastDay.of(day), Clients.idsOn(day));
            this.json = ContractJson.write(content);
        }

        Lessons(String json) {
            this.json = json;
        }

        String json() {
            return json;
        }

        private Content content() {
            Content known = content;
            if (known == null) {
                known = ContractJson.read(json, Content.class);
                content = known;
            }
            return known;
        }

        PastDay past() {
            return content().past();
        }

        List<String> clients() {
            return content().clients();
        }
    }

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
                .filter(day -> day.getValue().lessons().clients().contains(clientId))
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
