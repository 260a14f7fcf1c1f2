package stirtide.planner.day;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.UseHistory.AllowanceRule;
import stirtide.planner.allowance.Allowance;
import stirtide.planner.memory.LastTime;
import stirtide.planner.memory.Repeat;
import stirtide.planner.stock.ShelfEvent;

/**
 * What a day knows of grams besides its bowls: allowances that were learned or pinned, formulas that are repeated, the
 * rules managers have set, what happened to the shelf, and what was written down. Immutable.
 *
 * @param allowances by service and zone; a zone without one goes by the menu
 * @param repeats formulas of the last visit, by service, where they were asked for
 * @param rules rules in force
 * @param fractionPermille how often in a thousand allowances are to be enough, if a manager has set it
 * @param shelf counts and receipts of the day, in order
 * @param notebook levels, swatches and strips of the day
 */
public record Ledger(
        SortedMap<String, Allowance> allowances,
        SortedMap<Integer, Repeat> repeats,
        List<AllowanceRule> rules,
        Optional<Integer> fractionPermille,
        List<ShelfEvent> shelf,
        Notebook notebook) {
    static final Ledger EMPTY = new Ledger(
            Collections.emptySortedMap(),
            Collections.emptySortedMap(),
            List.of(),
            Optional.empty(),
            List.of(),
            Notebook.EMPTY);

    /** The allowance of a zone, empty while it goes by the menu. */
    public Optional<Allowance> allowance(int service, String zone) {
        return Optional.ofNullable(allowances.get(key(service, zone)));
    }

    /** The formula of the last visit, where it is planned again. */
    public Optional<Repeat> repeat(int service) {
        return Optional.ofNullable(repeats.get(service));
    }

    static String key(int service, String zone) {
        return service + "/" + zone;
    }

    static Ledger opened(DaySetup setup) {
        return EMPTY.with(setup.learned().rules())
                .fraction(setup.learned().remembered().fractionPermille());
    }

    /** Works out the allowances and the repeated formula of a service anew. */
    Ledger learned(DaySetup setup, ServiceState service) {
        var changed = new TreeMap<>(allowances);
        var repeated = new TreeMap<>(repeats);
        int number = service.service();
        // a bowl that was begun belongs to a run of the formula it was begun for: that one stays
        if (service.bowls().isEmpty()) {
            repeated.remove(number);
            if (service.booking().asLastTime().orElse(false))
                LastTime.of(setup, service.booking()).ifPresent(repeat -> repeated.put(number, repeat));
        }
        for (var zone :
                Bookings.entry(setup, service.booking().menuId()).orElseThrow().zones()) {
            changed.remove(key(number, zone.zone()));
            var again = Optional.ofNullable(repeated.get(number));
            LearnedGrams.of(setup, this, service.booking(), zone, again)
                    .ifPresent(learned -> changed.put(key(number, zone.zone()), learned));
        }
        return new Ledger(
                Collections.unmodifiableSortedMap(changed),
                Collections.unmodifiableSortedMap(repeated),
                rules,
                fractionPermille,
                shelf,
                notebook);
    }

    /** Replaces the rule of a zone. */
    Ledger ruled(AllowanceRule rule) {
        var changed = new ArrayList<>(rules);
        changed.removeIf(old -> old.menuId().equals(rule.menuId()) && old.zone().equals(rule.zone()));
        changed.add(rule);
        return with(changed);
    }

    private Ledger with(List<AllowanceRule> changed) {
        return new Ledger(allowances, repeats, List.copyOf(changed), fractionPermille, shelf, notebook);
    }

    Ledger fraction(Optional<Integer> permille) {
        return new Ledger(allowances, repeats, rules, permille, shelf, notebook);
    }

    Ledger shelved(ShelfEvent event) {
        var more = new ArrayList<>(shelf);
        more.add(event);
        return new Ledger(allowances, repeats, rules, fractionPermille, List.copyOf(more), notebook);
    }

    Ledger with(Notebook changed) {
        return new Ledger(allowances, repeats, rules, fractionPermille, shelf, changed);
    }
}
