package stirtide.planner.allowance;

import java.time.LocalDate;

/**
 * What one zone of one earlier visit really used: mixed minus left over, shared out over the zones the bowls fed.
 *
 * @param on day of the visit
 * @param clientRef client, as on the booking; empty text when unknown
 * @param baseMilligrams base grams of the menu at that time, more than 0
 * @param lengthPermille length factor of that visit, in thousandths, more than 0
 * @param densityPermille density factor of that visit, in thousandths, more than 0
 * @param usedMilligrams grams used, more than 0
 * @param spilled true when a bowl of it was spilled or its weights are otherwise not to be trusted: it is not learned from
 */
public record UsedGrams(
        LocalDate on,
        String clientRef,
        int baseMilligrams,
        int lengthPermille,
        int densityPermille,
        int usedMilligrams,
        boolean spilled) {
    /** @throws IllegalArgumentException if a number is not above 0 */
    public UsedGrams {
        if (baseMilligrams < 1 || lengthPermille < 1 || densityPermille < 1 || usedMilligrams < 1)
            throw new IllegalArgumentException("grams and factors must be above 0: " + baseMilligrams + ", "
                    + lengthPermille + ", " + densityPermille + ", " + usedMilligrams);
    }

    /** ln of used over what the menu expected. */
    double lnRatio() {
        return Math.log(usedMilligrams / expectedMilligrams(baseMilligrams, lengthPermille, densityPermille));
    }

    static double expectedMilligrams(int base, int lengthPermille, int densityPermille) {
        return base * (lengthPermille / 1000.0) * (densityPermille / 1000.0);
    }
}
