package stirtide.planner.views;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stirtide.events.plan.PlannedService.PlannedZone;
import stirtide.events.setup.Directions;
import stirtide.events.setup.Menu.MenuZone;
import stirtide.events.view.DayView.LiveBowl;
import stirtide.events.view.DoneBowl;
import stirtide.planner.cost.Money;
import stirtide.planner.cost.ProductPrices;
import stirtide.planner.day.booking.FormulaRun;
import stirtide.planner.day.setup.People;
import stirtide.planner.day.state.BowlState;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.ServiceState;

/** Cards of bowls in use and of bowls that are done. */
final class BowlCards {
    private BowlCards() {}

    static List<LiveBowl> live(Day day) {
        return day.liveBowls()
                .sorted(Comparator.comparing(BowlState::begunAt))
                .map(bowl -> live(day, bowl))
                .toList();
    }

    private static LiveBowl live(Day day, BowlState bowl) {
        var service = day.service(bowl.service()).orElseThrow();
        var zones = zones(day, service, bowl);
        return new LiveBowl(
                bowl.bowl(),
                bowl.service(),
                service.booking().chair(),
                service.booking().clientRef(),
                zones,
                bowl.stage().name(),
                bowl.begunAt(),
                bowl.lifeEnds(),
                lifeMinutes(day, bowl),
                neededUntil(day, bowl, zones),
                MixCards.planned(day, bowl.planned(), bowl.bowlSizeId(), bowl.scaleId()),
                bowl.weighed().map(MixCards::weighed),
                People.name(day, bowl.personId()),
                BatchCards.of(day, bowl));
    }

    /** Zones of the bowl's run that are still to be applied; all of them once none is. */
    private static List<String> zones(Day day, ServiceState service, BowlState bowl) {
        var run = FormulaRun.of(day.menuEntry(service)).get(bowl.run() - 1);
        var all = run.zones().stream().map(MenuZone::zone).toList();
        int done = Math.max(0, service.zonesDone().size() - run.firstZone());
        return done >= all.size() ? all : all.subList(done, all.size());
    }

    private static int lifeMinutes(Day day, BowlState bowl) {
        return day.opened()
                .directions(bowl.planned().lightenerId())
                .map(Directions::workingLifeMinutes)
                .orElse(0);
    }

    /** Last application of its zones by the plan on show, but never later than the bowl lives. */
    private static Optional<Instant> neededUntil(Day day, BowlState bowl, List<String> zones) {
        return day.plan().stream()
                .flatMap(plan -> plan.services().stream())
                .filter(service -> service.service() == bowl.service())
                .flatMap(service -> service.zones().stream())
                .filter(zone -> zones.contains(zone.zone()))
                .map(PlannedZone::applyEnd)
                .max(Comparator.naturalOrder())
                .map(end -> end.isBefore(bowl.lifeEnds()) ? end : bowl.lifeEnds());
    }

    static List<DoneBowl> done(Day day) {
        return day.bowls()
                .filter(bowl -> !bowl.live())
                .map(bowl -> done(day, bowl))
                .sorted(Comparator.comparing(DoneBowl::at).reversed().thenComparing(DoneBowl::service))
                .toList();
    }

    private static DoneBowl done(Day day, BowlState bowl) {
        var end = bowl.closed().orElseThrow();
        var booking = day.service(bowl.service()).orElseThrow().booking();
        return new DoneBowl(
                bowl.bowl(),
                bowl.service(),
                booking.chair(),
                end.at(),
                bowl.mixedMilligrams(),
                end.leftMilligrams(),
                end.cause().map(Enum::name).orElse(""),
                ProductNames.lightener(day, bowl.planned().lightenerId()),
                booking.stylistId().map(id -> People.name(day, id)).orElse(""),
                plannedCost(day, bowl, end.leftMilligrams()));
    }

    /** Cost of what is left, by the weights that were planned. */
    private static BigDecimal plannedCost(Day day, BowlState bowl, int milligrams) {
        Money cost = new ProductPrices(day.opened()).ofMix(bowl.planned(), milligrams);
        int digits = Math.max(0, cost.currency().getDefaultFractionDigits());
        return cost.amount().setScale(digits, RoundingMode.HALF_UP);
    }
}
