package stirtide.planner.planning.floor;

import java.util.stream.IntStream;

/**
 * Lower bound on lateness from the chains of stylists and chairs: a service begins no earlier than the one before it lets go of the stylist or the chair, each service
 * worked as if assistants were there for it alone.
 */
final class ChainBound {
    final LoneService[] lone;
    /** Least delay at the start of each service. */
    final int[] startDelay;

    private final FloorGrid grid;

    ChainBound(FloorGrid grid) {
        this.grid = grid;
        DutyStarts duty = new DutyStarts(grid);
        int n = grid.services.length;
        this.lone = IntStream.range(0, n)
                .mapToObj(i -> new LoneService(grid, grid.services[i], duty))
                .toArray(LoneService[]::new);
        this.startDelay = new int[n];
        for (int i : grid.byTime) {
            startDelay[i] = Math.max(0, Math.max(afterStylist(i), afterChair(i)) - grid.services[i].startBase[0]);
        }
    }

    private int afterStylist(int i) {
        int place = grid.stylistPlace[i];
        if (place == 0) {
            return 0;
        }
        int before = grid.ofStylist[grid.services[i].service.stylist()][place - 1];
        ServiceGrid service = grid.services[before];
        return service.endBase[service.last] + lone[before].endDelay(startDelay[before]);
    }

    private int afterChair(int i) {
        int place = grid.chairPlace[i];
        if (place == 0) {
            return 0;
        }
        int before = grid.ofChair[grid.services[i].service.chair()][place - 1];
        return lone[before].rinse(lone[before].endDelay(startDelay[before]));
    }

    /** Least lateness of one service. */
    int lateness(int i) {
        return lone[i].lateness(lone[i].endDelay(startDelay[i]));
    }

    /** Least lateness of the day: where stylists rinse, by stylist. */
    int lateness() {
        int sum = 0;
        for (int[] group : grid.ofStylist) {
            if (grid.day.stylistsRinse()) {
                sum += new StylistBound(grid, this, group).lateness();
            } else {
                for (int i : group) {
                    sum += lateness(i);
                }
            }
        }
        return sum;
    }
}
