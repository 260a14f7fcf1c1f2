package stirtide.planner.views;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stirtide.events.formula.BowlFormula;
import stirtide.events.plan.PlannedService.PlannedZone;
import stirtide.events.setup.BowlSize;
import stirtide.events.setup.Directions;
import stirtide.events.setup.Menu.MenuZone;
import stirtide.events.view.DayView.DoneBowl;
import stirtide.events.view.DayView.LiveBowl;
import stirtide.events.view.DayView.PartCard;
import stirtide.events.view.DayView.PlannedBowlCard;
import stirtide.events.view.DayView.WeighedCard;
import stirtide.planner.cost.Money;
import stirtide.planner.cost.ProductPrices;
import stirtide.planner.day.booking.FormulaRun;
import stirtide.planner.day.setup.People;
import stirtide.planner.day.state.Bookings;
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
                planned(day, bowl.planned(), bowl.bowlSizeId(), bowl.scaleId()),
                bowl.weighed().map(BowlCards::weighed),
                People.name(day, bowl.personId()),
                BatchCards.of(day, bowl));
    }

    /** Zones of the bowl's run that are still to be applied; all of them once none is. */
    private static List<String> zones(Day day, ServiceState service, BowlState bowl) {
        var run = FormulaRun.of(Bookings.entry(day, service)).get(bowl.run() - 1);
        var all = run.zones().stream().map(MenuZone::zone).toList();
        int done = Math.max(0, service.zonesDone().size() - run.firstZone());
        return done >= all.size() ? all : all.subList(done, all.size());
    }

    private static int lifeMinutes(Day day, BowlState bowl) {
        return day.opened().directions().stream()
                .filter(one -> one.lightenerId().equals(bowl.planned().lightenerId()))
                .mapToInt(Directions::workingLifeMinutes)
                .findFirst()
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

    static PlannedBowlCard planned(Day day, BowlFormula formula, String bowlSizeId, String scaleId) {
        return new PlannedBowlCard(
                ProductNames.lightener(day, formula.lightenerId()),
                formula.lightenerMilligrams(),
                formula.developerParts().stream()
                        .map(part -> new PartCard(
                                part.developerId(),
                                ProductNames.liquid(day, part.developerId()),
                                ProductNames.strength(day, part.developerId()),
                                part.milligrams()))
                        .toList(),
                formula.strengthHundredths(),
                formula.wantedRatioThousandths(),
                formula.lowestRatioThousandths(),
                formula.highestRatioThousandths(),
                day.opened().salon().bowls().stream()
                        .filter(size -> size.bowlSizeId().equals(bowlSizeId))
                        .mapToInt(BowlSize::usableMilligrams)
                        .findFirst()
                        .orElse(0),
                scaleId);
    }

    static WeighedCard weighed(BowlState.Weighed weighed) {
        return new WeighedCard(
                weighed.lightenerMilligrams(),
                weighed.developerMilligrams(),
                weighed.ratioThousandths(),
                weighed.insideDirections());
    }

    static List<DoneBowl> done(Day day) {
        return day.services().stream()
                .flatMap(service -> service.bowls().stream())
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
                leftCost(day, bowl, end.leftMilligrams()));
    }

    private static BigDecimal leftCost(Day day, BowlState bowl, int milligrams) {
        Money cost = new ProductPrices(day.opened()).ofMix(bowl.planned(), milligrams);
        int digits = Math.max(0, cost.currency().getDefaultFractionDigits());
        return cost.amount().setScale(digits, RoundingMode.HALF_UP);
    }
}
