package stirtide.planner.day.allowance;

import java.time.LocalDate;
import java.util.Optional;
import stirtide.events.day.DayEvent;
import stirtide.events.day.StoredEvent;
import stirtide.events.setup.UseHistory.AllowanceRule;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.DayNotes;
import stirtide.planner.day.stock.ShelfEvents;
import stirtide.planner.stock.ShelfEvent;

/** What events change in the ledger of a day. */
public final class AllowanceEvents {
    private AllowanceEvents() {}

    /** A rule changes the allowances of services that have not begun; what is being applied stays as planned. */
    private static Day rule(Day day, String menuId, String zone, Optional<Integer> pinned, Optional<LocalDate> reset) {
        var next = day.with(day.ledger().ruled(new AllowanceRule(menuId, zone, pinned, reset)));
        for (var service : day.services())
            if (service.startedAt().isEmpty() && service.booking().menuId().equals(menuId))
                next = next.learned(service);
        return next;
    }

    private static Optional<LocalDate> resetOn(Day day, String menuId, String zone) {
        return day.ledger().rules().stream()
                .filter(rule -> rule.menuId().equals(menuId) && rule.zone().equals(zone))
                .findFirst()
                .flatMap(AllowanceRule::resetOn);
    }

    public static Optional<Day> apply(Day day, StoredEvent stored) {
        var event = stored.event();
        if (event instanceof DayEvent.AllowancePinned e)
            return Optional.of(
                    rule(day, e.menuId(), e.zone(), Optional.of(e.milligrams()), resetOn(day, e.menuId(), e.zone())));
        if (event instanceof DayEvent.AllowanceReset e)
            return Optional.of(rule(
                    day,
                    e.menuId(),
                    e.zone(),
                    Optional.empty(),
                    Optional.of(day.opened().date())));
        if (event instanceof DayEvent.StockCounted e)
            return Optional.of(day.with(
                    day.ledger().shelved(new ShelfEvent.Counted(e.productId(), stored.time(), e.milligrams()))));
        if (event instanceof DayEvent.GoodsReceived e)
            return Optional.of(day.with(day.ledger()
                    .shelved(new ShelfEvent.Received(
                            e.productId(),
                            stored.time(),
                            e.packs(),
                            ShelfEvents.packs(day).getOrDefault(e.productId(), 0)))));
        if (event instanceof DayEvent.AllowanceFractionSet e)
            return Optional.of(learnedAnew(day.with(day.ledger().fraction(e.permille()))));
        return written(day, event).map(notebook -> day.with(day.ledger().with(notebook)));
    }

    private static Optional<DayNotes> written(Day day, DayEvent event) {
        var notebook = day.ledger().notebook();
        if (event instanceof DayEvent.LevelsRecorded e)
            return Optional.of(notebook.leveled(e.service(), e.zone(), e.levelBeforeTenths(), e.levelAfterTenths()));
        if (event instanceof DayEvent.SwatchRecorded e) return Optional.of(notebook.plus(e.swatch()));
        if (event instanceof DayEvent.StripRecorded e) return Optional.of(notebook.plus(e.strip()));
        return Optional.empty();
    }

    private static Day learnedAnew(Day day) {
        var next = day;
        for (var service : day.services()) if (service.startedAt().isEmpty()) next = next.learned(service);
        return next;
    }
}
