package stirtide.planner.planning.floor;

import java.util.Arrays;

/**
 * A stretch of one service that is fed by one mix: bowls of a unit are mixed in the order in which they are used without loss, which is not so across units. A unit begins
 * no earlier than the one before it in the same service ends.
 */
final class ProofUnit {
    /** Stands for a delay no plan may have. */
    static final int HOPELESS = FloorDay.MOST_WAIT_MINUTES + 1;

    final ServiceGrid service;
    /** Nodes between which the unit lies. */
    final int first;

    final int last;
    final int mix;
    final int occupied;
    final int life;
    /** Least delay at the last node by node, counted from the first, and by delay there. */
    private final int[][] endDelay;

    ProofUnit(FloorGrid grid, DutyStarts duty, ServiceGrid service, int first, int last) {
        this.service = service;
        this.first = first;
        this.last = last;
        this.mix = service.mix[first];
        this.occupied = grid.occupied[mix];
        this.life = grid.life[mix];
        this.endDelay = new int[last - first + 1][HOPELESS + 1];
        for (int d = 0; d <= HOPELESS; d++) {
            endDelay[last - first][d] = d;
        }
        for (int j = last - 1; j >= first; j--) {
            endDelays(j, duty.ofMix(mix));
        }
    }

    private void endDelays(int j, long[] starts) {
        int[] least = endDelay[j - first];
        Arrays.fill(least, HOPELESS);
        for (int d = HOPELESS - 1; d >= 0; d--) {
            least[d] = least[d + 1];
            int due = service.startBase[j] + d - occupied;
            int start = MinuteSet.previous(starts, due);
            for (int arc = service.firstArc[j]; arc < service.firstArc[j + 1] && start >= 0; arc++) {
                int k = service.arcTo[arc];
                if (service.endBase[k] + d - start > life) {
                    break;
                }
                least[d] = Math.min(least[d], endDelay[k - first][d]);
            }
        }
    }

    /** Least delay of the last minute if the minutes up to a node are fed, and it is reached with a delay. */
    int endDelay(int node, int delay) {
        return delay >= HOPELESS ? HOPELESS : endDelay[node - first][delay];
    }

    /** When the first minute after a node begins with no delay. */
    int startBase(int node) {
        return service.startBase[node];
    }
}
