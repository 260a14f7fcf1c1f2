package stirtide.planner.planning.floor;

import org.jspecify.annotations.Nullable;
import stirtide.planner.planning.floor.FloorConditions.Underway;

/**
 * Cheapest insertion of one whole service while all others stay where they are: a shortest path over its places of bowl changes in layers of delay. A bowl is an arc
 * inside a layer; a bowl that is not ready in time leads to a later layer, and all that follows is late with it. For each place and delay the cheapest label is kept. Labels
 * that cannot beat the best complete path, given the cheapest handling of the rest, are dropped (as in A*); layers end where lateness alone is too dear. The path may begin
 * in every stretch in which the stylist is free. Cost: layers times arcs, in practice a few microseconds.
 */
final class EarliestFit {
    private static final int LAYERS = FloorDay.MOST_WAIT_MINUTES + 1;

    private final FloorState state;
    private final PathExtension extension;
    private final PathLabels labels;
    private ServiceGrid service;
    private long[] rinseStarts = {};
    private int chairUntil;
    private Underway underway = Underway.NOTHING;
    private int most;
    private @Nullable ServicePath best;

    EarliestFit(FloorState state) {
        this.state = state;
        this.extension = new PathExtension(state, LAYERS);
        this.labels = extension.labels;
        this.service = state.grid.services[0];
    }

    void weights(FitWeights to) {
        extension.weights = to;
    }

    StartMask mask() {
        return extension.starts;
    }

    /**
     * Cheapest path of a service that is not placed; null if there is none.
     *
     * @param index the service
     * @param later it begins at least so much later than it could
     * @param mostLateness it is late by no more
     */
    @Nullable
    ServicePath find(int index, int later, int mostLateness) {
        begin(index, mostLateness);
        long[] free = state.stylistFree(service);
        int stylistUntil = state.order().stylistUntil(service);
        int booked = service.startBase[0];
        int from = MinuteSet.next(free, state.order().earliestStart(service) + later);
        while (from >= 0 && from < stylistUntil && from - booked <= most) {
            int until = Math.min(stylistUntil, MinuteSet.nextAbsent(free, from));
            int lastLayer = Math.min(until - service.endBase[service.last], chairUntil - service.lastWish);
            extension.lastLayer = Math.min(most, lastLayer);
            layers(from - booked);
            from = MinuteSet.next(free, until);
        }
        return best;
    }

    private void begin(int index, int mostLateness) {
        service = state.grid.services[index];
        extension.service = service;
        extension.bestCost = Long.MAX_VALUE;
        best = null;
        most = mostLateness;
        rinseStarts = extension.starts.ofRinse(service);
        chairUntil = state.order().chairUntil(service);
        underway = state.grid.conditions.underway().get(index);
    }

    private void layers(int first) {
        labels.begin();
        for (int d = first; d <= extension.lastLayer; d++) {
            if (extension.hopeless(0, 0, d)) {
                return;
            }
            labels.source(d, underway);
            for (int j = 0; j < service.last; j++) {
                int label = labels.at(j, d);
                if (label >= 0) {
                    extension.extend(label, j, d);
                }
            }
            int label = labels.at(service.last, d);
            if (label >= 0) {
                finish(label, d);
            }
        }
    }

    private void finish(int label, int d) {
        int wish = labels.wish[label];
        int rinse = Math.max(wish, service.endBase[service.last] + d);
        if (state.grid.conditions.rinsesPlanned()) {
            rinse = MinuteSet.next(rinseStarts, rinse);
            if (rinse < 0 || rinse > labels.latest[label]) {
                return;
            }
        }
        if (rinse > chairUntil) {
            return;
        }
        int lateness = state.grid.conditions.rinsesPlanned() ? d + rinse - wish : d;
        long cost = labels.cost[label] + lateness * extension.weights.lateness();
        if (lateness <= most && cost < extension.bestCost) {
            extension.bestCost = cost;
            best = labels.path(service, label, rinse, lateness);
        }
    }
}
