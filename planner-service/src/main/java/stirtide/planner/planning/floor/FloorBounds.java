package stirtide.planner.planning.floor;

/** What no plan can beat: lateness of any plan, handling of any plan. Standing is at least nothing. */
final class FloorBounds {
    private FloorBounds() {}

    static FloorScore of(FloorGrid grid) {
        int handling = 0;
        for (ServiceGrid service : grid.services) {
            handling += service.leastHandling[0];
        }
        return new FloorScore(new ChainBound(grid).lateness(), handling, 0);
    }
}
