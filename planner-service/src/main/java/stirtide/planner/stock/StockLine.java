package stirtide.planner.stock;

import java.time.Instant;
import java.util.Optional;

/**
 * One product against the plan of the day.
 *
 * @param productId lightener or developer id
 * @param name name shown on screens
 * @param neededMilligrams grams the plan still weighs
 * @param onShelfMilligrams grams on the shelf, empty when nobody counted
 * @param packsToOpen packs the need fills, rounded up
 * @param runsOutAt start of the first bowl for which it is not enough, empty when it lasts or was not counted
 * @param packsToBuy packs to buy so that tomorrow begins with as much as today needs, 0 when there is enough
 * @param sentence the same in words
 */
public record StockLine(
        String productId,
        String name,
        long neededMilligrams,
        Optional<Long> onShelfMilligrams,
        int packsToOpen,
        Optional<Instant> runsOutAt,
        int packsToBuy,
        String sentence) {}
