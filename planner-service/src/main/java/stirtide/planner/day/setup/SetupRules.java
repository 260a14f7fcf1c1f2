package stirtide.planner.day.setup;

import java.util.Optional;
import stirtide.events.setup.DaySetup;

/**
 * What a setup must hold so that everything later may rely on it: known names, positive weights and times, and no menu
 * entry outside the directions. Gives the first thing that is wrong, with what would be accepted.
 */
public final class SetupRules {
    private SetupRules() {}

    /** The first thing that is wrong with a setup, with what would be accepted. */
    public static Optional<String> objection(DaySetup setup) {
        return unready(setup)
                .or(() -> SalonRules.objection(setup.salon()))
                .or(() -> ProductRules.objection(setup))
                .or(() -> MenuRules.objection(setup))
                .or(() -> BroughtHistoryRules.objection(setup));
    }

    /** A salon that is being set up lacks this and that; once there is something to book, it must be possible to mix it. */
    private static Optional<String> unready(DaySetup setup) {
        if (setup.menu().entries().isEmpty()) return Optional.empty();
        if (setup.salon().scales().isEmpty() || setup.salon().bowls().isEmpty())
            return Optional.of("A bar with a menu needs at least one scale and one size of bowl.");
        if (setup.developers().isEmpty())
            return Optional.of("A bar with a menu needs at least one developer on the shelf.");
        return Optional.empty();
    }
}
