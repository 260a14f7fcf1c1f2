package stirtide.planner.day.state;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.UseHistory.AllowanceRule;
import stirtide.planner.allowance.Allowance;
import stirtide.planner.day.allowance.LearnedAllowances;
import stirtide.planner.stock.ShelfEvent;
import stirtide.planner.visits.LastVisit;
import stirtide.planner.visits.RepeatedFormula;

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
public record AllowanceLedger(
        SortedMap<String, Allowance> allowances,
        SortedMap<Integer, RepeatedFormula> repeats,
        List<AllowanceRule> rules,
        Optional<Integer> fractionPermille,
        List<ShelfEvent> shelf,
        DayNotes notebook) {
    static final AllowanceLedger EMPTY = new AllowanceLedger(
            Collections.emptySortedMap(),
            Collections.emptySortedMap(),
            List.of(),
            Optional.empty(),
            List.of(),
            DayNotes.EMPTY);

    /** The allowance of a zone, empty while it goes by the menu. */
    public Optional<Allowance> allowance(int service, String zone) {
        return Optional.ofNullable(allowances.get(key(service, zone)));
    }

    /** The formula of the last visit, where it is planned again. */
    public Optional<RepeatedFormula> repeat(int service) {
        return Optional.ofNullable(repeats.get(service));
    }

    static String key(int service, String zone) {
        return service + "/" + zone;
    }

    public static AllowanceLedger opened(DaySetup setup) {
        return EMPTY.with(setup.learned().rules())
                .fraction(setup.learned().remembered().fractionPermille());
    }

    /** Works out the allowances and the repeated formula of a service anew. */
    AllowanceLedger learned(DaySetup setup, ServiceState service) {
        var changed = new TreeMap<>(allowances);
        var repeated = new TreeMap<>(repeats);
        int number = service.service();
        // a bowl that was begun belongs to a run of the formula it was begun for: that one stays
        if (service.bowls().isEmpty()) {
            repeated.remove(number);
            if (service.booking().asLastTime().orElse(false))
                LastVisit.of(setup, service.booking()).ifPresent(repeat -> repeated.put(number, repeat));
        }
        for (var zone :
                Bookings.entry(setup, service.booking().menuId()).orElseThrow().zones()) {
            changed.remove(key(number, zone.zone()));
            var again = Optional.ofNullable(repeated.get(number));
            LearnedAllowances.of(setup, this, service.booking(), zone, again)
                    .ifPresent(learned -> changed.put(key(number, zone.zone()), learned));
        }
        return new AllowanceLedger(
                Collections.unmodifiableSortedMap(changed),
                Collections.unmodifiableSortedMap(repeated),
                rules,
                fractionPermille,
                shelf,
                notebook);
    }

    /** Replaces the rule of a zone. */
    public AllowanceLedger ruled(AllowanceRule rule) {
        var changed = new ArrayList<>(rules);
        changed.removeIf(old -> old.menuId().equals(rule.menuId()) && old.zone().equals(rule.zone()));
        changed.add(rule);
        return with(changed);
    }

    private AllowanceLedger with(List<AllowanceRule> changed) {
        return new AllowanceLedger(allowances, repeats, List.copyOf(changed), fractionPermille, shelf, notebook);
    }

    public AllowanceLedger fraction(Optional<Integer> permille) {
        return new AllowanceLedger(allowances, repeats, rules, permille, shelf, notebook);
    }

    public AllowanceLedger shelved(ShelfEvent event) {
        var more = new ArrayList<>(shelf);
        more.add(event);
        return new AllowanceLedger(allowances, repeats, rules, fractionPermille, List.copyOf(more), notebook);
    }

    public AllowanceLedger with(DayNotes changed) {
        return new AllowanceLedger(allowances, repeats, rules, fractionPermille, shelf, changed);
    }
}
