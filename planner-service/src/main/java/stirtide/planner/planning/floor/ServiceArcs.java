package stirtide.planner.planning.floor;

import java.util.ArrayList;
import java.util.List;
import stirtide.planner.planning.floor.FloorConditions.BowlWeighing;

/** Every bowl that could feed a stretch of one service, in flat arrays as {@link ServiceGrid} describes them. */
final class ServiceArcs {
    /** No part of the service must keep the limit so far. */
    private static final int NOTHING = -HandlingCosts.NONE;

    final int[] firstArc;
    final int[] to;
    final int[] latest;
    final int[] check;
    final int[] wish;
    final boolean[] keeps;
    final int[][][] cost;
    private final FloorDay day;
    private final BowlWeighing weighing;
    private final int scaleKinds;
    private final int index;
    private final FloorService service;
    private final ZoneTimes times;
    private final boolean rinsesPlanned;
    /** Whether the first zone has begun. */
    private final boolean begun;

    private record Arc(int to, int latest, int check, int wish, boolean keeps, int[][] cost) {}

    ServiceArcs(FloorDay day, FloorConditions conditions, int index, ZoneTimes times, int[] node) {
        this.day = day;
        this.weighing = conditions.weighing();
        this.scaleKinds = conditions.scaleCounts().size();
        this.rinsesPlanned = conditions.rinsesPlanned();
        this.begun = conditions.underway().get(index).latestEndMinute() < HandlingCosts.NONE;
        this.index = index;
        this.service = day.services().get(index);
        this.times = times;
        this.firstArc = new int[node.length + 1];
        List<Arc> arcs = new ArrayList<>();
        for (int j = 0; j < node.length; j++) {
            int[][] furthest = j + 1 < node.length ? furthest(node[j]) : new int[0][0];
            for (int k = j + 1; k < node.length && oneMix(node[j], node[k]) && inLife(node[j], node[k]); k++) {
                int[][] costs = costs(node[j], node[k], furthest);
                if (least(costs) < HandlingCosts.NONE) {
                    arcs.add(arc(k, node[j], node[k], costs));
                }
            }
            firstArc[j + 1] = arcs.size();
        }
        this.to = arcs.stream().mapToInt(Arc::to).toArray();
        this.latest = arcs.stream().mapToInt(Arc::latest).toArray();
        this.check = arcs.stream().mapToInt(Arc::check).toArray();
        this.wish = arcs.stream().mapToInt(Arc::wish).toArray();
        this.cost = arcs.stream().map(Arc::cost).toArray(int[][][]::new);
        this.keeps = new boolean[arcs.size()];
        for (int arc = 0; arc < keeps.length; arc++) {
            keeps[arc] = arcs.get(arc).keeps;
        }
    }

    /** The least of some costs. */
    static int least(int[][] costs) {
        int least = HandlingCosts.NONE;
        for (int[] row : costs) {
            for (int cost : row) {
                least = Math.min(least, cost);
            }
        }
        return least;
    }

    private boolean oneMix(int from, int to) {
        return mixOf(to - 1) == mixOf(from) && sameMix(times.zone[from], times.zone[to - 1]);
    }

    private boolean sameMix(int zone, int last) {
        int mix = service.zones().get(zone).mix();
        for (int z = zone + 1; z <= last; z++) {
            if (service.zones().get(z).mix() != mix) {
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

    /** Up to which minute a bowl can be weighed for, by kind of scale and size. */
    private int[][] furthest(int from) {
        int[][] furthest = new int[scaleKinds][day.bowlSizes().size()];
        for (int scale = 0; scale < scaleKinds; scale++) {
            for (int z = 0; z < furthest[scale].length; z++) {
                furthest[scale][z] =
                        day.bowlSizes().get(z).count() > 0 ? weighing.furthest(index, from, z, scale) : from;
            }
        }
        return furthest;
    }

    private int[][] costs(int from, int to, int[][] furthest) {
        int[][] costs = new int[scaleKinds][day.bowlSizes().size()];
        int grams = times.used[to] - times.used[from];
        int awkward = awkward(from, grams);
        for (int scale = 0; scale < scaleKinds; scale++) {
            for (int z = 0; z < day.bowlSizes().size(); z++) {
                FloorBowlSize size = day.bowlSizes().get(z);
                boolean fits = grams + size.residueDecigrams() <= size.usableDecigrams();
                costs[scale][z] =
                        fits && to <= furthest[scale][z] ? size.residueDecigrams() + awkward : HandlingCosts.NONE;
            }
        }
        return costs;
    }

    private int awkward(int from, int grams) {
        boolean inside = times.first[times.zone[from]] != from;
        int small = times.used[times.minutes] > day.leastDecigrams() ? Math.max(0, day.leastDecigrams() - grams) : 0;
        return (inside ? HandlingCosts.INSIDE_A_ZONE : 0) + small;
    }

    private Arc arc(int node, int from, int to, int[][] costs) {
        int wish = 0;
        for (int z = 0; z < service.zones().size(); z++) {
            if (times.first[z + 1] > from && times.first[z + 1] <= to) {
                wish = Math.max(wish, times.end(z) + service.zones().get(z).processMinutes());
            }
        }
        if (rinsesPlanned) {
            return new Arc(node, latestRinse(from, to), times.lastWish(service), wish, true, costs);
        }
        int atFrom = times.zone[from];
        int last = times.zone[to - 1];
        boolean inside = times.first[atFrom] < from || from == 0 && begun;
        boolean ends = times.first[last + 1] == to;
        int check = inside ? times.clock[Math.min(to, times.first[atFrom + 1]) - 1] + 1 : NOTHING;
        return new Arc(
                node,
                ends || times.first[last] < from ? HandlingCosts.NONE : latestEnd(last),
                check,
                wish,
                !ends && atFrom == last,
                costs);
    }

    private int latestRinse(int from, int to) {
        int latest = HandlingCosts.NONE;
        for (int z = 0; z < service.zones().size(); z++) {
            if (times.first[z] >= from && times.first[z] < to) {
                latest = Math.min(
                        latest,
                        times.clock[times.first[z]] + service.zones().get(z).longestMinutes());
            }
        }
        return latest;
    }

    /** When a zone must be applied that is begun on time. What takes longer by itself than it may is let be. */
    private int latestEnd(int z) {
        FloorZone zone = service.zones().get(z);
        return times.clock[times.first[z]] + Math.max(zone.longestMinutes(), zone.applyMinutes());
    }
}
