package stirtide.events.view;

import java.time.Instant;
import java.util.Optional;

/**
 * One product of the shelf. {@code onShelfMilligrams} is empty when it was not counted; {@code runsOutAt} is the start of
 * the first bowl for which it is not enough.
 */
public record StockCard(
        String productId,
        String name,
        long neededMilligrams,
        Optional<Long> onShelfMilligrams,
        int packsToOpen,
        Optional<Instant> runsOutAt,
        int packsToBuy,
        String sentence) {}
