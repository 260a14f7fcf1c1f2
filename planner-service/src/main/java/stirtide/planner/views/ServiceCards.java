package stirtide.planner.views;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import stirtide.events.plan.PlannedService;
import stirtide.events.view.DayView.ServiceCard;
import stirtide.planner.day.chair.Rinses;
import stirtide.planner.day.chair.SectionRinses;
import stirtide.planner.day.history.DemandedTests;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.ServiceState;
import stirtide.planner.day.state.ServiceState.ZoneDone;

/** One card for each service of the day. */
final class ServiceCards {
    private ServiceCards() {}

    static List<ServiceCard> of(Day day, Instant now) {
        return day.services().stream().map(service -> card(day, service, now)).toList();
    }

    private static ServiceCard card(Day day, ServiceState service, Instant now) {
        var booking = service.booking();
        var entry = day.menuEntry(service);
        var planned = planned(day, service);
        var begin =
                service.startedAt().or(() -> planned.map(PlannedService::start)).orElse(booking.start());
        var end = planned.map(PlannedService::end).orElseGet(() -> end(day, service, begin));
        return new ServiceCard(
                service.service(),
                booking.chair(),
                booking.clientRef(),
                entry.name(),
                booking.start(),
                begin,
                end,
                state(day, service, now),
                planned.map(PlannedService::waitMinutes).orElse(0),
                service.zonesDone().stream().map(ZoneDone::zone).toList(),
                planned.map(plan -> SectionRinses.of(entry, plan.zones())).orElse(List.of()),
                Rinses.applied(day, service),
                DemandedTests.of(day, service),
                RepeatCards.of(day, service));
    }

    private static Optional<PlannedService> planned(Day day, ServiceState service) {
        if (!service.standing()) return Optional.empty();
        return day.plan().stream()
                .flatMap(plan -> plan.services().stream())
                .filter(one -> one.service() == service.service())
                .findFirst();
    }

    /** Without a word in the plan: the last rinse if all is applied, else the booked minutes from the begin on. */
    private static Instant end(Day day, ServiceState service, Instant begin) {
        var rinsed = Rinses.lastRinse(day, service);
        if (rinsed.isPresent()) return rinsed.get();
        if (service.cancelledAt().isPresent() && service.cancelledAt().get().isAfter(begin))
            return service.cancelledAt().get();
        var zones = day.menuEntry(service).zones();
        long minutes = zones.stream()
                        .mapToLong(zone -> (long) zone.gapMinutes() + zone.applyMinutes())
                        .sum()
                + zones.get(zones.size() - 1).processMinutes();
        return begin.plus(Duration.ofMinutes(minutes));
    }

    private static String state(Day day, ServiceState service, Instant now) {
        if (!service.standing()) return "CANCELLED";
        if (service.startedAt().isEmpty()) return "BOOKED";
        if (service.zonesDone().size() < day.menuEntry(service).zones().size()) return "STARTED";
        return Rinses.lastRinse(day, service)
                        .filter(rinse -> !rinse.isAfter(now))
                        .isPresent()
                ? "RINSED"
                : "APPLIED";
    }
}
