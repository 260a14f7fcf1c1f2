package stirtide.planner.planning.floor;

/**
 * Least lateness of the services of one stylist who also rinses, everybody else being out of the way: all orders of heads and rinses are tried, each as early as it can.
 * Heads keep their order; what is tried is which rinses come between them.
 */
final class StylistBound {
    private final FloorGrid grid;
    private final ChainBound chains;
    private final int[] group;
    private final int[] endDelay;
    private final int[] rinsed;
    private int best = Integer.MAX_VALUE;

    StylistBound(FloorGrid grid, ChainBound chains, int[] group) {
        this.grid = grid;
        this.chains = chains;
        this.group = group;
        this.endDelay = new int[group.length];
        this.rinsed = new int[group.length];
    }

    int lateness() {
        if (group.length == 0) {
            return 0;
        }
        int rest = 0;
        for (int i : group) {
            rest += chains.lateness(i);
        }
        search(0, 0, 0, rest);
        return best;
    }

    /**
     * Tries all that can come next.
     *
     * @param now the stylist is free from here on
     * @param heads services begun
     * @param late lateness so far, of services rinsed
     * @param rest least lateness of services not rinsed
     */
    private void search(int now, int heads, int late, int rest) {
        if (late + rest >= best) {
            return;
        }
        boolean done = heads == group.length;
        for (int g = 0; g < heads; g++) {
            if (rinsed[g] == 0) {
                done = false;
                rinse(g, now, heads, late, rest);
            }
        }
        if (heads < group.length) {
            head(now, heads, late, rest);
        }
        if (done) {
            best = late;
        }
    }

    private void rinse(int g, int now, int heads, int late, int rest) {
        ServiceGrid service = grid.services[group[g]];
        int wish = service.lastWish + endDelay[g];
        int begin = Math.max(now, wish);
        rinsed[g] = begin;
        int lateness = endDelay[g] + (service.latestWish() > service.lastWish ? 0 : begin - wish);
        search(begin + grid.day.rinseMinutes(), heads, late + lateness, rest - chains.lateness(group[g]));
        rinsed[g] = 0;
    }

    private void head(int now, int g, int late, int rest) {
        ServiceGrid service = grid.services[group[g]];
        int start = Math.max(now, service.startBase[0] + chains.startDelay[group[g]]);
        for (int before = 0; before < g; before++) {
            if (grid.services[group[before]].service.chair() == service.service.chair()) {
                if (rinsed[before] == 0) {
                    return;
                }
                start = Math.max(start, rinsed[before]);
            }
        }
        int delay = start - service.startBase[0];
        if (delay > FloorDay.MOST_WAIT_MINUTES) {
            return;
        }
        int old = endDelay[g];
        endDelay[g] = chains.lone[group[g]].endDelay(delay);
        search(service.endBase[service.last] + endDelay[g], g + 1, late, rest);
        endDelay[g] = old;
    }
}
