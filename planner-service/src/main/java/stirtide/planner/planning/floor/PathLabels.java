package stirtide.planner.planning.floor;

/** Labels of a shortest path over places of bowl changes and delays, in flat arrays. The first labels are the sources, one a delay. */
final class PathLabels {
    private static final int POOL = 1 << 15;

    private final int nodes;
    private final int[] generation;
    private final int[] kept;
    private int now;
    private int count;
    final long[] cost = new long[POOL];
    /** The next bowl of the same service is begun no earlier. */
    final int[] ownFree = new int[POOL];

    /** Limit to what follows. */
    final int[] latest = new int[POOL];

    /** Bowls so far. */
    final int[] bowls = new int[POOL];

    final int[] wish = new int[POOL];
    final int[] parent = new int[POOL];
    final int[] node = new int[POOL];
    final int[] mixStart = new int[POOL];
    final int[] size = new int[POOL];
    final int[] scale = new int[POOL];
    final int[] delay = new int[POOL];
    final int[] handling = new int[POOL];
    final int[] standing = new int[POOL];
    final int[] mixing = new int[POOL];

    PathLabels(int nodes, int layers) {
        this.nodes = nodes;
        this.generation = new int[nodes * layers];
        this.kept = new int[nodes * layers];
    }

    void begin() {
        now++;
        count = 0;
    }

    /** The label kept for a place and a delay, or -1. */
    int at(int place, int layer) {
        int at = layer * nodes + place;
        return generation[at] == now ? kept[at] : -1;
    }

    boolean better(int place, int layer, long than) {
        int label = at(place, layer);
        return label < 0 || than < cost[label];
    }

    void keep(int label) {
        int at = delay[label] * nodes + node[label];
        generation[at] = now;
        kept[at] = label;
    }

    /** A new label, or -1 when there are too many. */
    int add(int place, int layer, int from) {
        if (count == POOL) {
            return -1;
        }
        node[count] = place;
        delay[count] = layer;
        parent[count] = from;
        bowls[count] = from < 0 ? 0 : bowls[from] + 1;
        return count++;
    }

    int source(int layer, FloorConditions.Underway underway) {
        int label = add(0, layer, -1);
        if (label >= 0) {
            cost[label] = 0;
            ownFree[label] = 0;
            latest[label] = underway.latestEndMinute();
            wish[label] = underway.wishMinute();
            handling[label] = 0;
            standing[label] = 0;
            mixing[label] = 0;
            keep(label);
        }
        return label;
    }

    ServicePath path(ServiceGrid service, int label, int rinse, int lateness) {
        int count = bowls[label];
        int[] nodes = new int[count + 1];
        int[] delays = new int[count];
        int[] starts = new int[count];
        int[] sizes = new int[count];
        int[] scales = new int[count];
        nodes[count] = service.last;
        int at = label;
        for (int b = count - 1; b >= 0; b--) {
            delays[b] = delay[at];
            starts[b] = mixStart[at];
            sizes[b] = size[at];
            scales[b] = scale[at];
            at = parent[at];
            nodes[b] = node[at];
        }
        return new ServicePath(
                service, nodes, delays, starts, sizes, scales, rinse, lateness, handling[label], standing[label]);
    }
}
