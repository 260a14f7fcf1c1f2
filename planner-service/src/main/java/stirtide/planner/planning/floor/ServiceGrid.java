package stirtide.planner.planning.floor;

import java.util.Arrays;
import java.util.TreeSet;

/**
 * One service worked out for the search: the places at which bowls may change (nodes), when they are reached if nobody waits, and every bowl that could feed the stretch
 * between two of them (arcs), with what it costs. A delay of d minutes shifts all times of a node by d.
 */
final class ServiceGrid {
    final int index;
    final FloorService service;
    /** Number of the last node. */
    final int last;
    /** Minutes of application before each node. */
    final int[] minute;
    /** When the first minute after a node begins, with no delay. */
    final int[] startBase;
    /** When the last minute before a node is over, with no delay. */
    final int[] endBase;
    /** Mix of what follows a node. */
    final int[] mix;
    /** Cheapest handling from each node to the end. */
    final int[] leastHandling;
    /** Arcs of node j are {@code firstArc[j]} to {@code firstArc[j + 1]}, by the node they reach. */
    final int[] firstArc;

    final int[] arcTo;
    /**
     * Limit that the zones beginning on an arc set to what follows, what of the service must keep the limit so far, and when the zones that
     * end on it wish for the rinse; all without delay.
     */
    final int[] arcLatest;

    final int[] arcCheck;
    final int[] arcWish;
    /** Whether the limit so far still holds after an arc. */
    final boolean[] arcKeeps;
    /** Cost of an arc by kind of scale and size of bowl, {@link HandlingCosts#NONE} if it does not fit. */
    final int[][][] arcCost;
    /** Least cost of an arc over all scales and sizes. */
    final int[] arcLeast;
    /** When the last zone wishes for the rinse, with no delay. */
    final int lastWish;

    ServiceGrid(FloorDay day, FloorConditions conditions, int index) {
        this.index = index;
        this.service = day.services().get(index);
        ZoneTimes times = new ZoneTimes(service);
        this.minute = nodes(times);
        this.last = minute.length - 1;
        this.startBase = new int[last + 1];
        this.endBase = new int[last + 1];
        this.mix = new int[last + 1];
        for (int j = 0; j <= last; j++) {
            startBase[j] = j < last ? times.clock[minute[j]] : times.clock[minute[j] - 1] + 1;
            endBase[j] = j > 0 ? times.clock[minute[j] - 1] + 1 : startBase[j];
            mix[j] = service.zones()
                    .get(times.zone[Math.min(minute[j], times.minutes - 1)])
                    .mix();
        }
        ServiceArcs arcs = new ServiceArcs(day, conditions, index, times, minute);
        this.firstArc = arcs.firstArc;
        this.arcTo = arcs.to;
        this.arcLatest = arcs.latest;
        this.arcCheck = arcs.check;
        this.arcKeeps = arcs.keeps;
        this.arcWish = arcs.wish;
        this.arcCost = arcs.cost;
        this.arcLeast = Arrays.stream(arcCost).mapToInt(ServiceArcs::least).toArray();
        this.lastWish = times.lastWish(service);
        this.leastHandling = leastHandling(day);
    }

    /** When some zone wishes for the rinse at the latest, with no delay. */
    int latestWish() {
        return Math.max(lastWish, java.util.Arrays.stream(arcWish).max().orElse(0));
    }

    /** The arc from a node that ends before a minute of application, -1 if there is none. */
    int arc(int node, int minuteAfter) {
        for (int arc = firstArc[node]; node < last && arc < firstArc[node + 1]; arc++) {
            if (minute[arcTo[arc]] == minuteAfter) {
                return arc;
            }
        }
        return -1;
    }

    private int[] nodes(ZoneTimes times) {
        TreeSet<Integer> at = new TreeSet<>();
        at.add(0);
        at.add(times.minutes);
        for (int i : service.breaks()) {
            if (i > 0 && i < times.minutes) {
                at.add(i);
            }
        }
        for (int z = 1; z < service.zones().size(); z++) {
            if (service.zones().get(z).mix() != service.zones().get(z - 1).mix()) {
                at.add(times.first[z]);
            }
        }
        return at.stream().mapToInt(i -> i).toArray();
    }

    private int[] leastHandling(FloorDay day) {
        int[] least = new int[last + 1];
        for (int j = last - 1; j >= 0; j--) {
            least[j] = HandlingCosts.NONE;
            for (int arc = firstArc[j]; arc < firstArc[j + 1]; arc++) {
                int cost = arcLeast[arc];
                int aged = agedAtBest(day, j, arcTo[arc]);
                least[j] = Math.min(least[j], Math.min(HandlingCosts.NONE, cost + aged + least[arcTo[arc]]));
            }
        }
        return least;
    }

    /** What even the freshest bowl costs for ending close to the end of its life. */
    private int agedAtBest(FloorDay day, int j, int k) {
        FloorMix one = day.mixes().get(mix[j]);
        int age = one.mixMinutes() + day.handOverMinutes() + endBase[k] - startBase[j];
        return HandlingCosts.MARGIN_MINUTE * Math.max(0, day.marginMinutes() - (one.lifeMinutes() - age));
    }
}
