package stirtide.planner.planning.floor;

import java.util.List;

/**
 * A plan of a day.
 *
 * @param bowls every bowl
 * @param services when every service is worked
 * @param score what it costs
 */
public record FloorPlan(List<BowlAssignment> bowls, List<ServiceTimes> services, FloorScore score) {
    /** Copies the lists. */
    public FloorPlan {
        bowls = List.copyOf(bowls);
        services = List.copyOf(services);
    }
}
