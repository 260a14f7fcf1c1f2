package stirtide.planner.day.allowance;

import java.util.Optional;
import stirtide.events.command.DayCommand;
import stirtide.events.day.DayEvent;
import stirtide.events.setup.Person;
import stirtide.mixing.text.AmountText;
import stirtide.planner.day.booking.BookingRules;
import stirtide.planner.day.setup.BroughtHistoryRules;
import stirtide.planner.day.state.Bookings;
import stirtide.planner.day.state.CommandContext;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.Decision;
import stirtide.planner.day.stock.ShelfEvents;

/** Pinned and reset allowances, counts and receipts. */
public final class AllowanceRules {
    private static final int HIGHEST_PIN = 2_000_000;
    private static final int MOST_PACKS = 1000;

    private AllowanceRules() {}

    public static Decision pin(Day day, DayCommand.PinAllowance command, CommandContext facts) {
        if (command.milligrams() < 1 || command.milligrams() > HIGHEST_PIN)
            return Decision.refuse(
                    "ALLOWANCE_OUT_OF_RANGE",
                    "An allowance is 1 to " + HIGHEST_PIN + " milligrams, which is " + AmountText.grams(HIGHEST_PIN)
                            + ".");
        return ruled(
                day,
                command.menuId(),
                command.zone(),
                facts,
                new DayEvent.AllowancePinned(command.menuId(), command.zone(), command.milligrams()));
    }

    public static Decision reset(Day day, DayCommand.ResetAllowance command, CommandContext facts) {
        return ruled(
                day,
                command.menuId(),
                command.zone(),
                facts,
                new DayEvent.AllowanceReset(command.menuId(), command.zone()));
    }

    public static Decision fraction(Day day, DayCommand.SetAllowanceFraction command, CommandContext facts) {
        if (command.permille().isPresent()
                && (command.permille().get() < BroughtHistoryRules.LOWEST_FRACTION
                        || command.permille().get() > BroughtHistoryRules.HIGHEST_FRACTION))
            return Decision.refuse(
                    "FRACTION_OUT_OF_RANGE",
                    "Allowances are enough 500 to 995 times in a thousand; without a number the costs say how often.");
        return notManager(day, facts)
                .orElseGet(() -> Decision.accept(new DayEvent.AllowanceFractionSet(command.permille())));
    }

    private static Decision ruled(Day day, String menuId, String zone, CommandContext facts, DayEvent event) {
        var refused = notManager(day, facts);
        if (refused.isPresent()) return refused.get();
        var entry = Bookings.entry(day.opened(), menuId);
        if (entry.isEmpty())
            return Decision.refuse(
                    "MENU_UNKNOWN",
                    "\"" + menuId + "\" is not on the menu. Accepted: "
                            + BookingRules.listed(day.opened().menu().entries().stream()
                                    .map(one -> one.menuId())
                                    .toList())
                            + ".");
        var zones = entry.get().zones().stream().map(one -> one.zone()).toList();
        if (!zones.contains(zone))
            return Decision.refuse(
                    "ZONE_UNKNOWN",
                    "\"" + zone + "\" is no zone of " + menuId + ". Accepted: " + BookingRules.listed(zones) + ".");
        return Decision.accept(event);
    }

    private static Optional<Decision> notManager(Day day, CommandContext facts) {
        var managers = day.opened().salon().people().stream()
                .filter(person -> person.role() == Person.Role.MANAGER)
                .map(Person::personId)
                .toList();
        if (managers.contains(facts.actor())) return Optional.empty();
        return Optional.of(Decision.refuse(
                "MANAGER_ONLY",
                "Allowances are set by a manager. Accepted: "
                        + (managers.isEmpty() ? "nobody on this day" : BookingRules.listed(managers)) + "."));
    }

    public static Decision count(Day day, DayCommand.CountStock command) {
        if (command.milligrams() < 0)
            return Decision.refuse("WEIGHT_NEGATIVE", "What is on the shelf weighs 0 milligrams or more.");
        return known(day, command.productId(), new DayEvent.StockCounted(command.productId(), command.milligrams()));
    }

    public static Decision receive(Day day, DayCommand.ReceiveGoods command) {
        if (command.packs() < 1 || command.packs() > MOST_PACKS)
            return Decision.refuse("PACKS_OUT_OF_RANGE", "1 to " + MOST_PACKS + " packs come in at a time.");
        return known(day, command.productId(), new DayEvent.GoodsReceived(command.productId(), command.packs()));
    }

    private static Decision known(Day day, String productId, DayEvent event) {
        var products = ShelfEvents.packs(day).keySet();
        if (products.contains(productId)) return Decision.accept(event);
        return Decision.refuse(
                "PRODUCT_UNKNOWN",
                "\"" + productId + "\" is no product of this day. Accepted: " + BookingRules.listed(products) + ".");
    }
}
