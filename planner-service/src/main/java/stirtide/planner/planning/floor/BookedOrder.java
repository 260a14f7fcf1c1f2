package stirtide.planner.planning.floor;

import org.jspecify.annotations.Nullable;

/**
 * What the order of booking leaves to a service: its stylist works one head after the other, its chair seats one client after the other.
 *
 * @param grid the day
 * @param paths services as they are placed, null where they are not
 */
record BookedOrder(FloorGrid grid, @Nullable ServicePath[] paths) {
    /** The service begins no earlier, for its stylist, its chair and its booking. */
    int earliestStart(ServiceGrid service) {
        int earliest = service.service.bookedMinute();
        int[] stylists = grid.ofStylist[service.service.stylist()];
        for (int at = grid.stylistPlace[service.index] - 1; at >= 0; at--) {
            ServicePath before = paths[stylists[at]];
            if (before != null) {
                earliest = Math.max(earliest, before.end());
                break;
            }
        }
        int[] chairs = grid.ofChair[service.service.chair()];
        for (int at = grid.chairPlace[service.index] - 1; at >= 0; at--) {
            ServicePath before = paths[chairs[at]];
            if (before != null) {
                return Math.max(earliest, before.rinse);
            }
        }
        return earliest;
    }

    /** The next placed service of the same stylist begins then. */
    int stylistUntil(ServiceGrid service) {
        return nextStart(grid.ofStylist[service.service.stylist()], grid.stylistPlace[service.index]);
    }

    /** The next placed service on the same chair begins then. */
    int chairUntil(ServiceGrid service) {
        return nextStart(grid.ofChair[service.service.chair()], grid.chairPlace[service.index]);
    }

    private int nextStart(int[] order, int place) {
        for (int at = place + 1; at < order.length; at++) {
            ServicePath after = paths[order[at]];
            if (after != null) {
                return after.start();
            }
        }
        return HandlingCosts.NONE;
    }
}
