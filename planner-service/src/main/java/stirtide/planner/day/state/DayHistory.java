package stirtide.planner.day.state;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import stirtide.events.day.StoredEvent;

/**
 * All events of a day, newest first. A linked list, so that adding one costs the same on the first event and on the
 * hundred thousandth, and every state of the day shares the list of the state before.
 */
public final class DayHistory {
    /** No event yet. */
    public static final DayHistory EMPTY = new DayHistory(null, null, null, 0);

    private final @Nullable DayHistory before;
    private final @Nullable StoredEvent newest;
    private final @Nullable StoredEvent first;
    private final int size;

    private DayHistory(
            @Nullable DayHistory before, @Nullable StoredEvent newest, @Nullable StoredEvent first, int size) {
        this.before = before;
        this.newest = newest;
        this.first = first;
        this.size = size;
    }

    /** This history and one more event. */
    public DayHistory plus(StoredEvent event) {
        return new DayHistory(this, event, first == null ? event : first, size + 1);
    }

    /** The first event, which opened the day. */
    public Optional<StoredEvent> first() {
        return Optional.ofNullable(first);
    }

    /** All events, oldest first. */
    public List<StoredEvent> events() {
        var events = new ArrayList<StoredEvent>(size);
        // Ends: each node leads to an older one, the oldest to the empty history.
        for (var node = this; node.newest != null && node.before != null; node = node.before) events.add(node.newest);
        Collections.reverse(events);
        return events;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof DayHistory that && size == that.size && events().equals(that.events());
    }

    @Override
    public int hashCode() {
        return newest == null ? 0 : 31 * size + newest.hashCode();
    }

    @Override
    public String toString() {
        return "History of " + size + " events";
    }
}
