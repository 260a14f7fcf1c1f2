package stirtide.planner.planning.stagger;

import java.util.Arrays;
import java.util.Comparator;

/** Builds complete plans on an empty board, as starts for the search. */
final class InitialPlans {
    private final MinuteGrid grid;
    private final Occupancy board;
    private final Incumbent incumbent;

    InitialPlans(MinuteGrid grid, Occupancy board, Incumbent incumbent) {
        this.grid = grid;
        this.board = board;
        this.incumbent = incumbent;
    }

    /** Puts all runs on the board in the given order; false if some run has no path. */
    boolean inOrder(Comparator<RunGrid> order) {
        clear();
        RunGrid[] runs = grid.runs.clone();
        Arrays.sort(runs, order);
        for (RunGrid run : runs) {
            if (!board.insert(run.index, 0)) {
                return false;
            }
        }
        incumbent.offer(board.copyOfPaths());
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
            if (!board.insertLastResort(run.index)) {
                return false;
            }
        }
        incumbent.offer(board.copyOfPaths());
        for (RunGrid run : grid.runs) {
            RunPath byStylist = board.remove(run.index);
            board.insert(run.index, 0);
            if (!incumbent.offer(board.copyOfPaths())) {
                board.remove(run.index);
                board.put(run.index, byStylist);
            }
        }
        return true;
    }

    private void clear() {
        board.clear();
        board.guide(null, 0, 1);
    }
}
