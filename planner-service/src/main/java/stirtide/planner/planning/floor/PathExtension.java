package stirtide.planner.planning.floor;

/**
 * Extends the labels of one insertion by one bowl each. Of the possible starts of a mix, the freshest that is in time and the first that is late are tried: earlier ones
 * are dearer, later ones are dominated by a later layer. Where the freshest start is taken by an own bowl, that bowl is mixed earlier if it lives long enough.
 */
final class PathExtension {
    private final FloorState state;
    private final FloorGrid grid;
    private final int[] untilFull;
    final PathLabels labels;
    final StartMask starts;
    FitWeights weights = FitWeights.STRICT;
    ServiceGrid service;
    int lastLayer;
    /** Nothing that costs as much is wanted. */
    long bestCost;

    PathExtension(FloorState state, int layers) {
        this.state = state;
        this.grid = state.grid;
        this.untilFull = new int[grid.day.bowlSizes().size()];
        int nodes = 1;
        for (ServiceGrid one : grid.services) {
            nodes = Math.max(nodes, one.last + 1);
        }
        this.labels = new PathLabels(nodes, layers);
        this.starts = new StartMask(state);
        this.service = grid.services[0];
    }

    /** Whether a label of this cost cannot lead to anything better. */
    boolean hopeless(long cost, int j, int d) {
        return cost + d * weights.lateness() + service.leastHandling[j] * weights.handling() >= bestCost;
    }

    void extend(int label, int j, int d) {
        if (hopeless(labels.cost[label], j, d)) {
            return;
        }
        int due = service.startBase[j] + d - grid.lead[service.mix[j]];
        if (labels.bowls[label] < state.shown.pinned(service.index)) {
            pinned(label, j, d, due);
            return;
        }
        for (int scale = 0; scale < grid.conditions.scaleCounts().size(); scale++) {
            extend(label, j, d, due, scale);
        }
    }

    private void extend(int label, int j, int d, int due, int scale) {
        long[] possible = starts.ofMix(service.mix[j], scale);
        int fresh = MinuteSet.previous(possible, due);
        if (fresh >= 0) {
            int free = fresh >= labels.ownFree[label] ? label : earlier(label, fresh);
            if (free >= 0) {
                bowls(free, j, d, fresh, scale);
            }
        }
        if (j > 0 && fresh < due) {
            int late = MinuteSet.next(possible, Math.max(due + 1, labels.ownFree[label]));
            if (late >= 0 && late + d - due <= lastLayer) {
                bowls(label, j, late + d - due, late, scale);
            }
        }
    }

    private void pinned(int label, int j, int d, int due) {
        PlacedBowl pin = state.shown.of(service.index).get(labels.bowls[label]);
        int start = pin.mixStart();
        int delay = d + Math.max(0, start - due);
        if (start >= labels.ownFree[label]
                && (delay == d || j > 0 && delay <= lastLayer)
                && MinuteSet.has(starts.ofMix(service.mix[j], pin.scale()), start)) {
            bowls(label, j, delay, start, pin.scale());
        }
    }

    /** The same path with its last bowls mixed earlier, so that the next can be begun at the given minute; -1 if they would grow too old. */
    private int earlier(int label, int free) {
        int parent = labels.parent[label];
        if (parent < 0 || labels.bowls[parent] < state.shown.pinned(service.index)) {
            return -1;
        }
        int mix = service.mix[labels.node[parent]];
        int scale = labels.scale[label];
        int start = MinuteSet.previous(starts.ofMix(mix, scale), free - grid.occupied[mix]);
        int end = service.endBase[labels.node[label]] + labels.delay[label];
        if (start < 0 || end - start > grid.life[mix]) {
            return -1;
        }
        if (start < labels.ownFree[parent]) {
            parent = earlier(parent, start);
        }
        int copy = parent < 0 ? -1 : labels.add(labels.node[label], labels.delay[label], parent);
        if (copy >= 0) {
            int old = labels.parent[label];
            int aged = aged(mix, start, end) - aged(mix, labels.mixStart[label], end);
            int handling = labels.handling[label] - labels.handling[old] + labels.handling[parent] + aged;
            int standing = labels.standing[label] - labels.standing[old] + labels.standing[parent];
            fill(copy, start, scale, labels.size[label], handling, standing + labels.mixStart[label] - start);
            labels.latest[copy] = labels.latest[label];
            labels.wish[copy] = labels.wish[label];
        }
        return copy;
    }

    private int aged(int mix, int start, int end) {
        return grid.agingCost(mix, end - start);
    }

    private void fill(int label, int start, int scale, int size, int handling, int standing) {
        labels.mixStart[label] = start;
        labels.ownFree[label] = start + grid.occupied[service.mix[labels.node[labels.parent[label]]]];
        labels.size[label] = size;
        labels.scale[label] = scale;
        int parent = labels.parent[label];
        labels.mixing[label] = labels.mixing[parent] + grid.occupied[service.mix[labels.node[parent]]];
        labels.handling[label] = handling;
        labels.standing[label] = standing;
        labels.cost[label] =
                handling * weights.handling() + standing * weights.standing() + labels.mixing[label] * weights.mixing();
    }

    /** All bowls from a label on that are begun at the given minute and used from layer d on. */
    private void bowls(int label, int j, int d, int mixStart, int scale) {
        int mix = service.mix[j];
        int stands = service.startBase[j] + d - mixStart - grid.lead[mix];
        long before = labels.cost[label] + stands * weights.standing() + grid.occupied[mix] * weights.mixing();
        untilFull(mixStart);
        for (int arc = service.firstArc[j]; arc < service.firstArc[j + 1]; arc++) {
            int k = service.arcTo[arc];
            int end = service.endBase[k] + d;
            if (end - mixStart > grid.life[mix]) {
                return;
            }
            int aged = aged(mix, mixStart, end);
            long least = before + (service.arcLeast[arc] + aged) * weights.handling();
            int limit = labels.latest[label];
            int own = service.arcLatest[arc] + d;
            int latest = service.arcKeeps[arc] ? Math.min(limit, own) : own;
            int checked = service.arcKeeps[arc] ? latest : limit;
            if (hopeless(least, k, d) || !labels.better(k, d, least) || service.arcCheck[arc] + d > checked) {
                continue;
            }
            int size = size(service.arcCost[arc][scale], end);
            int handling = size < 0 ? 0 : service.arcCost[arc][scale][size] + aged;
            if (size >= 0 && labels.better(k, d, before + handling * weights.handling())) {
                int to = labels.add(k, d, label);
                if (to < 0) {
                    return;
                }
                fill(to, mixStart, scale, size, labels.handling[label] + handling, labels.standing[label] + stands);
                labels.latest[to] = latest;
                labels.wish[to] = Math.max(labels.wish[label], service.arcWish[arc] + d);
                labels.keep(to);
            }
        }
    }

    /** Works out until when a bowl of each size is at hand from a minute on. */
    private void untilFull(int from) {
        for (int z = 0; z < untilFull.length; z++) {
            untilFull[z] = state.stockUntil(z, from);
        }
    }

    /** The cheapest size that fits and is at hand, or -1. */
    private int size(int[] cost, int end) {
        int size = -1;
        int washed = end + grid.day.washMinutes();
        for (int z = 0; z < cost.length; z++) {
            if (cost[z] < (size < 0 ? HandlingCosts.NONE : cost[size]) && washed <= untilFull[z]) {
                size = z;
            }
        }
        return size;
    }
}
