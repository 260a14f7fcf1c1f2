package stirtide.planner.check.floor;

import java.util.List;
import stirtide.planner.planning.floor.BowlAssignment;
import stirtide.planner.planning.floor.FloorService;
import stirtide.planner.planning.floor.FloorZone;
import stirtide.planner.planning.floor.ServiceTimes;

/**
 * A service as a plan works it.
 *
 * @param service the service
 * @param times when it is worked, one entry for each minute of application
 * @param bowls its bowls by the first minute they feed
 */
record WorkedService(FloorService service, ServiceTimes times, List<BowlAssignment> bowls) {
    int number() {
        return service.service();
    }

    int minutes() {
        return times.minutes().size();
    }

    int at(int minute) {
        return times.minutes().get(minute);
    }

    int end() {
        return at(minutes() - 1) + 1;
    }

    int zones() {
        return service.zones().size();
    }

    FloorZone zone(int z) {
        return service.zones().get(z);
    }

    /** First minute of application of a zone; for the number of zones, the number of minutes. */
    int first(int z) {
        int first = 0;
        for (int before = 0; before < z; before++) {
            first += zone(before).applyMinutes();
        }
        return first;
    }

    int zoneOf(int minute) {
        int z = 0;
        while (first(z + 1) <= minute) {
            z++;
        }
        return z;
    }

    boolean beginsZone(int minute) {
        return minute < minutes() && first(zoneOf(minute)) == minute;
    }

    /** Decigrams the minutes {@code [from, to)} use. */
    int grams(int from, int to) {
        int grams = 0;
        for (int z = 0; z < zones(); z++) {
            int a = Math.max(from, first(z)) - first(z);
            int b = Math.min(to, first(z + 1)) - first(z);
            if (a < b) {
                grams += zone(z).decigrams() * b / zone(z).applyMinutes()
                        - zone(z).decigrams() * a / zone(z).applyMinutes();
            }
        }
        return grams;
    }

    /** When the rinse is wished for. */
    int wish() {
        int wish = 0;
        for (int z = 0; z < zones(); z++) {
            wish = Math.max(wish, at(first(z + 1) - 1) + 1 + zone(z).processMinutes());
        }
        return wish;
    }

    /** Minutes the client waits in all. */
    int waited() {
        int nominal = service.bookedMinute();
        for (int z = 0; z < zones(); z++) {
            nominal += zone(z).applyMinutes() + (z == 0 ? 0 : zone(z).gapMinutes());
        }
        return end() - nominal + times.rinse() - wish();
    }
}
