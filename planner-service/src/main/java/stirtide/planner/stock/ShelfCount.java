package stirtide.planner.stock;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What is on the shelf, reckoned from its events in order of time; at the same time receipts, counts, weighings. */
public final class ShelfCount {
    private ShelfCount() {}

    /**
     * Milligrams of a product after all events, never below 0; empty while it was never counted, because what was
     * there before the first event is not known.
     */
    public static Optional<Long> of(String productId, List<ShelfEvent> events) {
        List<ShelfEvent> ordered = events.stream()
                .filter(event -> event.productId().equals(productId))
                .sorted(Comparator.comparing(ShelfEvent::at).thenComparing(ShelfCount::rank))
                .toList();
        Optional<Long> count = Optional.empty();
        for (ShelfEvent event : ordered) count = after(count, event);
        return count;
    }

    private static Optional<Long> after(Optional<Long> count, ShelfEvent event) {
        if (event instanceof ShelfEvent.Counted counted) return Optional.of(Math.max(0, counted.milligrams()));
        if (event instanceof ShelfEvent.Received received)
            return count.map(before -> before + (long) received.packs() * received.packMilligrams());
        ShelfEvent.Weighed weighed = (ShelfEvent.Weighed) event;
        return count.map(before -> Math.max(0, before - weighed.milligrams()));
    }

    private static int rank(ShelfEvent event) {
        return event instanceof ShelfEvent.Received ? 0 : event instanceof ShelfEvent.Counted ? 1 : 2;
    }
}
