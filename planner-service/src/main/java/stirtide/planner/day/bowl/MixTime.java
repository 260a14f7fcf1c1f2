package stirtide.planner.day.bowl;

import stirtide.events.plan.PlannedBatch;
import stirtide.events.setup.Directions;
import stirtide.planner.day.state.BowlState;
import stirtide.planner.day.state.Day;

/** How long the mixing of a bowl takes. */
public final class MixTime {
    private MixTime() {}

    /** Minutes of mixing by the directions, and of dividing where one mix fills two bowls; 0 or more. */
    public static int minutes(Day day, BowlState bowl) {
        int dividing = bowl.batch().isPresent() ? PlannedBatch.DIVIDE_MINUTES : 0;
        return dividing
                + day.opened()
                        .directions(bowl.planned().lightenerId())
                        .map(Directions::mixMinutes)
                        .orElse(0);
    }
}
