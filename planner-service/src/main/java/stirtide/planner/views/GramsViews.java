package stirtide.planner.views;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stirtide.events.plan.Plan;
import stirtide.events.setup.AllowancePolicy;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Menu.MenuZone;
import stirtide.events.setup.UseHistory.AllowanceRule;
import stirtide.events.view.GramsView;
import stirtide.events.view.GramsView.AllowanceCard;
import stirtide.events.view.GramsView.PinCard;
import stirtide.events.view.GramsView.WaitingCard;
import stirtide.events.view.StockCard;
import stirtide.mixing.text.AmountText;
import stirtide.planner.allowance.Allowance;
import stirtide.planner.cost.Money;
import stirtide.planner.day.allowance.AllowanceFraction;
import stirtide.planner.day.allowance.ZoneGrams;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.ServiceState;
import stirtide.planner.day.stock.ShelfEvents;
import stirtide.planner.stock.StockReport;

/** Makes the view of where grams come from and what they cost. */
public final class GramsViews {
    private GramsViews() {}

    /** The view of an opened day. */
    public static GramsView of(Day day) {
        DaySetup setup = day.opened();
        Optional<Integer> byManager = day.ledger().fractionPermille();
        Optional<Integer> bySetup = setup.allowances().flatMap(AllowancePolicy::fixedPermille);
        CostCards costs = new CostCards(day);
        return new GramsView(
                day.revision(),
                setup.salon().currency(),
                byManager.or(() -> bySetup),
                byManager.isPresent() ? "MANAGER" : bySetup.isPresent() ? "SETUP" : "",
                allowances(day),
                day.ledger().rules().stream().map(GramsViews::pin).toList(),
                costs.prices(),
                costs.bowls(),
                costs.mixes(),
                waiting(day),
                shopping(day));
    }

    private static List<AllowanceCard> allowances(Day day) {
        List<AllowanceCard> cards = new ArrayList<>();
        for (ServiceState service : day.services()) {
            if (!service.standing()) continue;
            List<MenuZone> zones = day.menuEntry(service).zones();
            for (int i = service.zonesDone().size(); i < zones.size(); i++)
                cards.add(allowance(day, service, zones.get(i)));
        }
        return cards;
    }

    private static AllowanceCard allowance(Day day, ServiceState service, MenuZone zone) {
        Optional<Allowance> known = day.ledger().allowance(service.service(), zone.zone());
        int planned = ZoneGrams.milligrams(day, service, zone);
        int median = ZoneGrams.medianMilligrams(day, service, zone);
        AllowanceFraction fraction =
                AllowanceFraction.of(day.opened(), day.ledger().fractionPermille(), zone);
        return new AllowanceCard(
                service.service(),
                service.booking().chair(),
                service.booking().clientRef(),
                service.booking().menuId(),
                zone.zone(),
                planned,
                median,
                planned - median,
                known.map(Allowance::visits).orElse(0),
                known.map(Allowance::setAside).orElse(0),
                known.map(one -> one.source().name()).orElse("MENU"),
                fraction.permille(),
                fraction.sentence(),
                known.map(Allowance::sentence)
                        .orElseGet(() ->
                                AmountText.grams(planned) + ": by the menu, nothing is learned of this zone yet"));
    }

    private static PinCard pin(AllowanceRule rule) {
        return new PinCard(
                rule.menuId(),
                rule.zone(),
                rule.pinnedMilligrams(),
                rule.resetOn().map(String::valueOf).orElse(""));
    }

    private static WaitingCard waiting(Day day) {
        int minutes =
                day.plan().map(Plan::totals).map(Plan.PlanTotals::waitMinutes).orElse(0);
        Optional<BigDecimal> price = day.opened().allowances().flatMap(AllowancePolicy::waitingMinutePrice);
        String currency = day.opened().salon().currency();
        BigDecimal minute = price.orElse(BigDecimal.ZERO);
        Money cost = Money.of(minute.multiply(BigDecimal.valueOf(minutes)), currency);
        return new WaitingCard(
                minutes,
                minute,
                cost.amount(),
                minutes + " minutes of waiting by the plan"
                        + (price.isEmpty() ? "; nobody has said what a minute costs" : ", " + cost.shown()));
    }

    private static List<String> shopping(Day day) {
        var ahead = QueueCards.of(day).stream().map(queued -> queued.bowl()).toList();
        return StockReport.of(day.opened(), ahead, ShelfEvents.of(day)).stream()
                .filter(line -> line.packsToBuy() > 0)
                .map(StockCard::sentence)
                .toList();
    }
}
