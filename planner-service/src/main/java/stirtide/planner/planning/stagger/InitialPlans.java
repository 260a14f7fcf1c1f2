package stirtide.planner.planning.stagger;

import java.util.Arrays;
import java.util.Comparator;

/** Builds complete plans in an empty plan, as starts for the search. */
record InitialPlans(MinuteGrid grid, Occupancy occupancy, Incumbent incumbent) {
    /** Puts all runs in the plan in the given order; false if some run has no path. */
    boolean inOrder(Comparator<RunGrid> order) {
        clear();
        RunGrid[] runs = grid.runs.clone();
        Arrays.sort(runs, order);
        for (RunGrid run : runs) {
            if (!occupancy.insert(run.index, 0)) {
                return false;
            }
        }
        incumbent.offer(occupancy.copyOfPaths());
        return true;
    }

    /**
     * Gives all bowls to the stylists, then takes back run by run those for which people are found. For days on which
     * capacity is enough but no assignment to people was found for the plans that use it; false if not even stylists can feed
     * some run.
     */
    boolean fromStylists() {
        clear();
        for (RunGrid run : grid.runs) {
            if (!occupancy.insertLastResort(run.index)) {
                return false;
            }
        }
        incumbent.offer(occupancy.copyOfPaths());
        for (RunGrid run : grid.runs) {
            RunPath byStylist = occupancy.remove(run.index);
            occupancy.insert(run.index, 0);
            if (!incumbent.offer(occupancy.copyOfPaths())) {
                occupancy.remove(run.index);
                occupancy.put(run.index, byStylist);
            }
        }
        return true;
    }

    private void clear() {
        occupancy.clear();
        occupancy.guide(null, 0, 1);
    }
}
