package stirtide.planner.day.allowance;

import java.util.List;
import java.util.Optional;
import stirtide.events.command.DayCommand;
import stirtide.events.day.DayEvent;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Menu.MenuEntry;
import stirtide.events.setup.Menu.MenuZone;
import stirtide.events.setup.Person;
import stirtide.mixing.text.AmountText;
import stirtide.planner.allowance.AllowanceSettings;
import stirtide.planner.day.state.CommandContext;
import stirtide.planner.day.state.CommandRule;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.Decision;
import stirtide.planner.day.state.Refusal;

/** Allowances that a manager pins or resets, and how often they are to be enough. */
public final class AllowanceRules {
    /** A rule for each command of this folder. */
    public static final List<CommandRule<?>> RULES = List.of(
            CommandRule.of(DayCommand.PinAllowance.class, AllowanceRules::pin),
            CommandRule.of(DayCommand.ResetAllowance.class, AllowanceRules::reset),
            CommandRule.of(DayCommand.SetAllowanceFraction.class, AllowanceRules::fraction));

    private static final int HIGHEST_PIN = 2_000_000;

    private AllowanceRules() {}

    private static Decision pin(Day day, DayCommand.PinAllowance command, CommandContext context) {
        if (command.milligrams() < 1 || command.milligrams() > HIGHEST_PIN)
            return Decision.refuse(
                    "ALLOWANCE_OUT_OF_RANGE",
                    "An allowance is 1 to " + HIGHEST_PIN + " milligrams, which is " + AmountText.grams(HIGHEST_PIN)
                            + ".");
        return ruled(
                day,
                command.menuId(),
                command.zone(),
                context,
                new DayEvent.AllowancePinned(command.menuId(), command.zone(), command.milligrams()));
    }

    private static Decision reset(Day day, DayCommand.ResetAllowance command, CommandContext context) {
        return ruled(
                day,
                command.menuId(),
                command.zone(),
                context,
                new DayEvent.AllowanceReset(command.menuId(), command.zone()));
    }

    private static Decision fraction(Day day, DayCommand.SetAllowanceFraction command, CommandContext context) {
        if (command.permille().isPresent()
                && (command.permille().get() < AllowanceSettings.LOWEST_FRACTION_PERMILLE
                        || command.permille().get() > AllowanceSettings.HIGHEST_FRACTION_PERMILLE))
            return Decision.refuse(
                    "FRACTION_OUT_OF_RANGE",
                    "Allowances are enough 500 to 995 times in a thousand; without a number the costs say how often.");
        return Decision.acceptUnless(
                notManager(day, context), () -> new DayEvent.AllowanceFractionSet(command.permille()));
    }

    private static Decision ruled(Day day, String menuId, String zone, CommandContext context, DayEvent event) {
        return Decision.acceptUnless(
                notManager(day, context).or(() -> unknown(day.opened(), menuId, zone)), () -> event);
    }

    private static Optional<Refusal> unknown(DaySetup setup, String menuId, String zone) {
        var entry = setup.menuEntry(menuId);
        if (entry.isEmpty())
            return Refusal.of(
                    "MENU_UNKNOWN",
                    "\"" + menuId + "\" is not on the menu. Accepted: "
                            + Refusal.listed(setup.menu().entries().stream()
                                    .map(MenuEntry::menuId)
                                    .toList())
                            + ".");
        var zones = entry.get().zones().stream().map(MenuZone::zone).toList();
        if (zones.contains(zone)) return Optional.empty();
        return Refusal.of(
                "ZONE_UNKNOWN",
                "\"" + zone + "\" is no zone of " + menuId + ". Accepted: " + Refusal.listed(zones) + ".");
    }

    private static Optional<Refusal> notManager(Day day, CommandContext context) {
        var managers = day.opened().salon().people().stream()
                .filter(person -> person.role() == Person.Role.MANAGER)
                .map(Person::personId)
                .toList();
        if (managers.contains(context.actor())) return Optional.empty();
        return Refusal.of(
                "MANAGER_ONLY",
                "Allowances are set by a manager. Accepted: "
                        + (managers.isEmpty() ? "no person on this day" : Refusal.listed(managers)) + ".");
    }
}
