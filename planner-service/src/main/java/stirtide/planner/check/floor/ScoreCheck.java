package stirtide.planner.check.floor;

import java.util.List;
import stirtide.planner.planning.floor.BowlAssignment;
import stirtide.planner.planning.floor.FloorDay;
import stirtide.planner.planning.floor.FloorMix;
import stirtide.planner.planning.floor.FloorScore;

/** Works out the score of a plan. */
final class ScoreCheck {
    private static final int INSIDE_A_ZONE_DECIGRAMS = 30;
    private static final int MARGIN_MINUTE_DECIGRAMS = 10;

    private ScoreCheck() {}

    static FloorScore score(FloorDay day, List<WorkedService> worked) {
        int lateness = 0;
        int handling = 0;
        int standing = 0;
        for (WorkedService service : worked) {
            lateness += service.waited();
            for (BowlAssignment bowl : service.bowls()) {
                FloorMix mix = day.mixes()
                        .get(service.zone(service.zoneOf(bowl.from())).mix());
                handling += handling(day, service, bowl, mix);
                standing += service.at(bowl.from()) - bowl.mixStart() - mix.mixMinutes() - day.handOverMinutes();
            }
        }
        return new FloorScore(lateness, handling, standing);
    }

    static int handling(FloorDay day, WorkedService service, BowlAssignment bowl, FloorMix mix) {
        int cost = day.bowlSizes().get(bowl.size()).residueDecigrams();
        if (!service.beginsZone(bowl.from())) {
            cost += INSIDE_A_ZONE_DECIGRAMS;
        }
        if (service.grams(0, service.minutes()) > day.leastDecigrams()) {
            cost += Math.max(0, day.leastDecigrams() - service.grams(bowl.from(), bowl.to()));
        }
        int left = mix.lifeMinutes() - (service.at(bowl.to() - 1) + 1 - bowl.mixStart());
        return cost + MARGIN_MINUTE_DECIGRAMS * Math.max(0, day.marginMinutes() - left);
    }
}
