package stirtide.planner.views;

import java.util.List;
import java.util.Optional;
import stirtide.events.setup.PastVisit;
import stirtide.events.setup.PastVisit.PastZone;
import stirtide.events.view.DayView.MemoryCard;
import stirtide.mixing.text.AmountText;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.ServiceState;
import stirtide.planner.visits.LastVisit;
import stirtide.planner.visits.RepeatedFormula;
import stirtide.planner.visits.VisitComparison;

/** What is remembered of a client, in a few lines. */
final class RepeatCards {
    private RepeatCards() {}

    /** Empty when the booking names no client or nothing is remembered of the client. */
    static Optional<MemoryCard> of(Day day, ServiceState service) {
        List<PastVisit> visits = LastVisit.visits(day.opened(), service.booking());
        if (visits.isEmpty()) return Optional.empty();
        PastVisit last = visits.stream()
                .filter(visit -> visit.menuId().equals(service.booking().menuId()))
                .findFirst()
                .orElse(visits.get(0));
        Optional<RepeatedFormula> repeat = day.ledger().repeat(service.service());
        return Optional.of(new MemoryCard(
                last.on(),
                visits.size(),
                repeat.isPresent(),
                last.zones().stream().map(zone -> line(day, zone)).toList(),
                repeat.map(RepeatedFormula::departures).orElse(List.of())));
    }

    private static String line(Day day, PastZone zone) {
        String levels =
                zone.levelBeforeTenths().isEmpty() && zone.levelAfterTenths().isEmpty()
                        ? ""
                        : ", level " + VisitComparison.level(zone.levelBeforeTenths()) + " to "
                                + VisitComparison.level(zone.levelAfterTenths());
        return zone.zone() + ": " + ProductNames.lightener(day, zone.lightenerId()) + " "
                + AmountText.ratio(zone.ratioThousandths()) + " with " + AmountText.strength(zone.strengthHundredths())
                + ", "
                + AmountText.grams(zone.usedMilligrams()) + " used of " + AmountText.grams(zone.mixedMilligrams())
                + ", "
                + "applied in " + zone.applyMinutes() + " min, processed " + VisitComparison.processed(zone) + levels;
    }
}
