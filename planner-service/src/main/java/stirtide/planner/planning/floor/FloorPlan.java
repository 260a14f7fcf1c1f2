package stirtide.planner.planning.floor;

import java.util.ArrayList;
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

    static FloorScore score(ServicePath[] paths) {
        int lateness = 0;
        int handling = 0;
        int standing = 0;
        for (ServicePath path : paths) {
            lateness += path.lateness;
            handling += path.handling;
            standing += path.standing;
        }
        return new FloorScore(lateness, handling, standing);
    }

    static FloorPlan of(ServicePath[] paths) {
        List<BowlAssignment> bowls = new ArrayList<>();
        List<ServiceTimes> services = new ArrayList<>();
        for (ServicePath path : paths) {
            ZoneTimes times = new ZoneTimes(path.grid.service);
            List<Integer> minutes = new ArrayList<>();
            for (int b = 0; b < path.bowls(); b++) {
                int from = path.grid.minute[path.node[b]];
                int to = path.grid.minute[path.node[b + 1]];
                bowls.add(new BowlAssignment(
                        path.grid.service.service(), from, to, path.size[b], path.mixStart[b], path.assistant[b]));
                for (int i = from; i < to; i++) {
                    minutes.add(times.clock[i] + path.delay[b]);
                }
            }
            services.add(new ServiceTimes(path.grid.service.service(), minutes, path.rinse, path.rinseAssistant));
        }
        return new FloorPlan(bowls, services, score(paths));
    }
}
