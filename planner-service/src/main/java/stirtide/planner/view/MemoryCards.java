package stirtide.planner.view;

import java.util.List;
import java.util.Optional;
import stirtide.events.setup.PastVisit;
import stirtide.events.setup.PastVisit.PastZone;
import stirtide.events.view.DayView.MemoryCard;
import stirtide.planner.day.Day;
import stirtide.planner.day.ServiceState;
import stirtide.planner.formula.Figures;
import stirtide.planner.memory.LastTime;
import stirtide.planner.memory.Repeat;
import stirtide.planner.memory.SideBySide;

/** What is remembered of a client, in a few lines. */
final class MemoryCards {
    private MemoryCards() {}

    /** Empty when the booking names no client or nothing is remembered of the client. */
    static Optional<MemoryCard> of(Day day, ServiceState service) {
        List<PastVisit> visits = LastTime.visits(day.opened(), service.booking());
        if (visits.isEmpty()) return Optional.empty();
        PastVisit last = visits.stream()
                .filter(visit -> visit.menuId().equals(service.booking().menuId()))
                .findFirst()
                .orElse(visits.get(0));
        Optional<Repeat> repeat = day.ledger().repeat(service.service());
        return Optional.of(new MemoryCard(
                last.on(),
                visits.size(),
                repeat.isPresent(),
                last.zones().stream().map(zone -> line(day, zone)).toList(),
                repeat.map(Repeat::departures).orElse(List.of())));
    }

    private static String line(Day day, PastZone zone) {
        String levels =
                zone.levelBeforeTenths().isEmpty() && zone.levelAfterTenths().isEmpty()
                        ? ""
                        : ", level " + SideBySide.level(zone.levelBeforeTenths()) + " to "
                                + SideBySide.level(zone.levelAfterTenths());
        return zone.zone() + ": " + Products.lightener(day, zone.lightenerId()) + " "
                + Figures.ratio(zone.ratioThousandths()) + " with " + Figures.strength(zone.strengthHundredths()) + ", "
                + Figures.grams(zone.usedMilligrams()) + " used of " + Figures.grams(zone.mixedMilligrams()) + ", "
                + "applied in " + zone.applyMinutes() + " min, processed " + SideBySide.processed(zone) + levels;
    }
}
