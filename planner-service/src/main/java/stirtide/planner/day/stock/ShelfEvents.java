package stirtide.planner.day.stock;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import stirtide.planner.day.state.Day;
import stirtide.planner.stock.ShelfCount;
import stirtide.planner.stock.ShelfEvent;

/** What happened to the shelf on a day. */
public final class ShelfEvents {
    private ShelfEvents() {}

    /** Counts, receipts and weighings of the day; a bowl weighed anew counts as it was weighed last. */
    public static List<ShelfEvent> of(Day day) {
        var events = new ArrayList<>(day.ledger().shelf());
        for (var service : day.services())
            for (var bowl : service.bowls())
                bowl.weighed().ifPresent(weighed -> {
                    events.add(new ShelfEvent.Weighed(
                            bowl.planned().lightenerId(), weighed.at(), weighed.lightenerMilligrams()));
                    for (var part : weighed.developerParts())
                        events.add(new ShelfEvent.Weighed(part.developerId(), weighed.at(), part.milligrams()));
                });
        return events;
    }

    /** Packs of the products in milligrams, by id. */
    static SortedMap<String, Integer> packs(Day day) {
        var packs = new TreeMap<String, Integer>();
        day.opened().directions().forEach(product -> packs.put(product.lightenerId(), product.packMilligrams()));
        day.opened().developers().forEach(product -> packs.put(product.developerId(), product.packMilligrams()));
        return packs;
    }

    /** Whether the product was counted or received on the day. */
    static boolean touched(Day day, String productId) {
        return day.ledger().shelf().stream().anyMatch(event -> event.productId().equals(productId));
    }

    /** Milligrams left by all events of the day, weighings included, empty while it was never counted. */
    static Optional<Integer> left(Day day, String productId, Optional<Integer> countedAtOpening) {
        var all = new ArrayList<ShelfEvent>();
        Instant opening = day.opened()
                .date()
                .atStartOfDay(ZoneId.of(day.opened().salon().zone()))
                .toInstant();
        countedAtOpening.ifPresent(count -> all.add(new ShelfEvent.Counted(productId, opening, count)));
        all.addAll(of(day));
        return ShelfCount.of(productId, all).map(left -> (int) Math.min(Integer.MAX_VALUE, left));
    }
}
