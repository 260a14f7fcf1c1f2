package stirtide.planner.planning.floor;

import java.util.Arrays;

/**
 * What a service could do if all assistants were there for it alone: the least delay at its end for a given delay at its start. Only hours on duty, mixing times and lives
 * of bowls count, so that no plan does better.
 */
final class LoneService {
    private static final int HOPELESS = FloorDay.MOST_WAIT_MINUTES + 1;

    private final FloorGrid grid;
    private final ServiceGrid service;
    private final DutyStarts duty;

    LoneService(FloorGrid grid, ServiceGrid service, DutyStarts duty) {
        this.grid = grid;
        this.service = service;
        this.duty = duty;
    }

    /** Least delay of the last minute; more than the most wait if there is none. */
    int endDelay(int startDelay) {
        int[] least = new int[service.last + 1];
        Arrays.fill(least, HOPELESS);
        least[0] = startDelay;
        for (int j = 0; j < service.last; j++) {
            for (int arc = service.firstArc[j]; arc < service.firstArc[j + 1] && least[j] < HOPELESS; arc++) {
                int k = service.arcTo[arc];
                least[k] = Math.min(least[k], fed(j, k, least[j]));
            }
        }
        return least[service.last];
    }

    /** Least delay, no less than the given one, with which one bowl can feed from node j to node k. */
    private int fed(int j, int k, int delay) {
        int mix = service.mix[j];
        for (int d = delay; d < HOPELESS; d++) {
            int latest = service.startBase[j] + d - grid.lead[mix];
            int start = MinuteSet.previous(duty.ofMix(mix), latest);
            if (start >= 0 && service.endBase[k] + d - start <= grid.life[mix]) {
                return d;
            }
        }
        return HOPELESS;
    }

    /** Least lateness of the service, with the rinse, for a delay of its last minute. */
    int lateness(int endDelay) {
        if (service.latestWish() > service.lastWish) {
            return endDelay;
        }
        return Math.max(endDelay, rinse(endDelay) - service.lastWish);
    }

    /** The rinse begins no earlier. */
    int rinse(int endDelay) {
        int wish = service.lastWish + endDelay;
        if (grid.day.stylistsRinse()) {
            return wish;
        }
        int rinse = MinuteSet.next(duty.ofRinse(), wish);
        return rinse < 0 ? wish : rinse;
    }
}
