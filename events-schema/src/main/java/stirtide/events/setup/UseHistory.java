package stirtide.events.setup;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What earlier days teach about grams. It is part of what a day was opened with, so a replay of the day learns the same.
 *
 * @param uses what zones of earlier visits used, oldest first
 * @param rules what managers have decided about allowances
 * @param memory formulas, swatches and strips of earlier days; empty when nothing is remembered
 */
public record UseHistory(List<PastUse> uses, List<AllowanceRule> rules, Optional<SalonMemory> memory) {
    /** Nothing is known of earlier days. */
    public static final UseHistory NONE = new UseHistory(List.of(), List.of());

    public UseHistory {
        uses = List.copyOf(uses);
        rules = List.copyOf(rules);
    }

    /** Grams only, nothing else remembered. */
    public UseHistory(List<PastUse> uses, List<AllowanceRule> rules) {
        this(uses, rules, Optional.empty());
    }

    /** What is remembered beside the grams. */
    public SalonMemory remembered() {
        return memory.orElse(SalonMemory.NONE);
    }

    /**
     * What one zone of one earlier visit used: mixed less left over and residue, shared out over the zones of its run.
     *
     * @param on day of the visit
     * @param menuId menu entry
     * @param zone zone of the entry
     * @param clientRef client as booked; empty text when unknown
     * @param baseMilligrams base grams of the menu on that day, 1 or more
     * @param lengthPermille factor of the hair's length, 1 or more
     * @param densityPermille factor of the hair's density, 1 or more
     * @param usedMilligrams grams used, 1 or more
     * @param spilled whether a bowl was spilled: nothing is learned from it
     */
    @RecordBuilder
    public record PastUse(
            LocalDate on,
            String menuId,
            String zone,
            String clientRef,
            int baseMilligrams,
            int lengthPermille,
            int densityPermille,
            int usedMilligrams,
            boolean spilled)
            implements UseHistoryPastUseBuilder.With {}

    /**
     * What a manager has decided about the allowance of a zone.
     *
     * @param menuId menu entry
     * @param zone zone of the entry
     * @param pinnedMilligrams grams to plan for medium hair whatever was learned, if pinned
     * @param resetOn day from which on visits are learned from, if everything before was dropped
     */
    public record AllowanceRule(
            String menuId, String zone, Optional<Integer> pinnedMilligrams, Optional<LocalDate> resetOn) {}
}
