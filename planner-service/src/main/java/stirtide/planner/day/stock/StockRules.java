package stirtide.planner.day.stock;

import java.util.List;
import stirtide.events.command.DayCommand;
import stirtide.events.day.DayEvent;
import stirtide.planner.day.state.CommandRule;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.Decision;
import stirtide.planner.day.state.Refusal;

/** Counts and receipts of products. */
public final class StockRules {
    /** A rule for each command of this folder. */
    public static final List<CommandRule<?>> RULES = List.of(
            CommandRule.of(DayCommand.CountStock.class, StockRules::count),
            CommandRule.of(DayCommand.ReceiveGoods.class, StockRules::receive));

    private static final int MOST_PACKS = 1000;

    private StockRules() {}

    private static Decision count(Day day, DayCommand.CountStock command) {
        if (command.milligrams() < 0)
            return Decision.refuse("WEIGHT_NEGATIVE", "What is on the shelf weighs 0 milligrams or more.");
        return known(day, command.productId(), new DayEvent.StockCounted(command.productId(), command.milligrams()));
    }

    private static Decision receive(Day day, DayCommand.ReceiveGoods command) {
        if (command.packs() < 1 || command.packs() > MOST_PACKS)
            return Decision.refuse("PACKS_OUT_OF_RANGE", "1 to " + MOST_PACKS + " packs come in at a time.");
        return known(day, command.productId(), new DayEvent.GoodsReceived(command.productId(), command.packs()));
    }

    private static Decision known(Day day, String productId, DayEvent event) {
        var products = ShelfEvents.packs(day).keySet();
        if (products.contains(productId)) return Decision.accept(event);
        return Decision.refuse(
                "PRODUCT_UNKNOWN",
                "\"" + productId + "\" is no product of this day. Accepted: " + Refusal.listed(products) + ".");
    }
}
