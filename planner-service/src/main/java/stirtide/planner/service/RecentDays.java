package stirtide.planner.service;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

/** Days that are over and were used last, least recently used first. */
final class RecentDays {
    private static final int CAPACITY = 4;

    private final Set<String> names = new LinkedHashSet<>();

    /** Marks a day as used now; gives the days beyond the capacity that can be evicted. */
    List<String> use(String name, Predicate<String> evictable) {
        names.remove(name);
        names.add(name);
        return names.stream()
                .filter(other -> !other.equals(name) && evictable.test(other))
                .limit(Math.max(0, names.size() - CAPACITY))
                .toList();
    }

    boolean contains(String name) {
        return names.contains(name);
    }

    void remove(String name) {
        names.remove(name);
    }
}
