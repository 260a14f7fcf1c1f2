package stirtide.planner.day.allowance;

import java.util.Optional;
import stirtide.events.day.Booking;
import stirtide.events.setup.AllowancePolicy;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Menu.MenuZone;
import stirtide.events.setup.UseHistory.AllowanceRule;
import stirtide.events.setup.UseHistory.PastUse;
import stirtide.planner.allowance.Allowance;
import stirtide.planner.allowance.AllowanceSettings;
import stirtide.planner.allowance.Allowances;
import stirtide.planner.allowance.UsedGrams;
import stirtide.planner.allowance.ZoneAsked;
import stirtide.planner.day.state.AllowanceLedger;
import stirtide.planner.visits.LastVisit;
import stirtide.planner.visits.RepeatedFormula;

/** Allowances from what a day was opened with. A zone nobody has used or pinned yet goes by the menu. */
public final class LearnedAllowances {
    private LearnedAllowances() {}

    /**
     * The allowance of one zone of a booking, empty when there is nothing to learn it from. A pin comes first, then what
     * the last visit used where its formula is planned again, then what was learned.
     */
    public static Optional<Allowance> of(
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
        var repeat =
                booking.asLastTime().orElse(false) ? LastVisit.of(setup, booking) : Optional.<RepeatedFormula>empty();
        return of(setup, AllowanceLedger.opened(setup), booking, zone, repeat);
    }

    private static Optional<Allowance> learned(DaySetup setup, AllowanceLedger ledger, Booking booking, MenuZone zone) {
        var rule = ledger.rules().stream()
                .filter(one ->
                        one.menuId().equals(booking.menuId()) && one.zone().equals(zone.zone()))
                .findFirst();
        var reset = rule.flatMap(AllowanceRule::resetOn);
        var uses = setup.learned().uses().stream()
                .filter(use ->
                        use.menuId().equals(booking.menuId()) && use.zone().equals(zone.zone()))
                .filter(use -> use.on().isBefore(setup.date()))
                .filter(use -> reset.isEmpty() || !use.on().isBefore(reset.get()))
                .map(LearnedAllowances::used)
                .toList();
        var pinned = rule.flatMap(AllowanceRule::pinnedMilligrams);
        if (uses.stream().allMatch(UsedGrams::spilled) && pinned.isEmpty()) return Optional.empty();
        var asked = new ZoneAsked(
                zone.zone(),
                setup.date(),
                booking.clientRef(),
                zone.baseMilligrams(),
                lengthPermille(setup, booking),
                densityPermille(setup, booking),
                pinned,
                reset);
        return Optional.of(Allowances.of(asked, uses, settings(setup, ledger, zone)));
    }

    private static AllowanceSettings settings(DaySetup setup, AllowanceLedger ledger, MenuZone zone) {
        var usual = AllowanceSettings.usual();
        return new AllowanceSettings(
                AllowanceFraction.of(setup, ledger.fractionPermille(), zone).permille(),
                usual.priorVisits(),
                usual.priorFreedom(),
                usual.priorSpreadPermille(),
                usual.clientSharePermille(),
                setup.allowances().map(AllowancePolicy::halfLifeDays).orElse(usual.halfLifeDays()));
    }

    public static int lengthPermille(DaySetup setup, Booking booking) {
        return setup.menu().lengthPermille().getOrDefault(booking.length(), 1000);
    }

    public static int densityPermille(DaySetup setup, Booking booking) {
        return setup.menu().densityPermille().getOrDefault(booking.density(), 1000);
    }

    private static UsedGrams used(PastUse use) {
        return new UsedGrams(
                use.on(),
                use.clientRef(),
                use.baseMilligrams(),
                use.lengthPermille(),
                use.densityPermille(),
                use.usedMilligrams(),
                use.spilled());
    }
}
