package stirtide.planner.day;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.UseHistory;
import stirtide.events.setup.UseHistory.AllowanceRule;
import stirtide.planner.allowance.Allowance;
import stirtide.planner.stock.ShelfEvent;

/**
 * What a day knows of grams besides its bowls: allowances that were learned or pinned, the rules managers have set, and
 * what happened to the shelf. Immutable.
 *
 * @param allowances by service and zone; a zone without one goes by the menu
 * @param rules rules in force
 * @param shelf counts and receipts of the day, in order
 */
public record Ledger(SortedMap<String, Allowance> allowances, List<AllowanceRule> rules, List<ShelfEvent> shelf) {
    static final Ledger EMPTY = new Ledger(Collections.emptySortedMap(), List.of(), List.of());

    /** The allowance of a zone, empty while it goes by the menu. */
    public Optional<Allowance> allowance(int service, String zone) {
        return Optional.ofNullable(allowances.get(key(service, zone)));
    }

    private static String key(int service, String zone) {
        return service + "/" + zone;
    }

    static Ledger opened(DaySetup setup) {
        return new Ledger(
                Collections.emptySortedMap(),
                setup.history().orElse(UseHistory.NONE).rules(),
                List.of());
    }

    /** Works out the allowances of a service anew. */
    Ledger learned(DaySetup setup, ServiceState service) {
        var changed = new TreeMap<>(allowances);
        for (var zone :
                Bookings.entry(setup, service.booking().menuId()).orElseThrow().zones()) {
            changed.remove(key(service.service(), zone.zone()));
            LearnedGrams.of(setup, rules, service.booking(), zone)
                    .ifPresent(learned -> changed.put(key(service.service(), zone.zone()), learned));
        }
        return new Ledger(Collections.unmodifiableSortedMap(changed), rules, shelf);
    }

    /** Replaces the rule of a zone. */
    Ledger ruled(AllowanceRule rule) {
        var changed = new ArrayList<>(rules);
        changed.removeIf(old -> old.menuId().equals(rule.menuId()) && old.zone().equals(rule.zone()));
        changed.add(rule);
        return new Ledger(allowances, List.copyOf(changed), shelf);
    }

    Ledger shelved(ShelfEvent event) {
        var more = new ArrayList<>(shelf);
        more.add(event);
        return new Ledger(allowances, rules, List.copyOf(more));
    }
}
