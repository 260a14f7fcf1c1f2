package stirtide.planner.planning.floor;

/** A part of a relaxed plan: all times are the least that what was decided so far allows. */
final class ProofState {
    /** By unit: the node up to which it is fed, and the delay there. */
    final int[] node;

    final int[] delay;
    /** By service: when it wishes for the rinse, as far as it is fed. */
    final int[] wish;
    /** By assistant: free from here on. */
    final int[] free;
    /** By stylist: rinsed the last client until then. */
    final int[] stylistFree;
    /** By basin: free from here on, ascending. */
    final int[] basinFree;
    /** Sets of services; what is rinsed is no longer among the started. */
    long started;

    long rinsed;
    /** Nothing is decided any more that begins earlier. */
    int clock;

    int scaleFree;
    /** Lateness of the services rinsed. */
    int lateness;

    /** Nothing decided. */
    ProofState(ProofGroup group) {
        this.node = new int[group.units.length];
        this.delay = new int[group.units.length];
        for (int u = 0; u < node.length; u++) {
            node[u] = group.units[u].first;
        }
        this.wish = new int[group.services.length];
        this.free = new int[group.grid.day.assistants().size()];
        this.stylistFree = new int[group.grid.ofStylist.length];
        this.basinFree = new int[group.grid.day.basins()];
    }

    void copyFrom(ProofState from) {
        System.arraycopy(from.node, 0, node, 0, node.length);
        System.arraycopy(from.delay, 0, delay, 0, delay.length);
        System.arraycopy(from.wish, 0, wish, 0, wish.length);
        System.arraycopy(from.free, 0, free, 0, free.length);
        System.arraycopy(from.stylistFree, 0, stylistFree, 0, stylistFree.length);
        System.arraycopy(from.basinFree, 0, basinFree, 0, basinFree.length);
        started = from.started;
        rinsed = from.rinsed;
        clock = from.clock;
        scaleFree = from.scaleFree;
        lateness = from.lateness;
    }

    boolean isRinsed(int service) {
        return (rinsed >>> service & 1) != 0;
    }

    boolean isStarted(int service) {
        return (started >>> service & 1) != 0;
    }

    /** Takes the basin that is free first. */
    void takeBasin(int until) {
        int at = 0;
        while (at + 1 < basinFree.length && basinFree[at + 1] < until) {
            basinFree[at] = basinFree[at + 1];
            at++;
        }
        basinFree[at] = until;
    }
}
