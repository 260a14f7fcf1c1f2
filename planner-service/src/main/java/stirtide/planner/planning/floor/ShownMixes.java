package stirtide.planner.planning.floor;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** The plan on show by service. */
final class ShownMixes {
    private final List<List<PlacedBowl>> ofService;
    private final int[] pinned;

    ShownMixes(int services, List<PlacedBowl> shown) {
        this.ofService = IntStream.range(0, services)
                .<List<PlacedBowl>>mapToObj(i -> new ArrayList<>())
                .toList();
        this.pinned = new int[services];
        for (PlacedBowl mix : shown) {
            ofService.get(mix.service()).add(mix);
            pinned[mix.service()] += mix.pinned() ? 1 : 0;
        }
    }

    List<PlacedBowl> of(int service) {
        return ofService.get(service);
    }

    /** How many of its first bowls keep minute and scale of their mix. */
    int pinned(int service) {
        return pinned[service];
    }

    /** Who mixes a bowl by the plan on show, -1 if that is not known. */
    int assistant(int service, int bowl) {
        return bowl < of(service).size() ? of(service).get(bowl).assistant() : -1;
    }

    /** The service as shown; null where a bowl cannot be used so any more. Whether people and things are free is another question. */
    static @Nullable ServicePath path(FloorGrid grid, ServiceGrid service, List<PlacedBowl> bowls) {
        int count = bowls.size();
        int[] node = new int[count + 1];
        int[] delay = new int[count];
        int[] mixStart = new int[count];
        int[] size = new int[count];
        int[] scale = new int[count];
        int handling = 0;
        int standing = 0;
        var underway = grid.conditions.underway().get(service.index);
        int wish = underway.wishMinute();
        int latest = underway.latestEndMinute();
        int free = 0;
        for (int b = 0; b < count; b++) {
            PlacedBowl bowl = bowls.get(b);
            int arc = service.arc(node[b], bowl.to());
            if (bowl.from() != service.minute[node[b]] || arc < 0) {
                return null;
            }
            node[b + 1] = service.arcTo[arc];
            delay[b] = bowl.useStart() - service.startBase[node[b]];
            mixStart[b] = bowl.mixStart();
            size[b] = bowl.size();
            scale[b] = bowl.scale();
            int mix = service.mix[node[b]];
            int age = service.endBase[node[b + 1]] + delay[b] - mixStart[b];
            int cost = size[b] < 0 || scale[b] < 0 ? HandlingCosts.NONE : service.arcCost[arc][scale[b]][size[b]];
            int stands = bowl.useStart() - mixStart[b] - grid.lead[mix];
            boolean possible = cost < HandlingCosts.NONE
                    && delay[b] >= (b == 0 ? 0 : delay[b - 1])
                    && mixStart[b] >= free
                    && stands >= 0
                    && age <= grid.life[mix]
                    && service.arcCheck[arc] + delay[b] <= latest;
            if (!possible) {
                return null;
            }
            free = mixStart[b] + grid.occupied[mix];
            latest = Math.min(service.arcKeeps[arc] ? latest : HandlingCosts.NONE, service.arcLatest[arc] + delay[b]);
            wish = Math.max(wish, service.arcWish[arc] + delay[b]);
            handling += cost + grid.agingCost(mix, age);
            standing += stands;
        }
        if (count == 0 || mixStart[0] < 0 || node[count] != service.last) {
            return null;
        }
        int rinse = Math.max(wish, service.endBase[service.last] + delay[count - 1]);
        return new ServicePath(
                service, node, delay, mixStart, size, scale, rinse, delay[count - 1], handling, standing);
    }
}
