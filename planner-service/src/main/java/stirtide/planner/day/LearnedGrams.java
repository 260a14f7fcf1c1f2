package stirtide.planner.day;

import java.util.List;
import java.util.Optional;
import stirtide.events.day.Booking;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Menu.MenuZone;
import stirtide.events.setup.UseHistory;
import stirtide.events.setup.UseHistory.AllowanceRule;
import stirtide.events.setup.UseHistory.PastUse;
import stirtide.planner.allowance.Allowance;
import stirtide.planner.allowance.AllowanceSettings;
import stirtide.planner.allowance.Allowances;
import stirtide.planner.allowance.UsedGrams;
import stirtide.planner.allowance.ZoneAsked;

/** Allowances from what a day was opened with. A zone nobody has used or pinned yet goes by the menu. */
public final class LearnedGrams {
    private LearnedGrams() {}

    /** The allowance of one zone of a booking, empty when there is nothing to learn it from. */
    public static Optional<Allowance> of(DaySetup setup, List<AllowanceRule> rules, Booking booking, MenuZone zone) {
        var rule = rules.stream()
                .filter(one ->
                        one.menuId().equals(booking.menuId()) && one.zone().equals(zone.zone()))
                .findFirst();
        var reset = rule.flatMap(AllowanceRule::resetOn);
        var uses = setup.history().orElse(UseHistory.NONE).uses().stream()
                .filter(use ->
                        use.menuId().equals(booking.menuId()) && use.zone().equals(zone.zone()))
                .filter(use -> use.on().isBefore(setup.date()))
                .filter(use -> reset.isEmpty() || !use.on().isBefore(reset.get()))
                .map(LearnedGrams::used)
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
        return Optional.of(Allowances.of(asked, uses, AllowanceSettings.usual()));
    }

    static int lengthPermille(DaySetup setup, Booking booking) {
        return setup.menu().lengthPermille().getOrDefault(booking.length(), 1000);
    }

    static int densityPermille(DaySetup setup, Booking booking) {
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
