package stirtide.planner.allowance;

import io.soabase.recordbuilder.core.RecordBuilder;

/**
 * How allowances learn.
 *
 * @param fractionPermille how often in a thousand the grams are to be enough, 500 to 995
 * @param priorVisits visits the menu's base grams are worth, 1 or more
 * @param priorFreedom visits the expected spread is worth, 1 or more
 * @param priorSpreadPermille expected spread of ln grams between visits, in thousandths: 250 is about 25 %
 * @param clientSharePermille how much of the spread is between clients rather than between visits of one client, 0 to
 *     900; the larger it is, the more a client's own visits weigh
 * @param halfLifeDays days after which a visit counts half, 0 for never
 */
@RecordBuilder
public record AllowanceSettings(
        int fractionPermille,
        int priorVisits,
        int priorFreedom,
        int priorSpreadPermille,
        int clientSharePermille,
        int halfLifeDays)
        implements AllowanceSettingsBuilder.With {
    /** Lowest fraction that can be set: every other time. */
    public static final int LOWEST_FRACTION_PERMILLE = 500;

    /** Highest fraction that can be set. */
    public static final int HIGHEST_FRACTION_PERMILLE = 995;

    /** @throws IllegalArgumentException if a value is out of range, with the range */
    public AllowanceSettings {
        within("fractionPermille", fractionPermille, LOWEST_FRACTION_PERMILLE, HIGHEST_FRACTION_PERMILLE);
        within("priorVisits", priorVisits, 1, 100);
        within("priorFreedom", priorFreedom, 1, 100);
        within("priorSpreadPermille", priorSpreadPermille, 10, 1000);
        within("clientSharePermille", clientSharePermille, 0, 900);
        within("halfLifeDays", halfLifeDays, 0, 36_500);
    }

    /** Enough 4 times in 5, a prior of one visit, half of the spread between clients, half weight after a year. */
    public static AllowanceSettings usual() {
        return new AllowanceSettings(800, 1, 3, 200, 500, 365);
    }

    private static void within(String name, int value, int lowest, int highest) {
        if (value < lowest || value > highest)
            throw new IllegalArgumentException(name + " must be " + lowest + " to " + highest + ": " + value);
    }
}
