package stirtide.planner.allowance;

import java.time.LocalDate;
import java.util.Optional;

/**
 * The zone an allowance is asked for.
 *
 * @param zone name of the zone, for the explanation
 * @param on day of the visit
 * @param clientRef client, as on the booking; empty text when unknown
 * @param baseMilligrams base grams of the menu, more than 0
 * @param lengthPermille length factor of the client's hair, in thousandths
 * @param densityPermille density factor of the client's hair, in thousandths
 * @param pinnedMilligrams grams a manager has pinned for medium hair, if any; learning goes on but is not used
 * @param resetOn day on which a manager reset the allowance, if any; earlier visits are not used
 */
public record ZoneAsked(
        String zone,
        LocalDate on,
        String clientRef,
        int baseMilligrams,
        int lengthPermille,
        int densityPermille,
        Optional<Integer> pinnedMilligrams,
        Optional<LocalDate> resetOn) {
    double expectedMilligrams() {
        return expectedMilligrams(baseMilligrams, lengthPermille, densityPermille);
    }

    static double expectedMilligrams(int base, int lengthPermille, int densityPermille) {
        return base * (lengthPermille / 1000.0) * (densityPermille / 1000.0);
    }
}
