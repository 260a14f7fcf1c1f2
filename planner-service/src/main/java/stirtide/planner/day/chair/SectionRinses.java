package stirtide.planner.day.chair;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stirtide.events.plan.PlannedService.PlannedZone;
import stirtide.events.setup.Menu.MenuEntry;
import stirtide.events.setup.Menu.MenuZone;

/**
 * The latest rinse of planned zones as it is shown. Zones of a section are rinsed together, so none of them may be rinsed
 * later than the one permits that reaches its longest processing time first; a plan gives the time of each zone alone.
 */
public final class SectionRinses {
    private SectionRinses() {}

    /**
     * The zones with the latest rinse of their section, and their rinse and halfway check no later than that.
     *
     * @param entry what is booked
     * @param zones the zones of a plan for it, still to be applied or processing
     */
    public static List<PlannedZone> of(MenuEntry entry, List<PlannedZone> zones) {
        return zones.stream()
                .map(zone -> zones.stream()
                        .filter(other -> other.equals(zone) || together(entry, zone, other))
                        .map(PlannedZone::rinseBy)
                        .min(Comparator.naturalOrder())
                        .map(latest -> rinsedBy(zone, latest))
                        .orElse(zone))
                .toList();
    }

    private static boolean together(MenuEntry entry, PlannedZone zone, PlannedZone other) {
        Optional<Integer> section = section(entry, zone);
        return section.isPresent() && section.equals(section(entry, other));
    }

    private static Optional<Integer> section(MenuEntry entry, PlannedZone zone) {
        return entry.zones().stream()
                .filter(one -> one.zone().equals(zone.zone()))
                .map(MenuZone::section)
                .findFirst();
    }

    private static PlannedZone rinsedBy(PlannedZone zone, Instant latest) {
        Instant rinse = earlier(zone.rinseAt(), latest);
        return new PlannedZone(
                zone.zone(), zone.applyStart(), zone.applyEnd(), earlier(zone.checkAt(), rinse), rinse, latest);
    }

    private static Instant earlier(Instant one, Instant other) {
        return one.isBefore(other) ? one : other;
    }
}
