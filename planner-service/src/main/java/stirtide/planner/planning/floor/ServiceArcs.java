package stirtide.planner.planning.floor;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Every bowl that could feed a stretch of one service. */
final class ServiceArcs {
    /** Handling of a bowl that begins inside a zone. */
    private static final int INSIDE_A_ZONE = 30;

    final int[] firstArc;
    private final List<int[]> arcs = new ArrayList<>();
    private final List<int[]> costs = new ArrayList<>();
    private final FloorDay day;
    private final FloorService service;
    private final ZoneTimes times;

    ServiceArcs(FloorDay day, FloorService service, ZoneTimes times, int[] node) {
        this.day = day;
        this.service = service;
        this.times = times;
        this.firstArc = new int[node.length + 1];
        for (int j = 0; j < node.length; j++) {
            for (int k = j + 1; k < node.length && oneMix(node[j], node[k]) && inLife(node[j], node[k]); k++) {
                add(k, node[j], node[k]);
            }
            firstArc[j + 1] = arcs.size();
        }
    }

    private boolean oneMix(int from, int to) {
        for (int i = from + 1; i < to; i++) {
            if (mixOf(i) != mixOf(from)) {
                return false;
            }
        }
        return true;
    }

    private int mixOf(int minute) {
        return service.zones().get(times.zone[minute]).mix();
    }

    private boolean inLife(int from, int to) {
        FloorMix mix = day.mixes().get(mixOf(from));
        int span = times.clock[to - 1] + 1 - times.clock[from];
        return mix.mixMinutes() + day.handOverMinutes() + span <= mix.lifeMinutes();
    }

    private void add(int node, int from, int to) {
        int[] cost = new int[day.bowlSizes().size()];
        int grams = times.used[to] - times.used[from];
        for (int z = 0; z < cost.length; z++) {
            FloorBowlSize size = day.bowlSizes().get(z);
            boolean fits = size.count() > 0 && grams + size.residueDecigrams() <= size.usableDecigrams();
            cost[z] = fits ? size.residueDecigrams() + awkward(from, grams) : ServiceGrid.NONE;
        }
        if (Arrays.stream(cost).min().orElse(ServiceGrid.NONE) >= ServiceGrid.NONE) {
            return;
        }
        int latest = ServiceGrid.NONE;
        int wish = 0;
        for (int z = 0; z < service.zones().size(); z++) {
            FloorZone zone = service.zones().get(z);
            if (times.first[z] >= from && times.first[z] < to) {
                latest = Math.min(latest, times.clock[times.first[z]] + zone.longestMinutes());
            }
            if (times.first[z + 1] > from && times.first[z + 1] <= to) {
                wish = Math.max(wish, times.clock[times.first[z + 1] - 1] + 1 + zone.processMinutes());
            }
        }
        arcs.add(new int[] {node, latest, wish});
        costs.add(cost);
    }

    private int awkward(int from, int grams) {
        boolean inside = times.first[times.zone[from]] != from;
        int small = times.used[times.minutes] > day.leastDecigrams() ? Math.max(0, day.leastDecigrams() - grams) : 0;
        return (inside ? INSIDE_A_ZONE : 0) + small;
    }

    int[] to() {
        return arcs.stream().mapToInt(arc -> arc[0]).toArray();
    }

    int[] latestRinse() {
        return arcs.stream().mapToInt(arc -> arc[1]).toArray();
    }

    int[] wish() {
        return arcs.stream().mapToInt(arc -> arc[2]).toArray();
    }

    int[][] cost() {
        return costs.toArray(int[][]::new);
    }
}
