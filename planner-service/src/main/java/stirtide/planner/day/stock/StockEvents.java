package stirtide.planner.day.stock;

import static stirtide.planner.day.state.EventRule.PlanRelevance.REPLAN;
import static stirtide.planner.day.state.Recheck.byCommand;

import java.util.List;
import stirtide.events.command.DayCommand;
import stirtide.events.day.DayEvent.GoodsReceived;
import stirtide.events.day.DayEvent.StockCounted;
import stirtide.planner.day.state.EventRule;
import stirtide.planner.stock.ShelfEvent;

/** Counts and receipts of products. */
public final class StockEvents {
    /** A rule for each event of this folder. */
    public static final List<EventRule<?>> RULES = List.of(
            new EventRule<StockCounted>(
                    StockCounted.class,
                    REPLAN,
                    (day, e, stored) -> day.withLedger(
                            day.ledger().shelved(new ShelfEvent.Counted(e.productId(), stored.time(), e.milligrams()))),
                    e -> "counted " + e.productId(),
                    byCommand(e -> new DayCommand.CountStock(e.productId(), e.milligrams()))),
            new EventRule<GoodsReceived>(
                    GoodsReceived.class,
                    REPLAN,
                    (day, e, stored) -> day.withLedger(day.ledger()
                            .shelved(new ShelfEvent.Received(
                                    e.productId(),
                                    stored.time(),
                                    e.packs(),
                                    ShelfEvents.packs(day).getOrDefault(e.productId(), 0)))),
                    e -> "took in packs of " + e.productId(),
                    byCommand(e -> new DayCommand.ReceiveGoods(e.productId(), e.packs()))));

    private StockEvents() {}
}
