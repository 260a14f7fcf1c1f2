package stirtide.planner.check.floor;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import stirtide.planner.planning.floor.BowlAssignment;
import stirtide.planner.planning.floor.FloorBowlSize;
import stirtide.planner.planning.floor.FloorDay;
import stirtide.planner.planning.floor.FloorMix;
import stirtide.planner.planning.floor.FloorScore;
import stirtide.planner.planning.floor.FloorService;
import stirtide.planner.planning.floor.FloorZone;
import stirtide.planner.planning.floor.ServiceTimes;

/**
 * Confirms claimed bounds as far as that is possible without the search that found them: a bound on lateness may not be above the plan, one on handling not above what the
 * services need when each has the salon for itself.
 */
public final class FloorBoundCheck {
    private static final int NONE = Integer.MAX_VALUE / 4;

    private FloorBoundCheck() {}

    /**
     * Everything that is wrong with bounds, each as the name of the rule, a colon and what was found; empty if nothing was found.
     *
     * @param day the day
     * @param score what a valid plan costs
     * @param bounds what is claimed that no plan can beat
     */
    public static List<String> faults(FloorDay day, FloorScore score, FloorScore bounds) {
        List<String> faults = new ArrayList<>();
        if (bounds.lateness() > score.lateness()) {
            faults.add("bound: lateness " + bounds.lateness() + " is above the plan's " + score.lateness());
        }
        int handling =
                day.services().stream().mapToInt(one -> leastHandling(day, one)).sum();
        if (bounds.handling() > handling) {
            faults.add("bound: handling " + bounds.handling() + " is above the services' own " + handling);
        }
        if (bounds.standing() > 0) {
            faults.add("bound: standing " + bounds.standing() + " cannot be confirmed");
        }
        return faults;
    }

    /** Cheapest handling of one service that has everybody for itself: a shortest path over the minutes at which bowls may change. */
    static int leastHandling(FloorDay day, FloorService service) {
        WorkedService worked = unhurried(service);
        TreeSet<Integer> changes = new TreeSet<>(service.breaks());
        changes.addAll(List.of(0, worked.minutes()));
        for (int z = 1; z < worked.zones(); z++) {
            if (worked.zone(z).mix() != worked.zone(z - 1).mix()) {
                changes.add(worked.first(z));
            }
        }
        int[] least = new int[worked.minutes() + 1];
        Arrays.fill(least, NONE);
        least[worked.minutes()] = 0;
        for (int from : changes.descendingSet()) {
            for (int to : changes.tailSet(from, false)) {
                least[from] = Math.min(least[from], bowl(day, worked, from, to) + least[to]);
            }
        }
        return least[0];
    }

    private static WorkedService unhurried(FloorService service) {
        List<Integer> minutes = new ArrayList<>();
        int now = service.bookedMinute();
        for (FloorZone zone : service.zones()) {
            now += minutes.isEmpty() ? 0 : zone.gapMinutes();
            for (int i = 0; i < zone.applyMinutes(); i++) {
                minutes.add(now++);
            }
        }
        return new WorkedService(service, new ServiceTimes(service.service(), minutes, 0, -1), List.of());
    }

    /** Least handling of a bowl for some minutes, mixed as late as it can be; {@link #NONE} if there is none. */
    private static int bowl(FloorDay day, WorkedService worked, int from, int to) {
        FloorMix mix = day.mixes().get(worked.zone(worked.zoneOf(from)).mix());
        for (int i = from; i < to; i++) {
            if (worked.zone(worked.zoneOf(i)).mix()
                    != worked.zone(worked.zoneOf(from)).mix()) {
                return NONE;
            }
        }
        int start = worked.at(from) - day.handOverMinutes() - mix.mixMinutes();
        if (worked.at(to - 1) + 1 - start > mix.lifeMinutes()) {
            return NONE;
        }
        int least = NONE;
        for (int size = 0; size < day.bowlSizes().size(); size++) {
            FloorBowlSize one = day.bowlSizes().get(size);
            if (worked.grams(from, to) + one.residueDecigrams() <= one.usableDecigrams()) {
                BowlAssignment bowl = new BowlAssignment(worked.number(), from, to, size, start, 0);
                least = Math.min(least, ScoreCheck.handling(day, worked, bowl, mix));
            }
        }
        return least;
    }
}
