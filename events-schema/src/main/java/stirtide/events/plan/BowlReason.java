package stirtide.events.plan;

import java.time.Instant;
import java.util.List;

/**
 * A stretch of time that forces more than one bowl on a service, or one more than services would need alone. A checker of
 * its own has confirmed that no plan whose clients wait no longer does with fewer.
 *
 * @param cause stable code: {@code "WORKING_LIFE"} and {@code "BOWL_SIZE"}, or both {@code "LIFE_AND_SIZE"}, where one bowl
 *     does not serve as long or hold as much; {@code "NOBODY_FREE"} where no person could mix the bowl that would save another;
 *     {@code "TOO_MUCH_AT_ONCE"} where several services would need more mixing than people and scales can give;
 *     {@code "NO_ORDER_FITS"} where the minutes would do, but no order of mixing serves them all
 * @param from start of the stretch
 * @param to end of the stretch
 * @param services services whose bowls are meant, by number
 * @param zones zones of the one service, in order; empty where all zones of several services are meant
 * @param leastBowls fewest bowls for them
 * @param neededMinutes minutes of mixing that the stretch would need with fewer bowls, 0 where none are counted
 * @param availableMinutes minutes of mixing that people and scales can give in it, 0 where none are counted
 * @param sentence the same in words
 */
public record BowlReason(
        String cause,
        Instant from,
        Instant to,
        List<Integer> services,
        List<String> zones,
        int leastBowls,
        int neededMinutes,
        int availableMinutes,
        String sentence) {
    /** Copies the lists. */
    public BowlReason {
        services = List.copyOf(services);
        zones = List.copyOf(zones);
    }

    /** Whether a bowl is one of those that are meant. */
    public boolean concerns(PlannedBowl bowl) {
        return services.contains(bowl.service())
                && (zones.isEmpty() || bowl.zones().stream().anyMatch(zones::contains));
    }
}
