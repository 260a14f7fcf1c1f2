package stirtide.planner.planning.floor;

import java.util.List;

/**
 * One booked service.
 *
 * @param service its number
 * @param stylist index of the stylist who applies
 * @param chair index of the chair
 * @param bookedMinute the service begins no earlier
 * @param zones what is applied, in order; at least one
 * @param breaks minutes of application at which a bowl may be changed
 */
public record FloorService(
        int service, int stylist, int chair, int bookedMinute, List<FloorZone> zones, List<Integer> breaks) {
    /**
     * Copies the lists.
     *
     * @throws IllegalArgumentException if there is no zone, or one without minutes
     */
    public FloorService {
        zones = List.copyOf(zones);
        breaks = List.copyOf(breaks);
        if (zones.isEmpty() || zones.stream().anyMatch(zone -> zone.applyMinutes() < 1)) {
            throw new IllegalArgumentException("service " + service + " needs zones, each of at least one minute");
        }
    }
}
