package stirtide.planner.planning.floor;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What the paths of all services of a day come to. */
final class PlanPaths {
    private PlanPaths() {}

    static FloorScore score(@Nullable ServicePath[] paths) {
        int lateness = 0;
        int handling = 0;
        int standing = 0;
        for (ServicePath path : paths) {
            if (path == null) {
                continue;
            }
            lateness += path.lateness;
            handling += path.handling;
            standing += path.standing;
        }
        return new FloorScore(lateness, handling, standing);
    }

    /** Every bowl of the services that are placed. */
    static List<PlacedBowl> bowls(@Nullable ServicePath[] paths) {
        List<PlacedBowl> bowls = new ArrayList<>();
        for (ServicePath path : paths) {
            for (int b = 0; path != null && b < path.bowls(); b++) {
                bowls.add(new PlacedBowl(
                        path.grid.index,
                        path.grid.minute[path.node[b]],
                        path.grid.minute[path.node[b + 1]],
                        path.size[b],
                        path.scale[b],
                        path.mixStart[b],
                        path.useStart(b),
                        path.assistant[b],
                        false));
            }
        }
        return bowls;
    }

    static FloorPlan plan(@Nullable ServicePath[] paths) {
        List<BowlAssignment> bowls = new ArrayList<>();
        List<ServiceTimes> services = new ArrayList<>();
        for (ServicePath path : paths) {
            if (path == null) {
                continue;
            }
            FloorService service = path.grid.service;
            ZoneTimes times = new ZoneTimes(service);
            List<Integer> minutes = new ArrayList<>();
            for (int b = 0; b < path.bowls(); b++) {
                int from = path.grid.minute[path.node[b]];
                int to = path.grid.minute[path.node[b + 1]];
                bowls.add(new BowlAssignment(
                        service.service(), from, to, path.size[b], path.mixStart[b], path.assistant[b]));
                for (int i = from; i < to; i++) {
                    minutes.add(times.clock[i] + path.delay[b]);
                }
            }
            services.add(new ServiceTimes(service.service(), minutes, path.rinse, path.rinseAssistant));
        }
        return new FloorPlan(bowls, services, score(paths));
    }
}
