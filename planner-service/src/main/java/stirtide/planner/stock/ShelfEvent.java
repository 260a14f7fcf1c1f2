package stirtide.planner.stock;

import java.time.Instant;

/** Something that changed what is on the shelf. Weights in milligrams. */
public sealed interface ShelfEvent {
    /** Product it is about. */
    String productId();

    /** When it happened. */
    Instant at();

    /** A count: so much is there, whatever was calculated before. */
    record Counted(String productId, Instant at, long milligrams) implements ShelfEvent {}

    /** Goods came in. */
    record Received(String productId, Instant at, int packs, int packMilligrams) implements ShelfEvent {}

    /** A bowl was weighed. */
    record Weighed(String productId, Instant at, int milligrams) implements ShelfEvent {}
}
