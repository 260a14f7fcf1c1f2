package stirtide.planner.planning.floor;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Cheapest insertion of one whole service while all others stay where they are: a shortest path over its places of bowl changes in layers of delay. A bowl is an arc
 * inside a layer; a bowl that is not ready in time leads to a later layer, and all that follows is late with it. For each place and delay one label is kept, the cheapest.
 * Of the possible starts of a mix, the freshest that is in time and the first that is late are tried: earlier ones are dearer in every respect, later ones are dominated by
 * a later layer. Labels that cannot beat the best complete path, given the cheapest handling of the rest, are dropped; layers end where lateness alone is too dear.
 * Cost: layers times arcs, in practice a few microseconds.
 */
final class EarliestFit {
    private static final int LAYERS = FloorDay.MOST_WAIT_MINUTES + 1;

    private final FloorState state;
    private final FloorGrid grid;
    private final PathLabels labels;
    private FitWeights weights = new FitWeights(1 << 20, 16, 1);
    private ServiceGrid service;
    private long[] rinseStarts;
    private final long[][] maskedStarts;
    private final long[] maskedRinse;
    boolean maskRinse = Boolean.getBoolean("mr");
    private int maskFrom;
    private int maskTo;
    private int lastLayer;
    private int chairUntil;
    private long bestCost;
    private @Nullable ServicePath best;

    EarliestFit(FloorState state) {
        this.state = state;
        this.grid = state.grid;
        this.labels = new PathLabels(
                Arrays.stream(grid.services).mapToInt(s -> s.last + 1).max().orElse(1), LAYERS);
        this.service = grid.services[0];
        this.rinseStarts = new long[0];
        this.maskedRinse = new long[grid.words];
        this.maskedStarts = new long[grid.mixing.length][grid.words];
    }

    void weights(FitWeights to) {
        weights = to;
    }

    /** Lets no mix be under way in these minutes; a mask that is empty takes nothing away. */
    void mask(int from, int to) {
        maskFrom = from;
        maskTo = to;
    }

    private long[] mixStarts(int mix) {
        return maskTo > maskFrom ? maskedStarts[mix] : state.mixStarts(mix);
    }

    private void applyMask() {
        for (int mix = 0; mix < maskedStarts.length; mix++) {
            System.arraycopy(state.mixStarts(mix), 0, maskedStarts[mix], 0, grid.words);
            MinuteSet.remove(maskedStarts[mix], Math.max(0, maskFrom - grid.occupied[mix] + 1), maskTo);
        }
        if (maskRinse) {
            System.arraycopy(rinseStarts, 0, maskedRinse, 0, grid.words);
            MinuteSet.remove(maskedRinse, Math.max(0, maskFrom - grid.day.rinseMinutes() + 1), maskTo);
            rinseStarts = maskedRinse;
        }
    }

    /** Cheapest path of a service that is not placed, beginning at least so much later than it could; null if there is none. */
    @Nullable ServicePath find(int index, int later) {
        service = grid.services[index];
        best = null;
        bestCost = Long.MAX_VALUE;
        rinseStarts = state.rinseStarts(service);
        if (maskTo > maskFrom) {
            applyMask();
        }
        chairUntil = state.chairUntil(service);
        long[] free = state.stylistFree(service);
        int stylistUntil = state.stylistUntil(service);
        int booked = service.startBase[0];
        int from = MinuteSet.next(free, state.earliestStart(service) + later);
        while (from >= 0 && from < stylistUntil && from - booked < LAYERS) {
            int until = Math.min(stylistUntil, MinuteSet.nextAbsent(free, from));
            lastLayer = Math.min(LAYERS - 1, until - service.endBase[service.last]);
            lastLayer = Math.min(lastLayer, chairUntil - service.lastWish);
            layers(from - booked);
            from = MinuteSet.next(free, until);
        }
        return best;
    }

    private void layers(int first) {
        labels.begin();
        for (int d = first; d <= lastLayer; d++) {
            if (d * weights.lateness() + service.leastHandling[0] * weights.handling() >= bestCost) {
                return;
            }
            labels.source(d);
            for (int j = 0; j < service.last; j++) {
                int label = labels.at(j, d);
                if (label >= 0) {
                    extend(label, j, d);
                }
            }
            int label = labels.at(service.last, d);
            if (label >= 0) {
                finish(label, d);
            }
        }
    }

    /** Whether a label of this cost cannot lead to anything better. */
    private boolean hopeless(long cost, int j, int d) {
        return cost + d * weights.lateness() + service.leastHandling[j] * weights.handling() >= bestCost;
    }

    private void extend(int label, int j, int d) {
        if (hopeless(labels.cost[label], j, d)) {
            return;
        }
        int mix = service.mix[j];
        long[] starts = mixStarts(mix);
        int due = service.startBase[j] + d - grid.occupied[mix];
        int fresh = MinuteSet.previous(starts, due);
        if (fresh >= labels.ownFree[label]) {
            arcs(label, j, d, fresh);
        } else if (fresh >= 0) {
            int earlier = earlier(label, fresh);
            if (earlier >= 0) {
                arcs(earlier, j, d, fresh);
            }
        }
        if (j > 0 && fresh < due) {
            int late = MinuteSet.next(starts, Math.max(due + 1, labels.ownFree[label]));
            int layer = late + d - due;
            if (late >= 0 && layer <= lastLayer) {
                arcs(label, j, layer, late);
            }
        }
    }

    /** The same path with its last bowls mixed earlier, so that the next can be begun at the given minute; -1 if they would grow too old. */
    private int earlier(int label, int free) {
        int parent = labels.parent[label];
        if (parent < 0) {
            return -1;
        }
        int mix = service.mix[labels.node[parent]];
        int start = MinuteSet.previous(mixStarts(mix), free - grid.occupied[mix]);
        int end = service.endBase[labels.node[label]] + labels.delay[label];
        int left = grid.life[mix] - (end - start);
        if (start < 0 || left < 0) {
            return -1;
        }
        if (start < labels.ownFree[parent]) {
            parent = earlier(parent, start);
            if (parent < 0) {
                return -1;
            }
        }
        int copy = labels.add(labels.node[label], labels.delay[label], parent);
        if (copy < 0) {
            return -1;
        }
        int old = labels.parent[label];
        int leftBefore = grid.life[mix] - (end - labels.mixStart[label]);
        int margin = grid.day.marginMinutes();
        int handling = labels.handling[label] - labels.handling[old] + labels.handling[parent]
                + 10 * (Math.max(0, margin - left) - Math.max(0, margin - leftBefore));
        int standing = labels.standing[label] - labels.standing[old] + labels.standing[parent]
                + labels.mixStart[label] - start;
        fill(copy, start, labels.size[label], handling, standing);
        labels.latestRinse[copy] = labels.latestRinse[label];
        labels.wish[copy] = labels.wish[label];
        return copy;
    }

    private void fill(int label, int start, int size, int handling, int standing) {
        labels.mixStart[label] = start;
        labels.ownFree[label] = start + grid.occupied[service.mix[labels.node[labels.parent[label]]]];
        labels.size[label] = size;
        labels.handling[label] = handling;
        labels.standing[label] = standing;
        labels.cost[label] = handling * weights.handling() + standing * weights.standing();
    }

    private void arcs(int label, int j, int d, int mixStart) {
        int mix = service.mix[j];
        int stands = service.startBase[j] + d - mixStart - grid.occupied[mix];
        for (int arc = service.firstArc[j]; arc < service.firstArc[j + 1]; arc++) {
            int k = service.arcTo[arc];
            int end = service.endBase[k] + d;
            int left = grid.life[mix] - (end - mixStart);
            if (left < 0) {
                return;
            }
            int latest = Math.min(labels.latestRinse[label], service.arcLatestRinse[arc] + d);
            if (service.lastWish + d > latest) {
                continue;
            }
            int size = size(arc, mixStart, end);
            if (size < 0) {
                continue;
            }
            int handling = service.arcCost[arc][size] + 10 * Math.max(0, grid.day.marginMinutes() - left);
            long cost = labels.cost[label] + handling * weights.handling() + stands * weights.standing();
            if (!hopeless(cost, k, d) && labels.better(k, d, cost)) {
                int to = labels.add(k, d, label);
                if (to < 0) {
                    return;
                }
                fill(to, mixStart, size, labels.handling[label] + handling, labels.standing[label] + stands);
                labels.latestRinse[to] = latest;
                labels.wish[to] = Math.max(labels.wish[label], service.arcWish[arc] + d);
                labels.keep(to);
            }
        }
    }

    /** The cheapest size that fits and is at hand, or -1. */
    private int size(int arc, int from, int end) {
        int[] cost = service.arcCost[arc];
        int size = -1;
        for (int z = 0; z < cost.length; z++) {
            if (cost[z] < (size < 0 ? ServiceGrid.NONE : cost[size])
                    && !MinuteSet.meets(state.stockFull(z), from, end + grid.day.washMinutes())) {
                size = z;
            }
        }
        return size;
    }

    private void finish(int label, int d) {
        int wish = labels.wish[label];
        int rinse = MinuteSet.next(rinseStarts, Math.max(wish, service.endBase[service.last] + d));
        if (rinse < 0 || rinse > labels.latestRinse[label] || rinse > chairUntil) {
            return;
        }
        int lateness = d + rinse - wish;
        long cost = labels.cost[label] + lateness * weights.lateness();
        if (lateness <= FloorDay.MOST_WAIT_MINUTES && cost < bestCost) {
            bestCost = cost;
            best = labels.path(service, label, rinse, lateness);
        }
    }
}
