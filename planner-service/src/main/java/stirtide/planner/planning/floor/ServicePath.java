package stirtide.planner.planning.floor;

/** Where and when one service is worked: its bowls in order, the delay from each bowl on, and the rinse. Assistants are filled in when it is placed. */
final class ServicePath {
    final ServiceGrid grid;
    /** Places of bowl changes: bowl b feeds from {@code node[b]} to {@code node[b + 1]}. */
    final int[] node;
    /** Minutes by which what bowl b feeds is later than booked. */
    final int[] delay;

    final int[] mixStart;
    final int[] size;
    /** Kind of scale each bowl is weighed on. */
    final int[] scale;

    final int[] assistant;
    final int rinse;
    final int lateness;
    int handling;
    int standing;
    int rinseAssistant = -1;

    ServicePath(
            ServiceGrid grid,
            int[] node,
            int[] delay,
            int[] mixStart,
            int[] size,
            int[] scale,
            int rinse,
            int lateness,
            int handling,
            int standing) {
        this.grid = grid;
        this.node = node;
        this.delay = delay;
        this.mixStart = mixStart;
        this.size = size;
        this.scale = scale;
        this.assistant = new int[delay.length];
        this.rinse = rinse;
        this.lateness = lateness;
        this.handling = handling;
        this.standing = standing;
    }

    /** The same path with assistants of its own. */
    ServicePath copy() {
        ServicePath copy =
                new ServicePath(grid, node, delay, mixStart.clone(), size, scale, rinse, lateness, handling, standing);
        System.arraycopy(assistant, 0, copy.assistant, 0, assistant.length);
        copy.rinseAssistant = rinseAssistant;
        return copy;
    }

    int bowls() {
        return delay.length;
    }

    int start() {
        return grid.startBase[0] + delay[0];
    }

    /** The minute after the last minute of application. */
    int end() {
        return useEnd(delay.length - 1);
    }

    /** First minute bowl b feeds. */
    int useStart(int b) {
        return grid.startBase[node[b]] + delay[b];
    }

    /** The minute after the last minute bowl b feeds. */
    int useEnd(int b) {
        return grid.endBase[node[b + 1]] + delay[b];
    }
}
