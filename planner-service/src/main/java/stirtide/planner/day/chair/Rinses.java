package stirtide.planner.day.chair;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stirtide.events.setup.Directions;
import stirtide.events.setup.Menu.MenuZone;
import stirtide.events.view.DayView.SectionCard;
import stirtide.planner.day.chair.ServiceProgress.DoneZone;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.ServiceState;

/**
 * When sections are rinsed. Where the rinse is not recorded a section counts as rinsed when the wanted minutes of its last
 * zone are over, and at the latest when the directions' longest time of its first zone is.
 */
public final class Rinses {
    private Rinses() {}

    /** When a section is or was to be rinsed, empty while a zone of it is still to be applied. */
    public static Optional<Instant> rinseAt(Day day, ServiceState service, ServiceProgress progress, int section) {
        var recorded = service.rinsedAt().get(section);
        if (recorded != null) return Optional.of(recorded);
        long zones = day.menuEntry(service).zones().stream()
                .filter(zone -> zone.section() == section)
                .count();
        var done = progress.done().stream()
                .filter(zone -> zone.zone().section() == section)
                .toList();
        if (done.size() < zones || done.isEmpty()) return Optional.empty();
        var wanted = Instant.EPOCH;
        var latest = Instant.MAX;
        for (var zone : done) {
            var wish = zone.end().plus(Duration.ofMinutes(zone.zone().processMinutes()));
            var bound = rinseBy(day, zone);
            if (wish.isAfter(wanted)) wanted = wish;
            if (bound.isBefore(latest)) latest = bound;
        }
        return Optional.of(wanted.isBefore(latest) ? wanted : latest);
    }

    /** The sections of a service, in the order they are begun. */
    static List<Integer> sections(Day day, ServiceState service) {
        return day.menuEntry(service).zones().stream()
                .map(MenuZone::section)
                .distinct()
                .toList();
    }

    /** Zones of a section that are still to be applied. */
    static List<String> unapplied(Day day, ServiceState service, int section) {
        return day.menuEntry(service).zones().stream()
                .skip(service.zonesDone().size())
                .filter(zone -> zone.section() == section)
                .map(MenuZone::zone)
                .toList();
    }

    /** The sections of a service that are applied whole, with their rinse as recorded or planned. */
    public static List<SectionCard> applied(Day day, ServiceState service) {
        if (service.zonesDone().isEmpty()) return List.of();
        var progress = ServiceProgress.of(day, service, day.time());
        var cards = new ArrayList<SectionCard>();
        for (int section : sections(day, service)) {
            var zones = progress.done().stream()
                    .filter(done -> done.zone().section() == section)
                    .toList();
            if (!unapplied(day, service, section).isEmpty()) continue;
            cards.add(new SectionCard(
                    section,
                    zones.stream().map(done -> done.zone().zone()).toList(),
                    rinseAt(day, service, progress, section).orElseThrow(),
                    zones.stream()
                            .map(done -> rinseBy(day, done))
                            .min(Comparator.naturalOrder())
                            .orElseThrow(),
                    service.rinsedAt().containsKey(section)));
        }
        return cards;
    }

    /** When the directions want a zone rinsed at the latest. */
    public static Instant rinseBy(Day day, DoneZone zone) {
        return zone.begin()
                .plus(Duration.ofMinutes(day.opened().directions(zone.zone().lightenerId()).stream()
                        .flatMap(one -> one.techniques().stream())
                        .filter(rule -> rule.technique().equals(zone.zone().technique()))
                        .mapToInt(Directions.TechniqueRule::longestProcessingMinutes)
                        .findFirst()
                        .orElse(0)));
    }

    /** Whether a section is rinsed at an instant. */
    public static boolean rinsed(Day day, ServiceState service, ServiceProgress progress, int section, Instant at) {
        return rinseAt(day, service, progress, section)
                .filter(rinse -> !rinse.isAfter(at))
                .isPresent();
    }

    /** When the last section of a service is or was to be rinsed, empty while a zone is still to be applied. */
    public static Optional<Instant> lastRinse(Day day, ServiceState service) {
        var zones = day.menuEntry(service).zones();
        if (service.zonesDone().size() < zones.size()) return Optional.empty();
        var progress = ServiceProgress.of(
                day, service, service.zonesDone().get(zones.size() - 1).at());
        return zones.stream()
                .map(zone -> rinseAt(day, service, progress, zone.section()).orElseThrow())
                .max(Comparator.naturalOrder());
    }
}
