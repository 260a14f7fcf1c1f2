package stirtide.planner.day.allowance;

import java.util.Collections;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import stirtide.events.day.Booking;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Menu.MenuZone;
import stirtide.events.setup.UseHistory.AllowanceRule;
import stirtide.events.setup.UseHistory.PastUse;
import stirtide.planner.allowance.Allowance;
import stirtide.planner.allowance.AllowanceSettings;
import stirtide.planner.allowance.Allowances;
import stirtide.planner.allowance.ZoneAsked;
import stirtide.planner.day.state.AllowanceLedger;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.DayNotes;
import stirtide.planner.day.state.ServiceState;
import stirtide.planner.visits.LastVisit;
import stirtide.planner.visits.RepeatedFormula;

/** Allowances from what a day was opened with. A zone that was neither used nor pinned yet goes by the menu. */
public final class LearnedAllowances {
    private LearnedAllowances() {}

    /** The day with the allowances and the repeated formula of a service worked out anew. */
    public static Day learn(Day day, ServiceState service) {
        return day.withLedger(learned(day.opened(), day.ledger(), service));
    }

    /** The same for all services that have not begun. */
    public static Day learnUnstarted(Day day) {
        return learnUnstarted(day, service -> true);
    }

    /** The same for those of them that match. */
    static Day learnUnstarted(Day day, Predicate<ServiceState> which) {
        var next = day;
        for (var service : day.services())
            if (service.startedAt().isEmpty() && which.test(service)) next = learn(next, service);
        return next;
    }

    private static AllowanceLedger learned(DaySetup setup, AllowanceLedger ledger, ServiceState service) {
        var allowances = new TreeMap<>(ledger.allowances());
        var repeats = new TreeMap<>(ledger.repeats());
        int number = service.service();
        // a bowl that was begun belongs to a run of the formula it was begun for: that one stays
        if (service.bowls().isEmpty()) {
            repeats.remove(number);
            repeat(setup, service.booking()).ifPresent(repeat -> repeats.put(number, repeat));
        }
        var again = Optional.ofNullable(repeats.get(number));
        for (var zone :
                setup.menuEntry(service.booking().menuId()).orElseThrow().zones()) {
            var key = DayNotes.key(number, zone.zone());
            allowances.remove(key);
            of(setup, ledger, service.booking(), zone, again).ifPresent(learned -> allowances.put(key, learned));
        }
        return ledger.withAllowances(Collections.unmodifiableSortedMap(allowances))
                .withRepeats(Collections.unmodifiableSortedMap(repeats));
    }

    /**
     * The allowance of one zone of a booking, empty when there is nothing to learn it from. A pin comes first, then what
     * the last visit used where its formula is planned again, then what was learned.
     */
    private static Optional<Allowance> of(
            DaySetup setup, AllowanceLedger ledger, Booking booking, MenuZone zone, Optional<RepeatedFormula> repeat) {
        var learned = learned(setup, ledger, booking, zone);
        if (learned.filter(one -> one.source() == Allowance.Source.PINNED).isPresent()) return learned;
        return repeat.flatMap(one -> one.zone(zone.zone())
                        .filter(last -> last.usedMilligrams() > 0)
                        .map(last -> Allowances.asLastTime(one.visit().on(), last.usedMilligrams(), learned)))
                .or(() -> learned);
    }

    /** The allowance of one zone of a booking on a day that has just been opened. */
    public static Optional<Allowance> of(DaySetup setup, Booking booking, MenuZone zone) {
        return of(setup, AllowanceLedger.opened(setup), booking, zone, repeat(setup, booking));
    }

    private static Optional<RepeatedFormula> repeat(DaySetup setup, Booking booking) {
        return booking.asLastTime().orElse(false) ? LastVisit.of(setup, booking) : Optional.empty();
    }

    private static Optional<Allowance> learned(DaySetup setup, AllowanceLedger ledger, Booking booking, MenuZone zone) {
        var rule = ledger.rule(booking.menuId(), zone.zone());
        var reset = rule.flatMap(AllowanceRule::resetOn);
        var uses = setup.learned().uses().stream()
                .filter(use ->
                        use.menuId().equals(booking.menuId()) && use.zone().equals(zone.zone()))
                .filter(use -> use.on().isBefore(setup.date()))
                .filter(use -> reset.isEmpty() || !use.on().isBefore(reset.get()))
                .toList();
        var pinned = rule.flatMap(AllowanceRule::pinnedMilligrams);
        if (uses.stream().allMatch(PastUse::spilled) && pinned.isEmpty()) return Optional.empty();
        var asked = new ZoneAsked(
                zone.zone(),
                setup.date(),
                booking.clientRef(),
                zone.baseMilligrams(),
                setup.menu().lengthPermille(booking.length()),
                setup.menu().densityPermille(booking.density()),
                pinned,
                reset);
        return Optional.of(Allowances.of(asked, uses, settings(setup, ledger, zone)));
    }

    private static AllowanceSettings settings(DaySetup setup, AllowanceLedger ledger, MenuZone zone) {
        var settings = AllowanceSettings.usual()
                .withFractionPermille(AllowanceFraction.of(setup, ledger.fractionPermille(), zone)
                        .permille());
        return setup.allowances()
                .map(policy -> settings.withHalfLifeDays(policy.halfLifeDays()))
                .orElse(settings);
    }
}
