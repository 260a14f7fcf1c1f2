package stirtide.events.setup;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What was really mixed and used for a client on an earlier day, zone by zone.
 *
 * @param on day of the visit
 * @param clientRef client as booked, never empty
 * @param menuId menu entry
 * @param zones zones in the order they were applied, at least one
 */
public record PastVisit(LocalDate on, String clientRef, String menuId, List<PastZone> zones) {
    public PastVisit {
        zones = List.copyOf(zones);
    }

    /**
     * One zone.
     *
     * @param zone name of the zone
     * @param technique technique
     * @param lightenerId lightener
     * @param strengthHundredths strength of the liquids as weighed, in hundredths of a per cent by weight
     * @param ratioThousandths developer per lightener as weighed, in thousandths
     * @param mixedMilligrams grams mixed for the zone; a run's bowls are shared out over its zones
     * @param usedMilligrams grams used of them, residue and left over taken off
     * @param applyMinutes minutes of application
     * @param processMinutes minutes from the end of application to the rinse, as planned
     * @param rinsedAfterMinutes minutes from the end of application to the rinse as recorded, empty when it was not recorded
     * @param levelBeforeTenths level of the hair before, in tenths, 10 to 100, if it was recorded
     * @param levelAfterTenths level after, in tenths, if it was recorded
     */
    public record PastZone(
            String zone,
            String technique,
            String lightenerId,
            int strengthHundredths,
            int ratioThousandths,
            int mixedMilligrams,
            int usedMilligrams,
            int applyMinutes,
            int processMinutes,
            Optional<Integer> rinsedAfterMinutes,
            Optional<Integer> levelBeforeTenths,
            Optional<Integer> levelAfterTenths) {}
}
