package stirtide.planner.day.state;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.UseHistory.AllowanceRule;
import stirtide.planner.allowance.Allowance;
import stirtide.planner.stock.ShelfEvent;
import stirtide.planner.visits.RepeatedFormula;

/**
 * What a day knows of grams besides its bowls: allowances that were learned or pinned, formulas that are repeated, the
 * rules managers have set, what happened to the shelf, and what was written down. Immutable.
 *
 * @param allowances by {@link DayNotes#key service and zone}; a zone without one goes by the menu
 * @param repeats formulas of the last visit, by service, where they were asked for
 * @param rules rules in force
 * @param fractionPermille how often in a thousand allowances are to be enough, if a manager has set it
 * @param shelf counts and receipts of the day, in order
 * @param notes levels, swatches and strips of the day
 */
@RecordBuilder
public record AllowanceLedger(
        SortedMap<String, Allowance> allowances,
        SortedMap<Integer, RepeatedFormula> repeats,
        List<AllowanceRule> rules,
        Optional<Integer> fractionPermille,
        List<ShelfEvent> shelf,
        DayNotes notes)
        implements AllowanceLedgerBuilder.With {
    static final AllowanceLedger EMPTY = new AllowanceLedger(
            Collections.emptySortedMap(),
            Collections.emptySortedMap(),
            List.of(),
            Optional.empty(),
            List.of(),
            DayNotes.EMPTY);

    /** The ledger of a day that is opened. */
    public static AllowanceLedger opened(DaySetup setup) {
        var learned = setup.learned();
        return EMPTY.withRules(learned.rules())
                .withFractionPermille(learned.remembered().fractionPermille());
    }

    /** The allowance of a zone, empty while it goes by the menu. */
    public Optional<Allowance> allowance(int service, String zone) {
        return Optional.ofNullable(allowances.get(DayNotes.key(service, zone)));
    }

    /** The formula of the last visit, where it is planned again. */
    public Optional<RepeatedFormula> repeat(int service) {
        return Optional.ofNullable(repeats.get(service));
    }

    /** The rule for a zone of a menu entry. */
    public Optional<AllowanceRule> rule(String menuId, String zone) {
        return rules.stream()
                .filter(rule -> rule.menuId().equals(menuId) && rule.zone().equals(zone))
                .findFirst();
    }

    /** The same with another rule of a zone. */
    public AllowanceLedger ruled(AllowanceRule rule) {
        var changed = new ArrayList<>(rules);
        changed.removeIf(old -> old.menuId().equals(rule.menuId()) && old.zone().equals(rule.zone()));
        changed.add(rule);
        return withRules(List.copyOf(changed));
    }

    /** The same with one more count or receipt. */
    public AllowanceLedger shelved(ShelfEvent event) {
        var more = new ArrayList<>(shelf);
        more.add(event);
        return withShelf(List.copyOf(more));
    }
}
