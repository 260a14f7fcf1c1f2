package stirtide.events.plan;

import java.time.Instant;
import java.util.List;

/**
 * What one client can expect.
 *
 * @param service service number
 * @param chair chair number
 * @param start start of application
 * @param end last rinse
 * @param waitMinutes minutes the client waits for the bar, all zones together
 * @param zones the zones still to be applied or processing, in order
 */
public record PlannedService(
        int service, int chair, Instant start, Instant end, int waitMinutes, List<PlannedZone> zones) {
    public PlannedService {
        zones = List.copyOf(zones);
    }

    /**
     * One zone over time.
     *
     * @param zone name of the zone
     * @param applyStart first application
     * @param applyEnd last application
     * @param checkAt halfway check of processing
     * @param rinseAt planned rinse, never after {@code rinseBy}
     * @param rinseBy longest processing time of the directions ends
     */
    public record PlannedZone(
            String zone, Instant applyStart, Instant applyEnd, Instant checkAt, Instant rinseAt, Instant rinseBy) {}
}
